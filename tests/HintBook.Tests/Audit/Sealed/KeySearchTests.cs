using System.Buffers.Text;
using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using HintBook.Audit.Sealed;
using HintBook.Sealing;

namespace HintBook.Tests.Audit.Sealed;

/// <summary>A key that lies in a file of a sealed site is found, whatever it is the key of, however it is spelt, whatever file it is.</summary>
public sealed class KeySearchTests(SmallSealedSite site) : IClassFixture<SmallSealedSite>
{
    private const string Crockford = "0123456789ABCDEFGHJKMNPQRSTVWXYZ", Rfc4648 = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

    private static readonly byte[] Sought = [.. Enumerable.Range(0, 16).Select(each => (byte)(((37 * each) + 11) & 0xFF))];

    // What lies before the key in the same row of bits, so that it begins at every place in a letter.
    public static TheoryData<int> Before => [.. Enumerable.Range(0, 16)];

    [Theory]
    [MemberData(nameof(Before))]
    public void Every_spelling_is_found_wherever_the_key_begins_in_it(int before)
    {
        var search = new KeySearch([("the key", Sought)]);
        byte[] row = [.. Enumerable.Repeat((byte)0xA5, before), .. Sought, 0x5A, 1, 2];
        string[] written =
        [
            Convert.ToBase64String(row),
            Base64Url.EncodeToString(row),
            Convert.ToHexStringLower(row),
            Convert.ToHexString(row),
            string.Join(':', row.Select(each => $"{each:x2}")),
            Base32(row, Crockford),
            Base32(row, Crockford).ToLowerInvariant(),
            Grouped(Base32(row, Crockford)),
            Base32(row, Rfc4648),
            Base32(row, Rfc4648).ToLowerInvariant(),
        ];

        Assert.NotNull(search.In(row));
        Assert.All(written, text => Assert.NotNull(search.In(Encoding.ASCII.GetBytes($"<p>{text}</p>"))));
        // And with letters of the same alphabet before it, which shift every letter of it.
        Assert.All(written, text => Assert.NotNull(search.In(Encoding.ASCII.GetBytes($"\"{"abcdefg"[..(before % 8 % 7)]}{text}\""))));
    }

    [Fact]
    public void What_differs_in_one_bit_is_not_the_key()
    {
        var search = new KeySearch([("the key", Sought)]);

        // The first bits aren't compared where a key begins within a letter.
        Assert.All(Enumerable.Range(5, 123), bit =>
        {
            var other = Sought.ToArray();
            other[bit / 8] ^= (byte)(0x80 >> (bit % 8));
            Assert.Null(search.In(other));
            Assert.Null(search.In(Encoding.ASCII.GetBytes(Convert.ToBase64String(other))));
        });
    }

    [Fact]
    public void Noise_holds_no_key()
    {
        var noise = new byte[1 << 20];
        new Random(5).NextBytes(noise);
        var search = new KeySearch(Enumerable.Range(0, 20_000).Select(each => ($"{each}", SHA256.HashData(BitConverter.GetBytes(each)))));

        Assert.Null(search.In(noise));
        Assert.Null(search.In(Encoding.ASCII.GetBytes(Convert.ToBase64String(noise))));
    }

    public static TheoryData<string, string, string> Kinds
    {
        get
        {
            string[] keys = ["secret", "root", "box", "page", "card", "page card"];
            string[] files = ["index.html", "assets/more.css", "more.json", "more.svg", "more.txt", "more.png", "sw.js", "k/box-0.js", "p/more.bin"];
            string[] spellings = ["raw", "base64", "base64url", "hex", "letters", "base32"];
            return new([.. files.SelectMany((file, i) => keys.Select((key, k) => (key, file, spellings[(i + k) % spellings.Length])))]);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_key_in_any_file_is_found_by_the_audit(string key, string file, string spelling)
    {
        var bytes = KeyOf(key);

        var faults = site.Changed(folder =>
        {
            var path = Path.Combine(folder, file);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            byte[] before = File.Exists(path) ? File.ReadAllBytes(path) : "more: "u8.ToArray();
            File.WriteAllBytes(path, [.. before, .. Spelt(bytes, spelling)]);
        }).Faults;

        var fault = Assert.Single(faults, fault => fault.File == file && fault.Message.StartsWith("In this file stands the ", StringComparison.Ordinal));
        Assert.Null(new KeySearch([(key, bytes)]).In(Encoding.UTF8.GetBytes(fault.Message)));
    }

    [Theory]
    [InlineData("<img data-sealed-files=\"{0}w8p2m4q7r1t3v5 {1} 2 9000 400;0000000000000000 ffffffffffffffffffffffffffffffff 1 900 200\">")]
    [InlineData("<img data-sealed-files=\"0000000000000000 ffffffffffffffffffffffffffffffff 1 900 200;{0}w8p2m4q7r1t3v5 {1} 2 9000 400\">")]
    [InlineData("<video data-sealed-film=\"{0}w8p2m4q7r1t3v5 {1} 2 9000 video/webm\"></video>")]
    public void The_key_of_a_file_is_known_from_the_piece_that_shows_it(string piece)
    {
        var shell = new SealedShell("a.html", "") { Kind = "", Language = "", Tag = [], Epoch = [], Version = [], Pieces = [] };
        var said = string.Format(System.Globalization.CultureInfo.InvariantCulture, piece, "k9", Convert.ToHexStringLower(Sought));

        var search = KeySearch.For(new([], []), new(ImmutableDictionary<string, byte[]>.Empty, 0, []), GateKeys.None, [], [new(shell, [said], [])]);

        Assert.StartsWith("the key of the file k9w8", search.In(Sought), StringComparison.Ordinal);
    }

    private byte[] KeyOf(string kind)
    {
        var keys = new BookKeys(SmallSealedSite.Secret, SmallSealedSite.Id);
        return kind switch
        {
            "secret" => SmallSealedSite.Secret.Bytes.ToArray(),
            "root" => keys.Root.ToArray(),
            "box" => site.Epoch.BoxKey,
            "page" => site.Epoch.PageKey(site.Stages[1]),
            "card" => SealedCode.Read(site.Cards.InUse.First(card => card.Page is null).Code)!.Key,
            _ => SealedCode.Read(site.Cards.InUse.First(card => card.Page is not null).Code)!.Key,
        };
    }

    private static byte[] Spelt(byte[] key, string spelling) => spelling switch
    {
        "raw" => key,
        "base64" => Encoding.ASCII.GetBytes(Convert.ToBase64String(key)),
        "base64url" => Encoding.ASCII.GetBytes(Base64Url.EncodeToString(key)),
        "hex" => Encoding.ASCII.GetBytes(Convert.ToHexStringLower(key)),
        "letters" => Encoding.ASCII.GetBytes(Grouped(Base32(key, Crockford))),
        _ => Encoding.ASCII.GetBytes(Base32(key, Rfc4648)),
    };

    private static string Grouped(string letters) => string.Join(' ', letters.Chunk(4).Select(group => new string(group)));

    private static string Base32(byte[] bytes, string alphabet)
    {
        var bits = string.Concat(bytes.Select(each => each.ToString("b8")));
        return string.Concat(bits.Chunk(5).Select(five => alphabet[Convert.ToInt32(new string(five).PadRight(5, '0'), 2)]));
    }
}
