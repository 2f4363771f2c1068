using System.Collections.Concurrent;
using QRCoder;
using QRCoder.Exceptions;

namespace HintBook.Cards.Codes;

/// <summary>A QR code (ISO/IEC 18004): its square of dark and light modules, without the quiet zone.</summary>
public sealed class QrMatrix
{
    /// <summary>Light modules on every side that belong to the symbol (ISO/IEC 18004).</summary>
    public const int QuietZone = 4;

    // The signs of QR's alphanumeric mode besides figures and capitals (ISO/IEC 18004, table 5).
    private const string Signs = " $%*+-./:";

    // How large a code is follows from a text's length and kind, and so does its level: it is found once, and then each code is made once.
    private static readonly ConcurrentDictionary<(int Length, Kind Kind), QRCodeGenerator.ECCLevel> Levels = new();

    private readonly bool[] dark;

    private enum Kind
    {
        Numeric,
        Alphanumeric,
        Ascii,
        Other,
    }

    internal QrMatrix(int size, bool[] dark)
    {
        Size = size;
        this.dark = dark;
    }

    /// <summary>Modules on a side: 17 + 4 × version, so 21 to 177.</summary>
    public int Size { get; }

    /// <summary>Modules on a side with the quiet zone.</summary>
    public int SizeWithQuietZone => Size + (2 * QuietZone);

    /// <summary>Whether a module is dark; those outside the symbol are light.</summary>
    public bool this[int x, int y] => x >= 0 && y >= 0 && x < Size && y < Size && dark[(y * Size) + x];

    /// <summary>
    /// The smallest code that says a text and repairs at least 15 in 100 (level M), or more where that costs no larger
    /// symbol; null where no code is large enough.
    /// </summary>
    /// <param name="text">An address in ASCII.</param>
    public static QrMatrix? Encode(string text)
    {
        var alike = (text.Length, KindOf(text));
        if (Levels.TryGetValue(alike, out var level))
            return Make(text, level);
        if (EncodeBest(text) is not { } best)
            return null;
        // What isn't ASCII has letters of one, two or three bytes.
        if (alike.Item2 != Kind.Other)
            Levels.TryAdd(alike, best.Level);
        return best.Code;
    }

    private static Kind KindOf(string text) =>
        text.All(char.IsAsciiDigit) ? Kind.Numeric
        : text.All(sign => char.IsAsciiDigit(sign) || char.IsAsciiLetterUpper(sign) || Signs.Contains(sign)) ? Kind.Alphanumeric
        : text.All(char.IsAscii) ? Kind.Ascii
        : Kind.Other;

    private static (QrMatrix Code, QRCodeGenerator.ECCLevel Level)? EncodeBest(string text)
    {
        if (Make(text, QRCodeGenerator.ECCLevel.M) is not { } least)
            return null;
        var better = Make(text, QRCodeGenerator.ECCLevel.Q);
        if (better?.Size != least.Size)
            return (least, QRCodeGenerator.ECCLevel.M);
        var best = Make(text, QRCodeGenerator.ECCLevel.H);
        return best?.Size == least.Size ? (best, QRCodeGenerator.ECCLevel.H) : (better, QRCodeGenerator.ECCLevel.Q);
    }

    private static QrMatrix? Make(string text, QRCodeGenerator.ECCLevel level)
    {
        try
        {
            using var data = QRCodeGenerator.GenerateQrCode(text, level);
            return Encode(data);
        }
        catch (DataTooLongException)
        {
            return null;
        }
    }

    // QRCoder's matrix has the quiet zone around it.
    internal static QrMatrix Encode(QRCodeData data)
    {
        var size = data.ModuleMatrix.Count - (2 * QuietZone);
        var modules = new bool[size * size];
        for (var y = 0; y < size; y++)
        {
            for (var x = 0; x < size; x++)
                modules[(y * size) + x] = data.ModuleMatrix[y + QuietZone][x + QuietZone];
        }

        return new(size, modules);
    }
}
