using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Publishing;
using HintBook.Publishing.Films;
using HintBook.Text;

namespace HintBook.Browser.Tests.Sites;

/// <summary>A book published into a folder of its own, served over http and ready to be opened from the disk.</summary>
internal sealed class PublishedSite : IDisposable
{
    private readonly FolderServer server;

    private PublishedSite(string name, Sound book, string folder)
    {
        Name = name;
        Book = book.Examined.Book;
        Survey = book.Examined.Survey;
        Addresses = book.Examined.Addresses;
        Findings = book.Findings;
        Folder = folder;
        server = FolderServer.Of(folder);
    }

    public string Name { get; }

    public Book Book { get; }

    public Survey Survey { get; }

    public Addresses Addresses { get; }

    /// <summary>What the maker is told of the book.</summary>
    public Findings Findings { get; }

    public string Folder { get; }

    /// <summary>What serves it over http.</summary>
    public FolderServer Server => server;

    /// <summary>All pages by file name: front, stages, solution, reset.</summary>
    public IEnumerable<string> Pages => Directory.EnumerateFiles(Folder, "*.html").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal);

    public IEnumerable<string> StagePages => Book.Stages.Select(stage => Addresses.PageOf(stage.Id.Value));

    /// <summary>The page of the stage with most on it.</summary>
    public string FullestStagePage => PageOf(Book.Stages.MaxBy(stage => stage.Photos.Length + stage.Cautions.Length)!.Id.Value);

    /// <summary>The pages of “where am I?”.</summary>
    public IEnumerable<string> WherePages => Pages.Where(page => Text(page).Contains("<body class=\"where\">", StringComparison.Ordinal));

    /// <summary>One page of each kind.</summary>
    public IEnumerable<string> KindsOfPages => Pages.Except(StagePages).Except(WherePages).Append("where.html").Append(FullestStagePage);

    /// <summary>A page as it was published.</summary>
    public string Text(string page) => File.ReadAllText(Path.Combine(Folder, page));

    public string PageOf(string stage) => Addresses.PageOf(stage);

    /// <summary>The site's address, with a slash at the end.</summary>
    public string Address(Source source) => source == Source.Http ? server.Address : new Uri(Folder + Path.DirectorySeparatorChar).AbsoluteUri;

    /// <summary>Publishes a book. A publish keeps <c>kept-addresses.txt</c> in the book, so the book must be the tests' own to write in.</summary>
    /// <param name="name">What failures call it.</param>
    /// <param name="book">The folder of the book.</param>
    /// <param name="output">Where it is published.</param>
    /// <param name="tools">What cuts clips out of films; null where they aren't cut.</param>
    public static PublishedSite Of(string name, string book, string output, FilmTools? tools = null) =>
        Pipeline.Publish(book, new PublishOptions { Output = output, FilmTools = tools }) switch
        {
            Published => new PublishedSite(name, SoundOf(book, output, tools), Path.Combine(output, "site")),
            Rejected rejected => throw new InvalidOperationException($"{name} was not published:\n{FindingsText.Write(rejected.Findings)}"),
            var other => throw new InvalidOperationException($"{name} was not published: {other}"),
        };

    public void Dispose() => server.Dispose();

    private static Sound SoundOf(string book, string output, FilmTools? tools) =>
        Check.Run(book, new() { LastPublished = output, CutsClips = tools is not null }) as Sound
            ?? throw new InvalidOperationException($"{book} was published and isn't sound.");
}

/// <summary>Where a reader has the site from.</summary>
public enum Source
{
    /// <summary>A web host.</summary>
    Http,

    /// <summary>A memory stick.</summary>
    File,
}
