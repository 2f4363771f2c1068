using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Text;
using HarfBuzzSharp;

namespace HintBook.Cards.Typesetting;

/// <summary>One font that the build embedded, as HarfBuzz reads it. Immutable once opened, so any thread may use it.</summary>
internal sealed class FontFile
{
    /// <summary>The ending of a font's resource.</summary>
    public const string Extension = ".ttf";

    /// <summary>The face that sets Latin, Greek and Cyrillic; PDFsharp draws it without shaping.</summary>
    public const string Inter = "Inter";

    private static readonly ConcurrentDictionary<string, FontFile?> Open = new(StringComparer.Ordinal);

    private FontFile(string name, Font font, int unitsPerEm) => (Name, Shaper, UnitsPerEm) = (name, font, unitsPerEm);

    /// <summary>The resource's name without its ending, which is PDFsharp's family as well.</summary>
    public string Name { get; }

    /// <summary>The font for shaping, in its own units.</summary>
    public Font Shaper { get; }

    /// <summary>Units to the em.</summary>
    public int UnitsPerEm { get; }

    /// <summary>The fonts of a typeface, in the order in which they are asked for a letter. Those that this build lacks are left out.</summary>
    public static ImmutableArray<FontFile> Of(Typeface face) => ByFace[(int)face];

    /// <summary>What PDFsharp calls a shaped font in a file, after the tag of its subset.</summary>
    public static string NameInPdf(string name) => name switch
    {
        "Arabic-Regular" => "IBM Plex Sans Arabic Regular",
        "Arabic-SemiBold" => "IBM Plex Sans Arabic Semi",
        "Japanese-Regular" => "M PLUS 1p Regular",
        "Japanese-SemiBold" => "M PLUS 1p,Bold",
        "Serif" => "EB Garamond Medium",
        "SerifItalic" => "EB Garamond,Italic",
        _ => "Barlow Semi Condensed Semi",
    };

    /// <summary>Whether the font has a letter.</summary>
    public bool Has(Rune rune) => Shaper.TryGetNominalGlyph(rune.Value, out var glyph) && glyph != 0;

    private static readonly ImmutableArray<ImmutableArray<FontFile>> ByFace =
    [
        All("Inter-Regular", "Arabic-Regular", "Japanese-Regular"),
        All("Inter-SemiBold", "Arabic-SemiBold", "Japanese-SemiBold"),
        All("Serif", "Inter-SemiBold", "Arabic-SemiBold", "Japanese-SemiBold"),
        All("SerifItalic", "Inter-Regular", "Arabic-Regular", "Japanese-Regular"),
        All("Narrow", "Inter-SemiBold", "Arabic-SemiBold", "Japanese-SemiBold"),
    ];

    private static ImmutableArray<FontFile> All(params string[] names) => [.. names.Select(name => Open.GetOrAdd(name, Read)).OfType<FontFile>()];

    private static FontFile? Read(string name)
    {
        if (EmbeddedFonts.Find(name + Extension) is not { } bytes)
            return null;

        // HarfBuzz reads the bytes where they lie for as long as the process lives, so they are pinned and never given back.
        var pinned = GCHandle.Alloc(bytes, GCHandleType.Pinned);
        var blob = new Blob(pinned.AddrOfPinnedObject(), bytes.Length, MemoryMode.ReadOnly);
        blob.MakeImmutable();
        var face = new Face(blob, 0);
        face.MakeImmutable();
        var font = new Font(face);
        font.SetScale(face.UnitsPerEm, face.UnitsPerEm);
        font.SetFunctionsOpenType();
        return new(name, font, face.UnitsPerEm);
    }
}
