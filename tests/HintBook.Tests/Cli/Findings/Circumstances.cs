namespace HintBook.Tests.Cli.Findings;

/// <summary>What pages about findings may ask for that lies around the book and not in it. A line of the table brings it about.</summary>
internal static class Circumstances
{
    private static readonly (string Line, Circumstance How)[] All =
    [
        ("there is no folder of the name that was given", new() { Named = book => book + "-that-is-not-there" }),
        ("book.yaml was given instead of the folder", new() { Named = book => Path.Combine(book, "book.yaml") }),
        ("the book was published before these changes", new() { Before = PublishInto }),
    ];

    public static Circumstance Of(string line)
    {
        var found = Array.Find(All, each => each.Line == line);
        Assert.True(found.How is not null, $"Nothing brings about “{line}”. There is: {string.Join("; ", All.Select(each => each.Line))}.");
        return found.How;
    }

    private static void PublishInto(string book, string output) => Assert.Equal(0, Said.By("publish", book, "--out", output).Exit);
}

/// <summary>Something around a book.</summary>
internal sealed record Circumstance
{
    /// <summary>Done with the shared book (its folder, and where it will be published) before the page's files are written over it.</summary>
    public Action<string, string> Before { get; init; } = (_, _) => { };

    /// <summary>What is typed as the book's name, from its folder.</summary>
    public Func<string, string> Named { get; init; } = book => book;
}
