using System.Globalization;
using System.Text;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Benchmarks.Books;

/// <summary>
/// A book as large as asked for: stages in rows of four branches that join, each with about 120 words of help; photos of
/// 12 megapixels. Invented, and the same every time.
/// </summary>
internal static class MadeBook
{
    private const string Words =
        "the lid turns under your hand and a small brass peg rises from the wood behind it look at the grain where it changes "
        + "its way and hold the box level while you slide the panel to the left until it stops then let go and listen";

    /// <summary>Writes the book's folder.</summary>
    /// <param name="folder">Where to.</param>
    /// <param name="stages">How many stages.</param>
    /// <param name="photos">How many photos, spread over the stages; at most one for each.</param>
    /// <param name="cards">Whether it has an address, and so cards.</param>
    /// <param name="photoWidth">The photos' width in pixels; they are three quarters as high.</param>
    public static void Write(string folder, int stages, int photos, bool cards, int photoWidth = 4000)
    {
        Directory.CreateDirectory(Path.Combine(folder, "stages"));
        Directory.CreateDirectory(Path.Combine(folder, "photos"));
        File.WriteAllText(Path.Combine(folder, "book.yaml"), BookYaml(stages, cards));
        var every = photos == 0 ? int.MaxValue : Math.Max(1, stages / photos);
        for (var i = 0; i < stages; i++)
        {
            var photo = i % every == 0 && i / every < photos;
            File.WriteAllText(Path.Combine(folder, "stages", string.Create(CultureInfo.InvariantCulture, $"{i + 1:0000}-stage-{i}.md")), StageText(i, photo));
        }

        WritePhotos(Path.Combine(folder, "photos"), stages, photos, every, photoWidth);
    }

    private static string BookYaml(int stages, bool cards)
    {
        var text = new StringBuilder("title: A Made Book\nmaker: { name: Nobody, help: mailto:help@nobody.example }\ncautions: [ heavy, small-parts ]\n");
        if (cards)
            text.Append("address: https://nobody.example/made/\n");
        text.Append(CultureInfo.InvariantCulture, $"goal: [ token-{stages - 1} ]\nthings:\n");
        for (var i = 0; i < stages; i++)
        {
            var redHerring = IsNeeded(i, stages) ? "" : ", red-herring: true";
            text.Append(CultureInfo.InvariantCulture, $"  token-{i}: {{ name: token {i}, place: in its place{redHerring} }}\n");
        }

        return text.ToString();
    }

    // Rows of four: every stage of a row needs the first two of the row before.
    private static IEnumerable<int> Needs(int stage) => stage < 4 ? [] : [((stage / 4) - 1) * 4, (((stage / 4) - 1) * 4) + 1];

    private static bool IsNeeded(int stage, int stages) => stage % 4 < 2 || stage == stages - 1;

    private static string StageText(int i, bool photo)
    {
        var needs = string.Join(", ", Needs(i).Select(need => $"token-{need}"));
        return string.Create(CultureInfo.InvariantCulture,
            $"""
            ---
            title: Stage number {i}
            sign: The panel of place {i} has come loose.
            {(needs.Length == 0 ? "" : $"needs: [ {needs} ]\n")}gives: [ token-{i} ]
            undo: {"{"} put-back: [ token-{i} ], note: "Slide it in until it clicks." {"}"}
            minutes: {5 + (i % 20)}
            {(photo ? $"photos: {{ answer: {{ file: photo-{i}.jpg, alt: The open panel }} }}" : "cautions: [ sharp-edge ]")}
            ---
            # Nudge
            {Sentence(i, 25)}

            # Clue
            {Sentence(i + 7, 20)} *{Sentence(i + 3, 5)}*

            - {Sentence(i + 11, 8)}
            - {Sentence(i + 13, 8)}

            # Answer
            Take token {i}. {Sentence(i + 17, 30)} **{Sentence(i + 5, 4)}** {Sentence(i + 19, 20)}

            # Reset
            {Sentence(i + 23, 10)}
            """);
    }

    private static string Sentence(int from, int count)
    {
        var all = Words.Split(' ');
        var words = string.Join(' ', Enumerable.Range(from, count).Select(i => all[i * 7 % all.Length]));
        return char.ToUpperInvariant(words[0]) + words[1..] + ".";
    }

    // Eight pictures of 12 megapixels; the others differ from them in a remark only, which makes them other files.
    private static void WritePhotos(string folder, int stages, int photos, int every, int width)
    {
        var pictures = Enumerable.Range(0, Math.Min(8, photos)).AsParallel().AsOrdered().Select(seed => Picture(seed, width)).ToArray();
        var written = 0;
        for (var i = 0; i < stages && written < photos; i += every, written++)
            File.WriteAllBytes(Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"photo-{i}.jpg")), WithRemark(pictures[written % 8], i));
    }

    private static byte[] Picture(int seed, int width)
    {
        using var image = new Image<Rgb24>(width, width * 3 / 4);
        image.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < rows.Height; y++)
            {
                var row = rows.GetRowSpan(y);
                for (var x = 0; x < row.Length; x++)
                {
                    var grain = unchecked((uint)((x * 374761393) + (y * 668265263) + (seed * 1442695041))) >> 27;
                    var wave = 60 * Math.Sin((x + (seed * 97)) / 53.0) * Math.Cos(y / 71.0);
                    row[x] = new Rgb24((byte)(130 + wave + grain), (byte)(100 + (wave / 2) + grain), (byte)(70 + grain));
                }
            }
        });
        image.Metadata.ExifProfile = new ExifProfile();
        image.Metadata.ExifProfile.SetValue(ExifTag.Orientation, (ushort)(seed % 2 == 0 ? 1 : 6));
        using var memory = new MemoryStream();
        image.SaveAsJpeg(memory, new JpegEncoder { Quality = 90 });
        return memory.ToArray();
    }

    // A comment segment (ITU-T T.81, B.2.4.5) after the start of the image.
    private static byte[] WithRemark(byte[] jpeg, int number)
    {
        var remark = Encoding.ASCII.GetBytes($"photo {number}");
        return [.. jpeg[..2], 0xFF, 0xFE, 0, (byte)(remark.Length + 2), .. remark, .. jpeg[2..]];
    }
}
