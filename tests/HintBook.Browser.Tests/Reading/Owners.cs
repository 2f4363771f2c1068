using HintBook.Browser.Tests.Sites;
using HintBook.Tests.House;
using HintBook.Tests.Pages.Walking;

namespace HintBook.Browser.Tests.Reading;

/// <summary>Somebody in the middle of the example.</summary>
/// <param name="Stands">What isn't as it came, as a person reads it.</param>
/// <param name="At">Where everything is.</param>
/// <param name="Next">The steps to which they may be led.</param>
internal sealed record Owner(string Stands, IReadOnlyDictionary<string, string> At, IReadOnlyList<string> Next);

/// <summary>
/// The owners of the example: one for each kind of state, who know only what they see. Where they stand and what is next for them was worked out from the
/// book's records alone, by what shares nothing with what made the pages.
/// </summary>
internal sealed class Owners
{
    private readonly PublishedSite site;
    private readonly Sentences sentences;

    /// <summary>Reads the list of owners.</summary>
    /// <param name="site">The example, in any theme.</param>
    public Owners(PublishedSite site)
    {
        (this.site, sentences) = (site, new(site.Book));
        var list = File.ReadAllText(Path.Combine(Repository.Root, "tests", "HintBook.Tests", "Pages", "Walking", "owners.md")).ReplaceLineEndings("\n");
        All =
        [
            .. from owner in list.Split("\n- ").Skip(1)
               let lines = owner.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
               let moved = lines.Skip(1).SelectMany(line => line.Split(", ")).Select(each => each.Split('=')).ToDictionary(each => each[0], each => each[1])
               select new Owner(
                   string.Join(", ", lines.Skip(1)),
                   site.Book.Box.Names.ToDictionary(named => named.Id.Value, named => moved.GetValueOrDefault(named.Id.Value, named.Positions[0])),
                   lines[0].Split(", ")),
        ];
    }

    /// <summary>All of them.</summary>
    public IReadOnlyList<Owner> All { get; }

    /// <summary>The titles of the steps to which an owner may be led.</summary>
    public IEnumerable<string> TitlesFor(Owner owner) =>
        site.Book.Stages.Where(stage => owner.Next.Contains(stage.Id.Value)).Select(stage => stage.Title.Value);

    /// <summary>
    /// What an owner answers who takes a page at its word: the sign of a step that is next for them, else the first line that is true, else “None of these”;
    /// null where not even that is offered.
    /// </summary>
    public Choice? TrueAnswer(Asked page, Owner owner) =>
        page.Signs.FirstOrDefault(sign => IsNext(sign, owner))
        ?? page.Lines.FirstOrDefault(line => IsTrue(line, owner))
        ?? page.None;

    /// <summary>What an owner answers who doesn't look: the first line or sign that isn't true of their box, else “None of these” if one is; or null.</summary>
    public Choice? WrongAnswer(Asked page, Owner owner) =>
        page.Lines.FirstOrDefault(line => !IsTrue(line, owner))
        ?? page.Signs.FirstOrDefault(sign => !IsNext(sign, owner))
        ?? (TrueAnswer(page, owner) == page.None ? null : page.None);

    private bool IsNext(Choice sign, Owner owner) => owner.Next.Any(stage => site.PageOf(stage) == sign.Page);

    private bool IsTrue(Choice line, Owner owner) => sentences.Meant(line.Says).Any(asked => asked.IsTrue(owner.At));
}

/// <summary>A page of “Where am I?” as it is drawn.</summary>
/// <param name="Signs">The signs of steps.</param>
/// <param name="Lines">The lines of which the first true one counts.</param>
/// <param name="None">The way on for whom nothing fits, or null.</param>
internal sealed record Asked(IReadOnlyList<Choice> Signs, IReadOnlyList<Choice> Lines, Choice? None);

/// <summary>One answer that can be seen.</summary>
/// <param name="Says">Its words.</param>
/// <param name="Page">The page that it leads to.</param>
internal sealed record Choice(string Says, string Page);
