using System.Text.RegularExpressions;
using HintBook.Reading.Shapes;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Finds an entry of the keys that slipped into a text, such as a line <c>photos: { clue: card.jpg }</c> below the keys.</summary>
internal static partial class EntryLine
{
    // What people write in their place.
    private static readonly string[] Slips = ["photo", "clips", "caution", "move", "need", "give"];

    /// <summary>The key of the first line that looks like an entry; null where there is none.</summary>
    /// <param name="text">A stage's text, of Markdown or of a block of YAML.</param>
    public static Span? In(Span text)
    {
        var fenced = false;
        foreach (Match line in Line().Matches(text.Text))
        {
            if (line.Groups["fence"].Success)
                fenced = !fenced;
            else if (!fenced && line.Groups["key"] is { Success: true } key && IsKey(key.Value))
                return new Span(text.File, text.Start + key.Index, text.Start + key.Index + key.Length + 1);
        }

        return null;
    }

    private static bool IsKey(string word) => BookShapes.Stage[word] is not null || Slips.Contains(word);

    // Small letters only: “Answer: 5173” is how people begin a sentence. Four spaces make code of a line in Markdown, but an entry that stands
    // so far in is told as well.
    [GeneratedRegex(@"^[ \t]*((?<fence>```|~~~)|(?<key>[a-z-]+):([ \t\r]|$))", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Line();
}
