using CsCheck;
using HintBook.Sealing;

namespace HintBook.Tests.Sealing;

public class CardCodeTests
{
    private static readonly Gen<CardCode> Codes = Gen.Select(
        Gen.Bool,
        Gen.Int[0, CardCode.LargestNumber],
        Gen.Byte.Array[16],
        (one, number, key) => new CardCode(one ? CardKind.OneStage : CardKind.WholeBox, number, key));

    [Fact]
    public void A_code_reads_as_it_was_written() => Codes.Sample(code =>
        CardCode.Read(code.ToString()) is ReadCode { Code: var read }
        && (read.Kind, read.Number) == (code.Kind, code.Number)
        && read.Key.SequenceEqual(code.Key));

    [Fact]
    public void A_code_may_be_typed_small_in_groups_and_with_letters_that_look_like_figures() => Codes.Sample(code =>
    {
        var typed = code.ToGroups().Replace(' ', '-').Replace('1', 'l').Replace('0', 'o').ToLowerInvariant();
        return CardCode.Read(" " + typed + "\n") is ReadCode { Code: var read } && read.ToString() == code.ToString();
    });

    // A check of 12 bits misses one slip in 4,096 of those that give a code of the right form.
    [Fact]
    public void A_wrong_letter_and_two_exchanged_letters_are_noticed()
    {
        var (tried, missed) = (0, 0);
        foreach (var number in new[] { 0, 37, 300, CardCode.LargestNumber })
        {
            var code = new CardCode(CardKind.OneStage, number, [.. Enumerable.Range(number, 16).Select(i => (byte)(i * 11 % 256))]).ToString();
            foreach (var i in Enumerable.Range(0, code.Length))
            {
                foreach (var letter in "0123456789ABCDEFGHJKMNPQRSTVWXYZ".Where(letter => letter != code[i]))
                    Try(code.Remove(i, 1).Insert(i, letter.ToString()));
                foreach (var j in Enumerable.Range(i + 1, code.Length - i - 1).Where(j => code[i] != code[j]))
                    Try(string.Concat(code.Select((letter, k) => k == i ? code[j] : k == j ? code[i] : letter)));
            }

            void Try(string wrong)
            {
                tried++;
                missed += CardCode.Read(wrong) is ReadCode ? 1 : 0;
            }
        }

        Assert.True(tried > 5_000);
        Assert.InRange(missed, 0, tried / 1_000);
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("2015 F2WW QAJ2 BC98 3CHJ 9BZD 5NG0 G6V", 31)]
    [InlineData("2015F2WWQAJ2BC983CHJ9BZD5NG0G6VYY", 33)]
    public void Too_few_and_too_many_letters_are_counted(string typed, int letters) => Assert.Equal(new OtherLength(letters), CardCode.Read(typed));

    [Theory]
    [InlineData("2015F2WWQAJ2BC983CHJ9BZD5NG0G6VU")]
    [InlineData("2015F2WWQAJ2BC983CHJ9BZD5NG0G6V!")]
    [InlineData("2015F2WWQAJ2BC983CHJ9BZD5NG0G6VZ")]
    public void A_letter_that_is_no_letter_of_a_code_or_the_wrong_one_is_told(string typed) => Assert.IsType<WrongLetter>(CardCode.Read(typed));

    [Fact]
    public void A_code_of_a_later_version_is_told_from_a_slip()
    {
        // 2 in the first four bits, and the check over it: no code of today.
        var bytes = new byte[20];
        bytes[0] = 0x20;
        var check = System.Security.Cryptography.SHA256.HashData([.. "hb1 code"u8, .. bytes.AsSpan(0, 19)]);
        bytes[18] |= (byte)(check[0] >> 4);
        bytes[19] = (byte)(((check[0] & 0xF) << 4) | (check[1] >> 4));

        Assert.Equal(new OtherVersion(2), CardCode.Read(Letters32.Write(bytes)));
    }

    [Fact]
    public void A_secret_reads_as_it_was_written_and_never_with_a_slip() =>
        Gen.Select(Gen.Byte.Array[BookSecret.Length], Gen.Int[0, 55]).Sample((bytes, at) =>
        {
            var groups = new BookSecret(bytes).ToGroups();
            var letters = groups.Replace(" ", "", StringComparison.Ordinal);
            var wrong = letters.Remove(at, 1).Insert(at, letters[at] == '7' ? "8" : "7");
            return groups.Split(' ').Length == 14
                && BookSecret.Read(groups.ToLowerInvariant())?.ToGroups() == groups
                && BookSecret.Read(wrong) is null
                && BookSecret.Read(letters[1..]) is null;
        });
}
