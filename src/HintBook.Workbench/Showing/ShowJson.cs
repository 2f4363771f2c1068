using System.Collections.Immutable;

namespace HintBook.Workbench.Showing;

/// <summary>The photos and the film of a stage as the page reads them.</summary>
internal static class ShowJson
{
    /// <summary>
    /// <c>readable</c> (false where the keys must be mended first), <c>places</c>, <c>photos</c> (<see cref="ShownPhoto"/>), <c>clip</c>
    /// (<see cref="ShownClip"/>, or null), <c>films</c> and <c>limit</c>.
    /// </summary>
    /// <param name="stage">The stage, or null.</param>
    /// <param name="films">The films in the book's folder.</param>
    /// <param name="limit">The most bytes of a photo.</param>
    public static byte[] Of(StageShow? stage, ImmutableArray<string> films, long limit) => JsonLists.Document(json =>
    {
        json.WriteBoolean("readable", stage is not null);
        json.WriteTexts("places", StageShow.Places);
        json.WriteObjects("photos", stage?.Photos ?? [], photo =>
        {
            json.WriteString("place", photo.Place);
            json.WriteNumber("index", photo.Index);
            json.WriteString("file", photo.File);
            json.WriteString("alt", photo.Alt);
            json.WriteObjects("marks", photo.Marks, mark =>
            {
                json.WriteNumber("x", mark.X);
                json.WriteNumber("y", mark.Y);
                json.WriteString("says", mark.Says);
            });
        });
        if (stage?.Clip is { } clip)
        {
            json.WriteStartObject("clip");
            json.WriteString("file", clip.File);
            json.WriteString("from", clip.From);
            json.WriteString("to", clip.To);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("clip");
        }

        json.WriteTexts("films", films);
        json.WriteNumber("limit", limit);
    });
}
