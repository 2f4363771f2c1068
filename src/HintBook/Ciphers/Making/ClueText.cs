using System.Globalization;
using System.Text;
using HintBook.Text;

namespace HintBook.Ciphers.Making;

/// <summary>What <c>clue</c> prints.</summary>
public static class ClueText
{
    private const int MostOthers = 4;

    /// <summary>For people: the clue, its mask in millimetres, what to write into the book, what the proof says, and other clues to choose from.</summary>
    /// <param name="made">The clue.</param>
    /// <param name="choices">Others, each with its variant.</param>
    public static string Write(Attempt.Made made, IEnumerable<(int Variant, MadeClue Clue)> choices)
    {
        var (clue, proof) = made;
        var text = new StringBuilder();
        text.Append(clue.Text).Append("\n\n");
        if (clue.Mask is { } mask)
            Mask(text, mask);
        text.Append(Clues.Written(clue)).Append('\n');
        text.Append(CultureInfo.InvariantCulture, $"{proof.Says.Word,-12}{string.Join(", ", clue.Reads.Select(step => step.Way))}: {proof.Steps[^1].To}\n");
        foreach (var other in proof.Others.Where(other => other.Likely).Take(MostOthers))
            text.Append(CultureInfo.InvariantCulture, $"            a solver may set {TerminalText.Shown(other.Setting)} ({other.How})\n");
        foreach (var (place, choice) in choices.Index())
        {
            text.Append(place == 0 ? "\nOr take one of these:\n" : "");
            text.Append(CultureInfo.InvariantCulture, $"--variant {choice.Variant,-2}{choice.Clue.Text.Replace("\n", " / ", StringComparison.Ordinal)}\n");
        }

        return text.ToString();
    }

    /// <summary>
    /// For programs: <c>{"answer","as","clue","reads","verdict",
    /// "mask":{"width","height","clockwise","pitch","side","holes":[{"x","y"}]},"others":[{"setting","how"}],"choices":[{"variant","clue"}]}</c>.
    /// Lengths are millimetres; <c>mask</c> is null where there is none, <c>clockwise</c> for a mask that isn't turned.
    /// </summary>
    public static string WriteJson(Attempt.Made made, IEnumerable<(int Variant, MadeClue Clue)> choices) => JsonText.Write(json =>
    {
        var (clue, proof) = made;
        json.WriteStartObject();
        json.WriteString("answer", clue.Answer);
        json.WriteString("as", clue.Way);
        json.WriteString("clue", clue.Text);
        json.WriteStartArray("reads");
        foreach (var step in clue.Reads)
            json.WriteStringValue(step.Written);
        json.WriteEndArray();
        json.WriteString("verdict", proof.Says.Word);
        if (clue.Mask is { } mask)
        {
            json.WriteStartObject("mask");
            json.WriteNumber("width", mask.Width);
            json.WriteNumber("height", mask.Height);
            if (mask.Clockwise is { } clockwise)
                json.WriteBoolean("clockwise", clockwise);
            else
                json.WriteNull("clockwise");
            json.WriteNumber("pitch", Grille.Pitch);
            json.WriteNumber("side", Grille.HoleSide);
            json.WriteStartArray("holes");
            foreach (var hole in mask.Holes)
            {
                json.WriteStartObject();
                json.WriteNumber("x", hole.X);
                json.WriteNumber("y", hole.Y);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("mask");
        }

        json.WriteStartArray("others");
        foreach (var other in proof.Others)
        {
            json.WriteStartObject();
            json.WriteString("setting", JsonText.Whole(other.Setting));
            json.WriteString("how", other.How);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("choices");
        foreach (var (variant, choice) in choices)
        {
            json.WriteStartObject();
            json.WriteNumber("variant", variant);
            json.WriteString("clue", choice.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    });

    /// <summary>The ways of making clues, each with what it makes.</summary>
    public static string WriteWays() =>
        string.Concat(Clues.Ways.Select(way => $"{way.Name}\n    {way.Says}\n"));

    private static void Mask(StringBuilder text, Grille mask)
    {
        text.Append(CultureInfo.InvariantCulture, $"mask        {mask.Width:0.#} × {mask.Height:0.#} mm, letters {Grille.Pitch:0.#} mm apart");
        text.Append(mask.Clockwise switch
        {
            null => "\n",
            true => "; turned clockwise by a quarter, three times\n",
            false => "; turned anticlockwise by a quarter, three times\n",
        });
        text.Append(CultureInfo.InvariantCulture, $"holes       {Grille.HoleSide:0.#} × {Grille.HoleSide:0.#} mm, from the left and from the top:\n");
        foreach (var hole in mask.Holes)
            text.Append(CultureInfo.InvariantCulture, $"            {hole.X,5:0.0} mm  {hole.Y,5:0.0} mm\n");
        text.Append('\n');
    }
}
