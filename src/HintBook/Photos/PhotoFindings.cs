using HintBook.Books;
using HintBook.Text;

namespace HintBook.Photos;

/// <summary>What there is to say about photos.</summary>
internal static class PhotoFindings
{
    public static readonly FindingCode NotAPicture = new("HB5101", Severity.Error, "A photo that is not a picture");
    public static readonly FindingCode TooLarge = new("HB5102", Severity.Error, "A photo's file is too large");
    public static readonly FindingCode TooManyPixels = new("HB5103", Severity.Error, "A photo with too many pixels");
    public static readonly FindingCode CutShort = new("HB5104", Severity.Error, "A photo that is cut short");
    public static readonly FindingCode Broken = new("HB5105", Severity.Error, "A photo that is broken");
    public static readonly FindingCode Moving = new("HB5106", Severity.Error, "A photo that moves");
    public static readonly FindingCode Small = new("HB5107", Severity.Note, "A small photo");
    public static readonly FindingCode NoAlt = new("HB5108", Severity.Warning, "A photo without words");

    public static readonly FindingCode NotDrawn = new("HB5109", Severity.Error, "A drawn mark with something that isn't drawn");

    /// <summary>Every kind, for the guide.</summary>
    public static IReadOnlyList<FindingCode> All { get; } = [NotAPicture, TooLarge, TooManyPixels, CutShort, Broken, Moving, Small, NoAlt, NotDrawn];

    /// <summary>Everything to say about one photo, once it has been developed.</summary>
    public static IEnumerable<Finding> Check(Photo photo, PhotoResult developed, PhotoSettings settings) => developed switch
    {
        RejectedPhoto(var problem) => [OfProblem(photo, problem, settings)],
        ResizedPhoto prints => OfPicture(photo, prints.Picture, settings),
        _ => [],
    };

    /// <summary>What there is to say about one photo before it is developed.</summary>
    public static IEnumerable<Finding> Check(Photo photo, PhotoPlan plan, PhotoSettings settings) => plan switch
    {
        UnfitPhoto(var problem) => [OfProblem(photo, problem, settings)],
        PlannedPhoto planned => OfPicture(photo, planned.Picture, settings),
        _ => [],
    };

    private static IEnumerable<Finding> OfPicture(Photo photo, Picture picture, PhotoSettings settings)
    {
        if (photo.Alt is null)
            yield return OfMissingAlt(photo);
        if (picture.Largest.Width < settings.Widths.Min())
            yield return OfSmall(photo, picture.Largest, settings);
    }

    private static Finding OfProblem(Photo photo, PhotoProblem problem, PhotoSettings settings) => problem switch
    {
        Photos.NotAPicture(var looksLike) => NotAPicture.At(
            photo.File.At,
            $"“{photo.File}” is not a JPEG, PNG or WebP picture{(looksLike is null ? "" : $": it looks like {looksLike}")}.",
            "Open it in a photo program and save it as a JPEG; renaming the file is not enough."),
        Photos.TooLarge(var bytes) => TooLarge.At(
            photo.File.At,
            $"“{photo.File}” is {Mebibytes(bytes)}; photos of up to {Mebibytes(settings.MaxFileBytes)} are read.",
            "Save it as a JPEG with a quality of about 85: that is enough for any screen."),
        Photos.TooManyPixels(var width, var height) => TooManyPixels.At(
            photo.File.At,
            $"“{photo.File}” says that it is {Words.Grouped(width)} × {Words.Grouped(height)} pixels; "
                + $"up to {Words.Grouped(settings.MaxPixels / 1_000_000)} million pixels are read, and sides of up to 65,535.",
            $"Make it smaller: {Words.Grouped(settings.Widths.Max())} pixels in width are all that is shown."),
        Photos.CutShort => CutShort.At(
            photo.File.At,
            $"“{photo.File}” stops before its end: a part of the picture is missing.",
            "Copy it from the camera or phone again."),
        Photos.NotDrawn(var (what, instead, line)) => NotDrawn.At(
            photo.File.At,
            $"The mark “{photo.File}” has {what} (line {line}), which isn't drawn.",
            instead),
        Photos.Moving => Moving.At(
            photo.File.At,
            $"“{photo.File}” is an animation; a photo stands still.",
            "Save the frame that matters as a JPEG, or use a clip."),
        _ => Broken.At(
            photo.File.At,
            $"“{photo.File}” is damaged and can't be read as a picture.",
            "Copy it from the camera or phone again, or open it in a photo program and save it as a JPEG."),
    };

    private static Finding OfSmall(Photo photo, PictureFile largest, PhotoSettings settings) => Small.At(
        photo.File.At,
        $"“{photo.File}” is only {Words.Count(largest.Width, "pixel")} wide; it is shown as it is, and looks coarse on most screens.",
        $"Use the original photo: {Words.Grouped(settings.Widths.Max())} pixels or more in width are best, {Words.Grouped(settings.Widths.Min())} the least.");

    private static Finding OfMissingAlt(Photo photo) => NoAlt.At(
        photo.File.At,
        $"“{photo.File}” has no words for a reader who can't see it.",
        $"Write instead of the file alone: {{ file: {photo.File}, alt: \"…\" }}, with one sentence on what the picture shows, and no more than the place "
            + "where it stands may tell.");

    private static string Mebibytes(long bytes) => $"{(bytes + (1 << 20) - 1) >> 20} MB";
}
