using System.Collections.Concurrent;
using PdfSharp.Fonts;

namespace HintBook.Cards.Typesetting;

/// <summary>Hands PDFsharp the fonts that the build embedded (see <c>Fonts.targets</c>), and never one of the machine's own.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    /// <summary>The family that has two weights; every other family is one font, named after its file.</summary>
    public const string Family = FontFile.Inter;

    private const string RegularFile = "Inter-Regular.ttf";
    private const string SemiBoldFile = "Inter-SemiBold.ttf";

    private static readonly Lazy<EmbeddedFonts> Installed = new(() =>
    {
        var fonts = new EmbeddedFonts();
        GlobalFontSettings.FontResolver = fonts;
        return fonts;
    });

    private readonly ConcurrentDictionary<string, byte[]> files = new();

    /// <summary>Tells PDFsharp where its fonts come from: once in the life of the process, from whichever thread is first.</summary>
    public static void Install() => _ = Installed.Value;

    /// <inheritdoc/>
    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new(familyName != Family ? familyName + FontFile.Extension : isBold ? SemiBoldFile : RegularFile);

    /// <inheritdoc/>
    public byte[] GetFont(string faceName) => files.GetOrAdd(faceName, Read);

    /// <summary>The bytes of a font, or null where this build was made without it.</summary>
    /// <param name="file">The name of its resource.</param>
    public static byte[]? Find(string file)
    {
        using var resource = typeof(EmbeddedFonts).Assembly.GetManifestResourceStream(file);
        if (resource is null)
            return null;
        using var bytes = new MemoryStream();
        resource.CopyTo(bytes);
        return bytes.ToArray();
    }

    private static byte[] Read(string file) =>
        Find(file) ?? throw new InvalidOperationException($"This build of HintBook was made without its font {file}.");
}
