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
        ("lang", photo.Alt is null && photo.Marks.IsEmpty ? Html.Empty : site.LanguageOf(photo)),
        ("veiled", site.IsVeiled(photo)),
        ("mark_size", Number(picture.Largest.Width * MarkSize)),
        ("digit_size", Number(picture.Largest.Width * MarkSize * 1.2)),
        ("point_size", Number(picture.Largest.Width * MarkSize * 0.3)),
        ("marks", photo.Marks.IsEmpty ? null : View.List(
            photo.Marks.Zip(MarkPlaces.Of(photo.Marks, picture.Largest, picture.Largest.Width * MarkSize)).Select((mark, index) => View.Of(
                ("number", index + 1),
                ("x", Number(mark.Second.X)),
                ("y", Number(mark.Second.Y)),
                ("at_x", Number(mark.Second.AtX)),
                ("at_y", Number(mark.Second.AtY)),
                ("says", mark.First.Says.Value))))));

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
