using System.Collections.Concurrent;
using PdfSharp.Fonts;

namespace HintBook.Cards.Typesetting;

/// <summary>Hands PDFsharp the fonts that the build embedded (see <c>Fonts.targets</c>), and never one of the machine's own.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    /// <summary>The only family there is.</summary>
    public const string Family = "Inter";

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
        new(isBold ? SemiBoldFile : RegularFile);

    /// <inheritdoc/>
    public byte[] GetFont(string faceName) => files.GetOrAdd(faceName, Read);

    private static byte[] Read(string file)
    {
        using var resource = typeof(EmbeddedFonts).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"This build of HintBook was made without its font {file}.");
        using var bytes = new MemoryStream();
        resource.CopyTo(bytes);
        return bytes.ToArray();
    }
}
