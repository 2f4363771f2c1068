using HintBook.Audit.Mentions;
using HintBook.Audit.Sealed;

namespace HintBook.Audit;

/// <summary>Reads files of text that are no pages: scripts, data, manifests, lists. All that they say may be only what anyone may know.</summary>
internal static class PlainReader
{
    /// <summary>Reads a script, a service worker too.</summary>
    public static SiteFile Script(string path, string text, Secrets secrets) =>
        SealedForm.IsHandedOn(path, text) ? new(path) : Read(path, text, secrets, ProgramText.InScript(text), "in the script");

    /// <summary>Reads JSON: data, or a web app's manifest.</summary>
    public static SiteFile Data(string path, string text, Secrets secrets) => Read(path, text, secrets, ProgramText.InData(text), "in the data");

    /// <summary>Reads any other text; names of pictures and lists of contents in it once more by themselves.</summary>
    public static SiteFile Text(string path, string text, Secrets secrets) =>
        Read(path, text, secrets, [new(text, 0, Manner.Prose), .. Pictures(text), .. Listed(text, secrets.Listen(path).Language)], "in the text");

    private static IEnumerable<ProgramText.Piece> Pictures(string text) =>
        from name in PictureAddresses.In(text)
        select new ProgramText.Piece(name, 0, Manner.Picture);

    private static IEnumerable<ProgramText.Piece> Listed(string text, string language) =>
        from item in Contents.Names(text, language)
        select new ProgramText.Piece(item.Name, 0, item.Manner);

    /// <summary>What remarks and strings tell that they may not.</summary>
    public static IEnumerable<AuditFault> Faults(string path, string text, Secrets secrets, IEnumerable<ProgramText.Piece> pieces, string where)
    {
        if (secrets.IsEmpty || secrets.IsFree(path))
            return [];
        var listener = secrets.Listen(path);
        var lines = new LineMap(text);
        return
        [
            .. pieces.SelectMany(piece =>
            {
                var (line, column) = piece.At == 0 ? (0, 0) : lines.PlaceOf(piece.At);
                return listener.Hear(new(piece.Text, line, column, where, piece.Manner, secrets.Outside));
            }),
        ];
    }

    private static SiteFile Read(string path, string text, Secrets secrets, IEnumerable<ProgramText.Piece> pieces, string where) =>
        new(path) { Faults = [.. Faults(path, text, secrets, pieces, where)] };
}
