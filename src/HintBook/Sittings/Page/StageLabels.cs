using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Xml.Linq;

namespace HintBook.Sittings.Page;

/// <summary>The names of stages beside a plot, one below the other.</summary>
internal static class StageLabels
{
    /// <summary>The right edge of the names.</summary>
    public const double Right = 216;

    // As many letters as have room there; wide ones count twice.
    private const int MostWidth = 28;
    private const int FirstWide = 0x1100;

    /// <summary>The names, each with its number.</summary>
    /// <param name="stages">The stages, in the author's order.</param>
    /// <param name="middle">Where the middle of each row is.</param>
    public static IEnumerable<XElement> Of(ImmutableArray<StageSittings> stages, Func<int, double> middle) =>
        stages.Select((each, row) => Svg.Text("mark beside", Right, middle(row) + 4, Cut($"{row + 1} {each.Stage.Title}")));

    private static string Cut(string text)
    {
        var (kept, width) = (new StringBuilder(), 0);
        var letters = StringInfo.GetTextElementEnumerator(text.ReplaceLineEndings(" "));
        while (letters.MoveNext())
        {
            var letter = letters.GetTextElement();
            width += letter[0] < FirstWide ? 1 : 2;
            if (width > MostWidth)
                return $"{kept.ToString().TrimEnd()}…";
            kept.Append(letter);
        }

        return kept.ToString();
    }
}
