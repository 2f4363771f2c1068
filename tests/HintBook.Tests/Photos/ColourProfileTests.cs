using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using HintBook.Photos;
using HintBook.Tests.House;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Tests.Photos;

/// <summary>Colours of other spaces brought to sRGB, against Debian's lcms tools, which share nothing with the program.</summary>
public class ColourProfileTests
{
    // Display P3 (SMPTE EG 432-1 primaries at D65) with the curve of sRGB, and Adobe RGB (1998) with a gamma of 563/256; colorants adapted to D50 as published
    // in ICC's and Adobe's own profiles (from memory; lcms is asked with these very numbers).
    private static readonly byte[] P3 = Profile(
        [(0.51512, 0.24120, -0.00105), (0.29198, 0.69225, 0.04189), (0.15710, 0.06657, 0.78407)],
        [.. "para"u8, 0, 0, 0, 0, 0, 3, 0, 0, .. Fixed(2.4), .. Fixed(1 / 1.055), .. Fixed(0.055 / 1.055), .. Fixed(1 / 12.92), .. Fixed(0.04045)]);

    private static readonly byte[] Adobe = Profile(
        [(0.60974, 0.31111, 0.01947), (0.20528, 0.62567, 0.06087), (0.14919, 0.06322, 0.74457)],
        [.. "curv"u8, 0, 0, 0, 0, 0, 0, 0, 1, 2, 51, 0, 0]);

    private static readonly byte[] Srgb = Profile(
        [(0.43607, 0.22249, 0.01392), (0.38515, 0.71687, 0.09708), (0.14307, 0.06061, 0.71410)],
        [.. "para"u8, 0, 0, 0, 0, 0, 3, 0, 0, .. Fixed(2.4), .. Fixed(1 / 1.055), .. Fixed(0.055 / 1.055), .. Fixed(1 / 12.92), .. Fixed(0.04045)]);

    [Theory]
    [InlineData("P3")]
    [InlineData("Adobe")]
    public void Colours_come_out_as_lcms_brings_them_to_sRGB(string which)
    {
        DebianProgram.Have("transicc", "liblcms2-utils");
        var profile = which == "P3" ? P3 : Adobe;
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, profile);
            var ours = ColourProfile.Read(profile)!;
            Rgb24[] colours =
            [
                new(0, 0, 0), new(255, 255, 255), new(128, 128, 128), new(200, 120, 60), new(120, 200, 140), new(60, 90, 180),
                new(30, 30, 40), new(230, 210, 160),
                new(150, 100, 90), new(255, 0, 0), new(0, 255, 0), new(0, 0, 255), new(220, 40, 60),
            ];
            foreach (var colour in colours)
            {
                var wanted = ByLcms(file, colour);
                var got = ours.Convert(colour);
                Assert.True(
                    Math.Abs(wanted.R - got.R) <= 1 && Math.Abs(wanted.G - got.G) <= 1 && Math.Abs(wanted.B - got.B) <= 1, $"{colour}: {got}, lcms {wanted}");
            }
        }
        finally
        {
            File.Delete(file);
        }
    }

    // W3C, CSS Color 4, sample of color(display-p3 1 0 0): outside sRGB; its red is clipped at 255, green and blue at 0. White stays white in any space.
    [Fact]
    public void White_stays_white_and_a_red_beyond_sRGB_is_the_reddest_there_is()
    {
        var profile = ColourProfile.Read(P3)!;
        Assert.Equal(new Rgb24(255, 255, 255), profile.Convert(new Rgb24(255, 255, 255)));
        Assert.Equal(new Rgb24(255, 0, 0), profile.Convert(new Rgb24(255, 0, 0)));
        Assert.True(profile.Matters);
    }

    [Fact]
    public void A_profile_of_sRGB_changes_nothing_and_is_passed_over() => Assert.False(ColourProfile.Read(Srgb)!.Matters);

    [Fact]
    public void A_damaged_profile_is_passed_over_wherever_it_is_cut()
    {
        for (var length = 0; length < P3.Length; length++)
            _ = ColourProfile.Read(P3.AsSpan(0, length));
        Assert.Null(ColourProfile.Read(P3.AsSpan(0, 200)));
    }

    [Fact]
    public void A_photo_of_a_wide_space_is_published_in_sRGB_under_another_name()
    {
        var plain = Shots.Jpeg(40, 30);
        var wide = WithProfile(plain, P3);
        var settings = PhotoSettings.Standard;
        var (one, other) = ((ResizedPhoto)PhotoPipeline.Develop(plain, "salt", settings), (ResizedPhoto)PhotoPipeline.Develop(wide, "salt", settings));
        Assert.False(one.Bytes[0].Span.SequenceEqual(other.Bytes[0].Span));
        Assert.Equal(-1, other.Bytes[0].Span.IndexOf("ICC_PROFILE"u8));
        var same = (ResizedPhoto)PhotoPipeline.Develop(WithProfile(plain, Srgb), "salt", settings);
        Assert.True(one.Bytes[0].Span.SequenceEqual(same.Bytes[0].Span));
    }

    /// <summary>The same picture with a profile of Display P3, as telephones write it.</summary>
    internal static byte[] InP3(byte[] jpeg) => WithProfile(jpeg, P3);

    private static Rgb24 ByLcms(string profile, Rgb24 colour)
    {
        var start = new System.Diagnostics.ProcessStartInfo("transicc", ["-n", "-t1", $"-i{profile}", "-o*sRGB"])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = System.Diagnostics.Process.Start(start)!;
        process.StandardInput.Write($"{colour.R}\n{colour.G}\n{colour.B}\n");
        process.StandardInput.Close();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var numbers = said.Split((char[])[' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries)
            .Select(word => double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : (double?)null)
            .OfType<double>().ToArray();
        Assert.True(numbers.Length >= 3, said);
        return new(Level(numbers[^3]), Level(numbers[^2]), Level(numbers[^1]));

        // What sRGB can't show lies beyond the ends.
        static byte Level(double number) => (byte)Math.Round(Math.Clamp(number, 0, 255));
    }

    // ITU-T T.81: after the start of the image, a segment APP2 (ICC.1:2022, B.4).
    private static byte[] WithProfile(byte[] jpeg, byte[] profile)
    {
        byte[] body = [.. "ICC_PROFILE\0"u8, 1, 1, .. profile];
        return [.. jpeg[..2], 0xFF, 0xE2, (byte)((body.Length + 2) >> 8), (byte)((body.Length + 2) & 0xFF), .. body, .. jpeg[2..]];
    }

    // ICC.1:2022: a header of 128 bytes, a table of tags, their data at multiples of four.
    private static byte[] Profile((double X, double Y, double Z)[] colorants, byte[] curve)
    {
        var data = new List<(string Tag, byte[] Bytes)>
        {
            ("desc", [.. "mluc"u8, 0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 12, .. "enUS"u8, 0, 0, 0, 4, 0, 0, 0, 28, 0, (byte)'t', 0, (byte)'t']),
            ("wtpt", [.. "XYZ "u8, 0, 0, 0, 0, .. Fixed(0.9642), .. Fixed(1), .. Fixed(0.8249)]),
        };
        data.AddRange(colorants.Select((at, i) => ($"{"rgb"[i]}XYZ", (byte[])[.. "XYZ "u8, 0, 0, 0, 0, .. Fixed(at.X), .. Fixed(at.Y), .. Fixed(at.Z)])));
        data.AddRange("rgb".Select(channel => ($"{channel}TRC", curve)));
        var table = new List<byte>();
        var bodies = new List<byte>();
        var start = 128 + 4 + (12 * data.Count);
        foreach (var (tag, bytes) in data)
        {
            table.AddRange(Encoding.ASCII.GetBytes(tag));
            table.AddRange(Number(start + bodies.Count));
            table.AddRange(Number(bytes.Length));
            bodies.AddRange(bytes);
            while (bodies.Count % 4 != 0)
                bodies.Add(0);
        }

        byte[] profile = [.. new byte[128], .. Number(data.Count), .. table, .. bodies];
        Number(profile.Length).CopyTo(profile, 0);
        Number(0x04300000).CopyTo(profile, 8);
        "mntrRGB XYZ "u8.CopyTo(profile.AsSpan(12));
        "acsp"u8.CopyTo(profile.AsSpan(36));
        byte[] illuminant = [.. Fixed(0.9642), .. Fixed(1), .. Fixed(0.8249)];
        illuminant.CopyTo(profile, 68);
        return profile;
    }

    private static byte[] Fixed(double value) => Number((int)Math.Round(value * 65536));

    private static byte[] Number(int value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, value);
        return bytes;
    }
}
