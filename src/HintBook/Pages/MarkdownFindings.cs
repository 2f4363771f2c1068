using HintBook.Text;

namespace HintBook.Pages;

/// <summary>What can be wrong with the Markdown of a tier.</summary>
internal static class MarkdownFindings
{
    public static readonly FindingCode LinkDropped = new("HB7201", Severity.Warning, "a link is removed");
    public static readonly FindingCode ImageDropped = new("HB7202", Severity.Warning, "an image in the text is removed");
    public static readonly FindingCode TooDeep = new("HB7203", Severity.Error, "text nested too deeply");

    public static readonly FindingCode MarkupDropped = new("HB7204", Severity.Warning, "HTML in the text is removed");

    public static Finding Markup(Span at, IReadOnlyList<string> leftOut) => MarkupDropped.At(
        at,
        $"Removed from this text: {Words.List(leftOut.Take(8))}. HTML may set the text, but neither load, run, style nor ask for anything.",
        "Take it away. Photos and films go under photos: and clip:, and looks into a theme of your own.");

    public static Finding Link(Span at, string address) => LinkDropped.At(
        at,
        $"The link to “{Short(address)}” is removed, and its text stays: pages link only to http, https and mailto addresses and to #places on the same page.",
        "Write the whole address, starting with https://, or take the link away.");

    public static Finding Image(Span at, string address) => ImageDropped.At(
        at,
        $"The image “{Short(address)}” is removed, and its description stays: "
            + "a picture in the text could be neither cleaned of its metadata nor checked for secrets.",
        "Name it under photos: with the tier it belongs to, such as photos: { clue: card.jpg }.");

    public static Finding LeavesBounds(Span at, string message, string help) => TooDeep.At(at, message, help);

    public static Finding Deep(Span at) => TooDeep.At(
        at,
        $"This text nests lists, quotes or emphasis more than {ProseHtml.Deepest} deep; nobody could read it.",
        "Use at most a few levels.");

    private static string Short(string address) => address.Length <= 60 ? address : address[..57] + "…";
}
