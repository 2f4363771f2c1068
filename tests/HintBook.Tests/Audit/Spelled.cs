using CsCheck;

namespace HintBook.Tests.Audit;

/// <summary>Secrets in every spelling that both checks must know.</summary>
internal static class Spelled
{
    private static readonly string[] Figures = "zero one two three four five six seven eight nine".Split(' ');

    public static Gen<string> Name { get; } = Gen.OneOf("brass bee", "queen clip", "penknife", "jar of honey", "fiancée’s locket", "wax pellet");

    public static Gen<string> Code { get; } = Gen.Char['1', '9'].Array[4, 9].Select(digits => new string(digits));

    public static Gen<Func<string, string>> Names { get; } = Gen.OneOf<Func<string, string>>(
        name => name,
        name => name.ToUpperInvariant(),
        name => name.Replace(' ', '-'),
        name => name.Replace(" ", "  ", StringComparison.Ordinal),
        name => $"“{name}”",
        name => $"the {name}’s",
        name => name.EndsWith('e') || name.EndsWith('y') ? name : name + "s",
        name => string.Concat(name.Select(letter => letter is > ' ' and < '\u007F' ? (char)(letter + 0xFEE0) : letter)),
        name => string.Join('\u00AD', name.Select(letter => letter)),
        name => string.Concat(name.Select(letter => char.IsAsciiLetter(letter) ? $"{letter}\u0301" : $"{letter}")));

    public static Gen<Func<string, string>> Codes { get; } = Gen.OneOf<Func<string, string>>(
        code => code,
        code => string.Join(' ', code.Select(digit => digit)),
        code => string.Join('-', code.Select(digit => digit)),
        code => string.Join(", ", code.Select(digit => digit)),
        code => string.Join('.', code.Select(digit => digit)),
        code => string.Join(' ', code.Select(digit => Figures[digit - '0'])),
        code => string.Join(", then ", code.Select(digit => Figures[digit - '0'])),
        code => string.Join('-', code.Select(digit => Figures[digit - '0'])),
        code => string.Join(", ", code[..^1].Select(digit => digit)) + " and " + code[^1],
        code => string.Concat(code.Select(digit => (char)(digit - '0' + '٠'))),
        code => string.Concat(code.Select(digit => (char)(digit - '0' + '０'))));

    /// <summary>A secret, whether it is a code, and how it is written.</summary>
    public static Gen<(string Secret, bool IsCode, string Written)> Any { get; } = Gen.OneOf(
        Gen.Select(Name, Names, (name, spell) => (name, false, spell(name))),
        Gen.Select(Code, Codes, (code, spell) => (code, true, spell(code))));
}
