using System.Collections.Immutable;
using System.Runtime.InteropServices;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Webp;
using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;

namespace HintBook.Photos;

/// <summary>
/// Turns the author's photo into the pictures of the site: upright, without a word of metadata, in several widths, as JPEG.
/// A pure function of its bytes, on one thread: whoever has many photos develops several at a time.
/// </summary>
public static class PhotoPipeline
{
    // A JPEG's sides are 16-bit numbers (ITU-T T.81, B.2.2).
    private const int LongestSide = 65_535;

    // Wide enough for a page of A4 at 300 dots to the inch, and good enough to be developed once more.
    private const int LongestKept = 2400;
    private const int QualityKept = 92;

    // Three decoders, so that no other kind of file ever reaches one, and none of them reads metadata: what isn't read can't
    // be published.
    private static readonly Configuration Decoding = ThreeKinds();

    /// <summary>
    /// What a photo's pictures will be, as its header and its end tell; nothing is decoded. Never throws for what is in the file.
    /// </summary>
    /// <param name="original">The photo as the author saved it: JPEG, PNG or WebP.</param>
    /// <param name="salt">The book's identity.</param>
    /// <param name="settings">Widths, quality and limits.</param>
    public static PhotoPlan Plan(ReadOnlyMemory<byte> original, string salt, PhotoSettings settings)
    {
        if (original.Length > settings.MaxFileBytes)
            return new UnfitPhoto(new TooLarge(original.Length));
        if (ImageHeader.Read(original) is not { } header)
            return new UnfitPhoto(new NotAPicture(ImageHeader.LooksLike(original.Span)));
        if (Identify(original) is not { Width: > 0, Height: > 0 } info)
            return new UnfitPhoto(header.Complete ? new Broken() : new CutShort());
        if ((long)info.Width * info.Height > settings.MaxPixels || Math.Max(info.Width, info.Height) > LongestSide)
            return new UnfitPhoto(new TooManyPixels(info.Width, info.Height));
        if (header.Moving)
            return new UnfitPhoto(new Moving());
        if (!header.Complete)
            return new UnfitPhoto(new CutShort());

        var orientation = Orientation.Read(header.Exif);
        var upright = Turned(new Size(info.Width, info.Height), orientation);
        var key = KeyOf(original, salt, settings);
        return new PlannedPhoto(
            key,
            orientation,
            new([.. WidthsFor(upright.Width, settings).Select(width => new PictureFile(key.PathOf(width), width, HeightAt(width, upright)))]));
    }

    /// <summary>The key of a photo: one whose colours are converted has another than the same pixels without a profile.</summary>
    /// <inheritdoc cref="Plan"/>
    public static PhotoKey KeyOf(ReadOnlyMemory<byte> original, string salt, PhotoSettings settings) =>
        PhotoKey.Compute(original.Span, salt, ProfileOf(original) is null ? settings : settings with { Version = settings.Version + 1 });

    /// <summary>Develops one photo. Never throws for what is in the file. Transparency comes out on white.</summary>
    /// <param name="original">The photo's bytes, from which the plan was made.</param>
    /// <param name="plan">What its pictures will be.</param>
    /// <param name="settings">The settings of the plan.</param>
    public static PhotoResult Develop(ReadOnlyMemory<byte> original, PlannedPhoto plan, PhotoSettings settings)
    {
        try
        {
            return Print(original, plan, settings);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // A decoder that meets damaged bytes may throw anything from its own exceptions to an index out of range.
            return new RejectedPhoto(new Broken());
        }
    }

    /// <summary>Plans and develops one photo.</summary>
    /// <inheritdoc cref="Plan"/>
    public static PhotoResult Develop(ReadOnlyMemory<byte> original, string salt, PhotoSettings settings) => Plan(original, salt, settings) switch
    {
        PlannedPhoto plan => Develop(original, plan, settings),
        UnfitPhoto(var problem) => new RejectedPhoto(problem),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>A photo for paper, cut to a place around its middle, at 300 dots to the inch or its own; null where it can't be developed.</summary>
    /// <param name="original">The photo's bytes, from which the plan was made.</param>
    /// <param name="plan">What its pictures on the site will be.</param>
    /// <param name="width">The place's width, in millimetres.</param>
    /// <param name="height">The place's height, in millimetres.</param>
    /// <param name="whole">Whether all of it is shown, within the place, instead of being cut to it.</param>
    public static PrintedPhoto? ForPaper(ReadOnlyMemory<byte> original, PlannedPhoto plan, double width, double height, bool whole)
    {
        try
        {
            using var stored = Image.Load(Decoding, original.Span);
            var upright = Turned(stored.Size(), plan.Orientation);
            var scale = whole
                ? Math.Min(width / upright.Width, height / upright.Height)
                : Math.Max(width / upright.Width, height / upright.Height);
            var dots = (int)Math.Round(PrintedPhoto.MillimetresPerInch / scale);
            var size = At(Math.Min(dots, PrintedPhoto.Resolution), scale, upright);
            using var picture = Upright(stored, plan.Orientation, size);
            if (!whole)
                picture.Mutate(each => each.Crop(Middle(size, width / height)));
            ToSrgb(picture, original);
            Forget(picture.Metadata);
            return new(Encode(picture, PhotoSettings.Standard.Quality), picture.Width, picture.Height, dots);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // As in developing for the site.
            return null;
        }
    }

    /// <summary>
    /// A photo for the book's own folder: upright, without a word of metadata, no larger than print needs. Never throws for what is in the file.
    /// </summary>
    /// <param name="name">What its maker calls it.</param>
    /// <param name="original">The photo as the camera saved it: JPEG, PNG or WebP.</param>
    /// <param name="settings">The limits.</param>
    public static PhotoKeeping Keep(string name, ReadOnlyMemory<byte> original, PhotoSettings settings)
    {
        var plan = Plan(original, "", settings);
        if (plan is not PlannedPhoto planned)
            return NotKept(plan);
        try
        {
            using var stored = Image.Load(Decoding, original.Span);
            var size = Turned(stored.Size(), planned.Orientation);
            var scale = Math.Min(1, (double)LongestKept / Math.Max(size.Width, size.Height));
            using var upright = Upright(
                stored, planned.Orientation, new(Math.Max(1, (int)Math.Round(size.Width * scale)), Math.Max(1, (int)Math.Round(size.Height * scale))));
            ToSrgb(upright, original);
            Forget(upright.Metadata);
            return new KeptPhoto(Encode(upright, QualityKept), upright.Width, upright.Height);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // As in developing for the site.
            return NotKept(new UnfitPhoto(new Broken()));
        }

        PhotoNotKept NotKept(PhotoPlan unfit)
        {
            var photo = new Books.Photo { File = new(name, Text.SourceFile.Unread(name).Top), Place = Books.Place.Front };
            var finding = PhotoFindings.Check(photo, unfit, settings).First();
            return new($"{finding.Message} {finding.Help}");
        }
    }

    private static Size At(int dots, double scale, Size upright)
    {
        var factor = scale * dots / PrintedPhoto.MillimetresPerInch;
        return new(Math.Max(1, (int)Math.Round(upright.Width * factor)), Math.Max(1, (int)Math.Round(upright.Height * factor)));
    }

    private static Rectangle Middle(Size size, double ratio)
    {
        var width = Math.Clamp((int)Math.Round(size.Height * ratio), 1, size.Width);
        var height = Math.Clamp((int)Math.Round(size.Width / ratio), 1, size.Height);
        return new((size.Width - width) / 2, (size.Height - height) / 2, width, height);
    }

    // The decoders drop the profile, so it is read from the file itself, and its colours are brought to sRGB before it is forgotten.
    private static void ToSrgb(Image<Rgb24> picture, ReadOnlyMemory<byte> original)
    {
        ProfileOf(original)?.Convert(picture);
    }

    // Null where it changes nothing, so that a photo in sRGB keeps its pixels and its pictures their names.
    private static ColourProfile? ProfileOf(ReadOnlyMemory<byte> original) =>
        ProfileBlocks.In(original) is { IsEmpty: false } block && ColourProfile.Read(block.Span) is { Matters: true } profile ? profile : null;

    private static IImageInfo? Identify(ReadOnlyMemory<byte> original)
    {
        var shared = MemoryMarshal.TryGetArray(original, out var array) ? array : original.ToArray();
        using var stream = new MemoryStream(shared.Array!, shared.Offset, shared.Count, writable: false);
        try
        {
            return Image.Identify(Decoding, stream);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // A header that stops half-way throws; which of the two problems it is, the structure knows better.
            return null;
        }
    }

    private static ResizedPhoto Print(ReadOnlyMemory<byte> original, PlannedPhoto plan, PhotoSettings settings)
    {
        using var stored = Image.Load(Decoding, original.Span);
        var largest = plan.Picture.Largest;
        using var upright = Upright(stored, plan.Orientation, new Size(largest.Width, largest.Height));
        ToSrgb(upright, original);
        Forget(upright.Metadata);

        // From the largest down, each from the one before: shrinking a small picture again costs far less than the camera's own.
        var prints = new Stack<ReadOnlyMemory<byte>>();
        foreach (var file in plan.Picture.Files.Reverse())
        {
            if (file.Width < upright.Width)
                upright.Mutate(picture => picture.Resize(file.Width, file.Height));
            prints.Push(Encode(upright, settings.Quality));
        }

        return new(plan.Key, plan.Picture, [.. prints]);
    }

    private static Size Turned(Size stored, int orientation) =>
        Orientation.SwapsSides(orientation) ? new Size(stored.Height, stored.Width) : stored;

    /// <summary>
    /// The largest print: shrunk first and turned then, since turning the camera's own pixels takes three times as long as
    /// shrinking them.
    /// </summary>
    private static Image<Rgb24> Upright(Image stored, int orientation, Size size)
    {
        var lying = Orientation.SwapsSides(orientation) ? new Size(size.Height, size.Width) : size;
        stored.Mutate(picture =>
        {
            if (picture.GetCurrentSize() != lying)
                picture.Resize(lying);
            Orientation.Mend(picture, orientation);
            if (stored is not Image<Rgb24>)
                picture.BackgroundColor(Color.White);
        });
        return stored.CloneAs<Rgb24>(Decoding);
    }

    /// <summary>The widths wanted that the photo has; its own where it is narrower than all of them. Nothing is ever enlarged.</summary>
    private static ImmutableArray<int> WidthsFor(int width, PhotoSettings settings) =>
        settings.Widths.Where(wanted => wanted <= width).Distinct().Order().DefaultIfEmpty(width).ToImmutableArray();

    private static int HeightAt(int width, Size of) =>
        Math.Max(1, (int)Math.Round((double)of.Height * width / of.Width, MidpointRounding.AwayFromZero));

    private static byte[] Encode(Image<Rgb24> picture, int quality)
    {
        using var stream = new MemoryStream();
        picture.Save(stream, new JpegEncoder { Quality = quality, ColorType = JpegColorType.YCbCrRatio420 });
        return stream.ToArray();
    }

    // The decoders were told to read none of this; a later release of theirs must not be able to change that unnoticed.
    private static void Forget(ImageMetadata metadata)
    {
        (metadata.ExifProfile, metadata.XmpProfile, metadata.IptcProfile) = (null, null, null);
        metadata.IccProfile = null;
        (metadata.HorizontalResolution, metadata.VerticalResolution) = (1, 1);
        metadata.ResolutionUnits = PixelResolutionUnit.AspectRatio;
    }

    private static Configuration ThreeKinds()
    {
        var three = new Configuration(new JpegConfigurationModule(), new PngConfigurationModule(), new WebpConfigurationModule())
        {
            MaxDegreeOfParallelism = 1,
        };
        three.ImageFormatsManager.SetDecoder(JpegFormat.Instance, new JpegDecoder { IgnoreMetadata = true });
        three.ImageFormatsManager.SetDecoder(PngFormat.Instance, new PngDecoder { IgnoreMetadata = true });
        three.ImageFormatsManager.SetDecoder(WebpFormat.Instance, new WebpDecoder { IgnoreMetadata = true });
        return three;
    }
}
