using System.Globalization;
using System.Text;
using System.Text.Json;
using HintBook.Books;
using HintBook.Print;
using HintBook.Text;

namespace HintBook.Bench;

/// <summary>What <c>packing</c> prints, for people and for programs.</summary>
public static class PackingText
{
    /// <summary>The list as text.</summary>
    /// <param name="book">The book, for one copy or for all.</param>
    /// <param name="list">The list.</param>
    /// <param name="serial">The copy that it is for; null for all.</param>
    public static string Write(Book book, PackingList list, string? serial)
    {
        var text = new StringBuilder();
        var copy = serial is null ? "" : $", copy {serial}";
        text.Append(CultureInfo.InvariantCulture, $"“{book.Title.Value}”{copy}: {Words.Count(list.Count, "thing")} to pack\n");
        Part(text, "In the box", list.Contents.Select(Contents));
        var stands = list.Stands.Select(each => $"{each.Part.Name}: {each.Part.Say(each.Position)}{Where(each.Part.Place)}");
        Part(text, "How it stands", stands.Concat(list.TurnedAway.Select(code => $"{code.Name}: wheels turned away from {CodeOf(code)}")));
        Part(text, "Goes in fresh", list.Fresh.Select(thing => thing.Name));
        Part(text, "Cells and charge", list.Power.Select(Power));
        Part(text, "For the journey", list.ForThePost);
        Part(text, "In the carton", list.Papers.Select(Paper));
        return text.ToString();
    }

    /// <summary>What doesn't add up, as a sentence; null where all does.</summary>
    public static string? Problem(PackingList list) => list.WithoutPlace.IsEmpty ? null
        : $"{Words.Count(list.Count, "thing")} must be in the box, and of {Words.List(list.WithoutPlace.Select(thing => $"“{thing.Name}”"))} "
            + "no place is written. Write “place:” with it in book.yaml, so that whoever packs can count.";

    /// <summary>The list as JSON.</summary>
    /// <param name="list">The list.</param>
    /// <param name="serial">The copy that it is for; null for all.</param>
    public static string WriteJson(PackingList list, string? serial) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("copy", serial);
        json.WriteNumber("things", list.Count);
        json.WriteStartArray("contents");
        foreach (var kind in list.Contents)
        {
            json.WriteStartObject();
            json.WriteString("name", JsonText.Whole(kind.Name));
            json.WriteNumber("count", kind.Things.Length);
            json.WriteStartArray("things");
            foreach (var thing in kind.Things)
            {
                json.WriteStartObject();
                json.WriteString("id", thing.Id.Value);
                json.WriteString("starts", thing.Starts);
                json.WriteString("place", thing.Place is { } place ? JsonText.Whole(place) : null);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("stands");
        foreach (var stands in list.Stands)
            json.WriteString(stands.Part.Id.Value, stands.Position);
        json.WriteEndObject();
        json.WriteStartObject("turned-away-from");
        foreach (var code in list.TurnedAway)
            json.WriteString(code.Id.Value, code.Answer.Value);
        json.WriteEndObject();
        Names(json, "fresh", list.Fresh.Select(thing => thing.Id.Value));
        Names(json, "power", list.Power.Select(caution => Cautions.NameOf(caution.Kind)));
        Names(json, "for-the-post", list.ForThePost);
        json.WriteStartArray("papers");
        foreach (var paper in list.Papers)
        {
            json.WriteStartObject();
            json.WriteString("kind", PaperKinds.NameOf(paper.Kind));
            json.WriteNumber("count", paper.Count);
            Names(json, "codes", paper.Codes.Select(code => code.Id.Value));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Names(json, "without-place", list.WithoutPlace.Select(thing => thing.Id.Value));
        json.WriteEndObject();
    });

    private static void Part(StringBuilder text, string heading, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length == 0)
            return;
        text.Append(CultureInfo.InvariantCulture, $"\n{heading}\n");
        foreach (var line in all)
            text.Append(CultureInfo.InvariantCulture, $"  [ ] {line}\n");
    }

    private static string CodeOf(Code code) => code.Answer.Value.Length == 0 ? "the copy's code" : code.Answer.Value;

    private static string Power(Caution caution) => Cautions.NameOf(caution.Kind) + (caution.Note is { } note ? $": {note}" : "");

    private static string Contents(PackedKind kind) => kind.Things is [var one]
        ? $"{one.Name}{At(one)}"
        : $"{kind.Things.Length} × {kind.Name}: {string.Join("; ", kind.Things.Select(thing => $"{thing.Name}{At(thing)}"))}";

    private static string At(Thing thing) => thing.Place is { } place ? $": {place}"
        : thing.Starts == Thing.InHand ? ": beside the box"
        : thing.Starts == Thing.Hidden ? ": (no place is written)"
        : $": {thing.Starts.Replace('-', ' ')}";

    private static string Where(string? place) => place is null ? "" : $" ({place})";

    private static string Paper(PackedPaper paper) => paper.Kind switch
    {
        PaperKind.Clues => $"clues of paper: {(paper.Count == 0 ? "none" : string.Join(", ", paper.Codes.Select(code => code.Name)))}",
        PaperKind.Cards => Words.Count(paper.Count, "card"),
        _ => PaperKinds.NameOf(paper.Kind),
    };

    private static void Names(Utf8JsonWriter json, string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (var one in names)
            json.WriteStringValue(JsonText.Whole(one));
        json.WriteEndArray();
    }
}
