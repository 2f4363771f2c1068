using System.Text;

namespace HintBook.Cli.Usage.Completions;

/// <summary>Completion for fish.</summary>
internal static class FishCompletion
{
    /// <summary>Writes it.</summary>
    public static string Write(Sheet sheet)
    {
        var text = new StringBuilder("# Completes hintbook in fish. Written by: hintbook completions fish\ncomplete -c hintbook -f\n");
        foreach (var verb in sheet.Verbs)
            text.Append($"complete -c hintbook -n __fish_use_subcommand -a {verb.Name} -d {Quoted(verb.Says)}\n");
        foreach (var verb in sheet.Verbs)
        {
            var inVerb = $"complete -c hintbook -n '__fish_seen_subcommand_from {verb.Name}'";
            foreach (var option in verb.Options)
                text.Append($"{inVerb} -l {option.Name[2..]}{Value(option)} -d {Quoted(option.Says)}\n");
            foreach (var argument in verb.Arguments.Where(argument => Offered(argument) is not null))
                text.Append($"{inVerb} -a {Offered(argument)} -d {Quoted(argument.Name)}\n");
        }

        return text.ToString();
    }

    private static string Value(SheetEntry option) => option switch
    {
        { Takes: Takes.Nothing } => "",
        { Takes: Takes.Path, Words.IsEmpty: true } => " -r -F",
        _ => $" -x{(Offered(option) is { } offered ? $" -a {offered}" : "")}",
    };

    private static string? Offered(SheetEntry entry) => entry switch
    {
        { Words.IsEmpty: false } => Quoted(string.Join(' ', entry.Words)),
        { Takes: Takes.Folder } => "'(__fish_complete_directories)'",
        _ => null,
    };

    private static string Quoted(string text) =>
        $"'{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal)}'";
}
