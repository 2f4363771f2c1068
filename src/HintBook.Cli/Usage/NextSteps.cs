namespace HintBook.Cli.Usage;

/// <summary>What <c>hintbook</c> says by itself: what a maker can do next.</summary>
internal static class NextSteps
{
    /// <summary>The lines.</summary>
    /// <param name="inBook">Whether the current folder is a book.</param>
    public static string Text(bool inBook)
    {
        var book = inBook ? "." : "my-box";
        var first = inBook ? "This folder is a book." : "HintBook helps the owners of a puzzle box, one small step at a time.";
        var begin = inBook ? "" : "  Start a book         hintbook begin my-box\n";
        return $"""
            {first} What you can do next:

            {begin}  See what is wrong    hintbook check {book}
              Make site and cards  hintbook publish {book}
              Prove that it opens  hintbook solve {book}
              Read the guide       hintbook guide

            All verbs: hintbook --help. One of them: hintbook check --help.

            """;
    }
}
