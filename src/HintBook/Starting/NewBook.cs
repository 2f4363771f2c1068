using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Publishing;
using HintBook.Reading;

namespace HintBook.Starting;

/// <summary>The small book from which a maker starts.</summary>
public static partial class NewBook
{
    private static readonly string Bare =
        $"""
        # yaml-language-server: $schema=./schemas/book.schema.json
        format: {Reader.Format}
        title:
        maker:
          name:
        language:

        # Where the pages will live once they are on the web. The QR cards carry it, so choose it before you print.
        # address: https://my-workshop.example/my-box/

        theme: parlour
        patience: 20 min
        cards: both

        """.ReplaceLineEndings("\n");

    private static readonly ImmutableArray<(string Path, string Text)> SchemaFiles =
        [.. Schemas.All.Select(schema => ($"schemas/{schema.Name}", schema.Text))];

    /// <summary>The languages that its texts and remarks are written in, English first.</summary>
    public static ImmutableArray<string> Languages { get; } = ["en", "de", "fr"];

    /// <summary>Its files in English by path inside the book, schemas included, with an address for examples.</summary>
    public static IReadOnlyList<(string Path, string Text)> Files { get; } = [.. Sample("en"), .. SchemaFiles];

    /// <summary>Writes it, in English and with an address for examples, into a folder that doesn't exist yet or is empty.</summary>
    public static void In(string folder) => In(folder, Files);

    /// <summary>Writes a book into a folder that doesn't exist yet or is empty.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="files">The book's files by path inside it.</param>
    public static void In(string folder, IReadOnlyList<(string Path, string Text)> files)
    {
        foreach (var (path, text) in files)
            SingleFile.Write(Path.Combine(folder, path), text);
    }

    /// <summary>A book with its maker's own words, and with its address left as a remark.</summary>
    /// <param name="words">What the maker says of it. Without a language it is English.</param>
    /// <param name="sample">
    /// Whether it has the small box that teaches; otherwise it has no parts and no stages yet, and isn't complete. The box is described in one of
    /// <see cref="Languages"/>: in the book's own, or else in English, under headings of the book's own language where HintBook has them.
    /// </param>
    /// <returns>Its files by path inside the book, schemas included.</returns>
    public static IReadOnlyList<(string Path, string Text)> Of(BookWords words, bool sample) =>
    [
        .. from file in sample ? Sample(words.Language ?? "en") : [("book.yaml", Bare)]
           select file.Path == "book.yaml" ? (file.Path, words.In(file.Text)) : file,
        .. SchemaFiles,
    ];

    /// <summary>The language that the small box is described in, in a book of a language.</summary>
    /// <param name="language">The book's language, as a BCP 47 tag.</param>
    public static string LanguageFor(string language) => Languages.FirstOrDefault(known => known == Spoken(language)) ?? "en";

    private static string Spoken(string language) => language.Split('-')[0].ToLowerInvariant();

    private static IEnumerable<(string Path, string Text)> Sample(string language)
    {
        var written = LanguageFor(language);
        var headings = TierHeadings.Of(Spoken(language)).InOrder;
        return from file in Embedded.In($"starter/{written}/")
               let text = Embedded.Text(file.Resource)
               select (file.Path, written == "en" ? Heading().Replace(text, heading => $"# {headings[TierOf(heading.Value)]}") : text);
    }

    private static int TierOf(string heading) => TierHeadings.Of("en").InOrder.IndexOf(heading[2..]);

    [GeneratedRegex("^# (Nudge|Clue|Answer|Reset)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Heading();
}
