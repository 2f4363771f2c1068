using CsCheck;
using HintBook.Spoilers;

namespace HintBook.Tests.Spoilers;

/// <summary>Laws of the search: a secret that is put into any text, in any of its spellings, is found there.</summary>
public class InsertionTests
{
    private static readonly string[] Plain =
        "look where light falls listen gently water river stone oak garden summer winter evening nobody always music shadow".Split(' ');

    private static readonly Gen<string> Words = Gen.OneOf(Plain).Array[0, 30].Select(words => string.Join(' ', words));

    private static readonly Gen<string> Name = Gen.OneOf(
        "brass bee", "queen clip", "penknife", "jar of honey", "fiancée’s locket", "rhyme under the roof", "wax pellet");

    private static readonly Gen<Func<string, string>> Spelling = Gen.OneOf<Func<string, string>>(
        name => name,
        name => name.ToUpperInvariant(),
        name => name.Replace(' ', '-'),
        name => name.Replace(' ', '\n'),
        name => name.Replace(" ", "  ", StringComparison.Ordinal),
        name => $"**{name}**",
        name => $"“{name}”",
        name => $"the {name}’s",
        name => string.Concat(name.Select(letter => letter is > ' ' and < '\u007F' ? (char)(letter + 0xFEE0) : letter)),
        name => string.Join('\u00AD', name.Select(letter => letter)),
        name => string.Concat(name.Select(letter => char.IsAsciiLetter(letter) ? $"{letter}\u0301" : $"{letter}")));

    private static readonly string[] Figures = "zero one two three four five six seven eight nine".Split(' ');

    private static readonly Gen<string> Code = Gen.Char['0', '9'].Array[3, 9].Select(digits => new string(digits)).Where(code => code.Trim('0').Length > 1);

    private static readonly Gen<Func<string, string>> Digits = Gen.OneOf<Func<string, string>>(
        code => code,
        code => string.Join(' ', code.Select(digit => digit)),
        code => string.Join('-', code.Select(digit => digit)),
        code => string.Join(", ", code.Select(digit => digit)),
        code => string.Join('.', code.Select(digit => digit)),
        code => string.Join(' ', code.Select(digit => Figures[digit - '0'])),
        code => string.Join(", then ", code.Select(digit => Figures[digit - '0'])),
        code => string.Join('-', code.Select(digit => Figures[digit - '0'])),
        code => string.Join(", ", code[..^1].Select(digit => digit)) + " and " + code[^1]);

    [Fact]
    public void A_name_is_found_wherever_it_is_put() =>
        Gen.Select(Name, Spelling, Words, Words).Sample((name, spell, before, after) =>
            Hidden.In($"{before} {spell(name)} {after}", Hidden.Names(name)).Length == 1);

    [Fact]
    public void A_code_is_found_wherever_it_is_put() =>
        Gen.Select(Code, Digits, Words, Words).Sample((code, spell, before, after) =>
            Hidden.In($"{before} {spell(code)} {after}", Hidden.Of(("code", SecretKind.Answer, [code]))).Length == 1);

    [Fact]
    public void A_text_without_secrets_has_none() =>
        Words.Sample(text => Hidden.In(text).Length == 0);

    [Fact]
    public void No_text_is_too_odd_to_be_read() =>
        Gen.String.Sample(text => new Finder(Hidden.Secrets).In(text).All(mention => mention.Start < mention.End && mention.End <= text.Length));

    [Fact]
    public void A_megabyte_is_read_once()
    {
        var text = string.Concat(Enumerable.Repeat("5 1 7 brass brass brass queen ", 40_000)) + "brass bee";
        Assert.Contains("brass-bee", Hidden.In(text));
    }
}
