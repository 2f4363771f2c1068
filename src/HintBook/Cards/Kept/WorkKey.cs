using System.Security.Cryptography;
using HintBook.Cards.Codes;
using HintBook.Photos.Drawings;

namespace HintBook.Cards.Kept;

/// <summary>Digests of everything that some work follows from: its input, and this very build with the libraries that it draws and reads with.</summary>
internal static class WorkKey
{
    /// <summary>The digest in small hexadecimal digits, after the name of the kind of work.</summary>
    /// <param name="kind">What kind of work.</param>
    /// <param name="input">Writes all that it follows from.</param>
    public static string Of(string kind, Action<BinaryWriter> input)
    {
        using var digest = SHA256.Create();
        using (var digesting = new CryptoStream(Stream.Null, digest, CryptoStreamMode.Write))
        // Numbers are gathered before they are digested; pictures and pages, which are large, are never held a second time.
        using (var gathered = new BufferedStream(digesting, 16_384))
        using (var writer = new BinaryWriter(gathered))
        {
            foreach (var build in ThisBuild.Ids)
                writer.Write(build.ToByteArray());
            input(writer);
        }

        return $"{kind} {Convert.ToHexStringLower(digest.Hash!)}";
    }

    /// <summary>The digest of a code in a picture whose modules have some size.</summary>
    public static string OfPicture(QrMatrix code, double module) => Of("picture", input =>
    {
        input.Write(module);
        Write(input, code);
    });

    /// <summary>The digest of a document.</summary>
    public static string OfPdf(string title, IEnumerable<PrintedPage> pages) => Of("pdf", input =>
    {
        input.Write(title);
        foreach (var page in pages)
            Write(input, page);
    });

    private static void Write(BinaryWriter input, PrintedPage page)
    {
        Write(input, page.Size.Width, page.Size.Height, page.Bleed ?? -1);
        Write(input, page.Look);
        input.Write(page.Things.Length);
        foreach (var thing in page.Things)
            Write(input, thing);
    }

    /// <summary>Writes all that a thing's look follows from.</summary>
    /// <exception cref="ArgumentException">The thing is of a kind that cards don't have.</exception>
    public static void Write(BinaryWriter input, Printed thing)
    {
        input.Write(thing.GetType().Name);
        switch (thing)
        {
            case PrintedText text:
                Write(input, text.X, text.Baseline, text.Size);
                input.Write(text.Text);
                Write(input, (int)text.Face, (int)text.Tone);
                input.Write(text.FromRight);
                input.Write(text.RightToLeft);
                break;
            case PrintedBox box:
                Write(input, box.Place);
                input.Write((int)box.Tone);
                break;
            case PrintedLine line:
                Write(input, line.X1, line.Y1, line.X2, line.Y2);
                input.Write((int)line.Tone);
                break;
            case PrintedStroke stroke:
                Write(input, [stroke.Points.Length, stroke.Thickness, .. stroke.Points.SelectMany(point => new[] { point.X, point.Y })]);
                input.Write((int)stroke.Tone);
                break;
            case PrintedShape shape:
                Write(input, [shape.Corners.Length, .. shape.Corners.SelectMany(point => new[] { point.X, point.Y })]);
                input.Write((int)shape.Tone);
                break;
            case PrintedPicture picture:
                Write(input, picture.Place);
                input.Write(SHA256.HashData(picture.Picture.Jpeg.Span));
                break;
            case PrintedDrawing drawing:
                Write(input, drawing.Place);
                input.Write(SHA256.HashData(SvgWriter.Write(drawing.Drawing)));
                break;
            case PrintedSign sign:
                Write(input, sign.Place);
                input.Write(sign.Sign);
                break;
            case PrintedTurned turned:
                Write(input, turned.Around);
                input.Write((int)turned.Turn);
                input.Write(turned.Things.Length);
                foreach (var each in turned.Things)
                    Write(input, each);
                break;
            case PrintedCode code:
                Write(input, code.X, code.Y, code.Module);
                Write(input, code.Code);
                break;
            default:
                throw new ArgumentException($"{thing.GetType().Name} has no digest.", nameof(thing));
        }
    }

    /// <summary>Writes the colours.</summary>
    public static void Write(BinaryWriter input, CardLook look)
    {
        foreach (var tone in Enum.GetValues<Tone>())
            input.Write(look.ColourOf(tone));
    }

    private static void Write(BinaryWriter input, QrMatrix code)
    {
        input.Write(code.Size);
        for (var y = 0; y < code.Size; y++)
        {
            for (var x = 0; x < code.Size; x++)
                input.Write(code[x, y]);
        }
    }

    /// <summary>Writes a rectangle.</summary>
    public static void Write(BinaryWriter input, Rect place) => Write(input, place.X, place.Y, place.Width, place.Height);

    private static void Write(BinaryWriter input, params ReadOnlySpan<double> numbers)
    {
        foreach (var number in numbers)
            input.Write(number);
    }
}
