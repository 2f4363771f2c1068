using System.Globalization;
using HintBook.Books;
using HintBook.Photos;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>Photos as templates get them, with their numbered marks drawn in the picture's own pixels.</summary>
internal static class PhotoView
{
    // A mark's radius as a part of the picture's width: 13 px on a phone of 360 px, where a digit in it can just be read.
    private const double MarkSize = 0.036;

    /// <summary>The photos of one place that were published; null for none.</summary>
    public static ScriptArray? Build(IEnumerable<Photo> photos, Place place, LanguageSite site)
    {
        var list = View.List(
            from photo in photos
            where photo.Place == place
            let picture = site.Plan.Pictures.GetValueOrDefault(photo.File.Value)
            where picture is not null
            select Build(photo, picture, site));
        return list.Count == 0 ? null : list;
    }

    /// <summary>One photo, if it was published; null otherwise.</summary>
    public static ScriptObject? Build(Photo photo, LanguageSite site) =>
        site.Plan.Pictures.GetValueOrDefault(photo.File.Value) is { } picture ? Build(photo, picture, site) : null;

    private static ScriptObject Build(Photo photo, Picture picture, LanguageSite site) => View.Of(
        ("src", site.From(picture.Files[0].Path)),
        ("srcset", string.Join(", ", picture.Files.Select(file => $"{site.From(file.Path)} {file.Width}w"))),
        ("largest", site.From(picture.Largest.Path)),
        ("width", picture.Largest.Width),
        ("height", picture.Largest.Height),
        ("alt", photo.Alt?.Value ?? site.Words["photo_without_alt"]),
        ("veiled", site.IsVeiled(photo)),
        ("mark_size", Number(picture.Largest.Width * MarkSize)),
        ("digit_size", Number(picture.Largest.Width * MarkSize * 1.2)),
        ("marks", photo.Marks.IsEmpty ? null : View.List(photo.Marks.Select((mark, index) => Build(mark, index, picture.Largest)))));

    // Where the author put it, but never hanging out of the picture.
    private static ScriptObject Build(Mark mark, int index, PictureFile picture)
    {
        var radius = (picture.Width * MarkSize) + 1;
        return View.Of(
            ("number", index + 1),
            ("x", Within(mark.X, picture.Width)),
            ("y", Within(mark.Y, picture.Height)),
            ("says", mark.Says.Value));

        string Within(double percent, int length) => Number(Math.Min(Math.Max(percent / 100 * length, radius), Math.Max(radius, length - radius)));
    }

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
