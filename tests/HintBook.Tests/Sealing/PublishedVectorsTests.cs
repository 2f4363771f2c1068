using HintBook.Sealing;
using HintBook.Tests.House;

namespace HintBook.Tests.Sealing;

/// <summary>
/// What sealing is built from, against published vectors in their published files: the Cryptographic Algorithm Validation Program's files of NIST for GCM
/// (CAVS 14.0, <c>gcmEncryptExtIV256.rsp</c> and <c>gcmDecrypt256.rsp</c>) and those of RFC 5869, as Debian's python3-cryptography-vectors carries them.
/// </summary>
public class PublishedVectorsTests
{
    private const string Package = "python3-cryptography-vectors";
    private const string Folder = "/usr/lib/python3/dist-packages/cryptography_vectors";

    // Of all lengths in the files, those that sealing uses: nonces of 96 bits and tags of 128.
    private static readonly (string Name, string Value)[] Ours = [("IVlen", "96"), ("Taglen", "128")];

    [Fact]
    public void What_is_encrypted_is_as_NIST_publishes_it()
    {
        var cases = Cases("ciphers/AES/GCM/gcmEncryptExtIV256.rsp").Where(IsOurs).ToArray();

        Assert.Equal(375, cases.Length);
        Assert.All(cases, one =>
        {
            var made = new byte[one["PT"].Length + 16];
            Seal.Encrypt(one["Key"], one["IV"], one["PT"], one["AAD"], made);
            Assert.Equal([.. one["CT"], .. one["Tag"]], made);
        });
    }

    [Fact]
    public void What_is_decrypted_is_as_NIST_publishes_it_and_what_must_fail_fails()
    {
        var cases = Cases("ciphers/AES/GCM/gcmDecrypt256.rsp").Where(IsOurs).ToArray();

        Assert.Equal(375, cases.Length);
        Assert.Contains(cases, one => one.MustFail);
        Assert.All(cases, one => Assert.Equal(
            one.MustFail ? null : one["PT"],
            Seal.Decrypt(one["Key"], one["IV"], [.. one["CT"], .. one["Tag"]], one["AAD"])));
    }

    // Keys are derived with an empty salt: appendix A.3.
    [Fact]
    public void A_derived_key_is_as_RFC_5869_publishes_it()
    {
        var cases = Cases("KDF/rfc-5869-HKDF-SHA256.txt").Where(one => one["salt"].Length == 0).ToArray();

        var one = Assert.Single(cases);
        Assert.Equal(one["OKM"], Derivation.Derive(one["IKM"], one["OKM"].Length, one["info"]));
    }

    // RFC 7914, section 11, the first block of the first case; from memory. No package that we know carries it as a file.
    [Fact]
    public void A_word_is_stretched_as_RFC_7914_publishes_it() => Assert.Equal(
        "55AC046E56E3089FEC1691C22544B605F94185216DDE0465E68B9D57C20DACBC",
        Convert.ToHexString(Gate.Stretch("passwd", "salt"u8.ToArray(), rounds: 1)));

    private static bool IsOurs(Vector one) => Ours.All(length => one.Lengths.GetValueOrDefault(length.Name) == length.Value);

    // "[Name = value]" holds for all cases below; "Name = hex" belongs to a case, and "Count = n" begins one. Case is as the file has it.
    private static List<Vector> Cases(string file)
    {
        var path = Path.Combine(Folder, file);
        DebianProgram.Have("The published vectors of NIST and RFC 5869", Package, () => File.Exists(path));
        var lengths = new Dictionary<string, string>(StringComparer.Ordinal);
        var cases = new List<Vector>();
        foreach (var line in File.ReadLines(path).Select(line => line.Trim()).Where(line => line.Length > 0 && line[0] != '#'))
        {
            var said = line.Trim('[', ']').Split('=', StringSplitOptions.TrimEntries);
            if (line[0] == '[')
                lengths[said[0]] = said[1];
            else if (string.Equals(said[0], "count", StringComparison.OrdinalIgnoreCase))
                cases.Add(new(new(lengths, StringComparer.Ordinal)));
            else if (line == "FAIL")
                cases[^1].MustFail = true;
            else if (said[0] is not ("Hash" or "L"))
                cases[^1].Values[said[0]] = Convert.FromHexString(said[1]);
        }

        return cases;
    }

    private sealed record Vector(Dictionary<string, string> Lengths)
    {
        public Dictionary<string, byte[]> Values { get; } = new(StringComparer.Ordinal);

        public bool MustFail { get; set; }

        public byte[] this[string name] => Values[name];
    }
}
