using System.Text;

namespace HintBook.Cli.Usage.Completions;

/// <summary>Completion for zsh, with the functions <c>_describe</c> and <c>_arguments</c> that zsh brings (zshcompsys(1)).</summary>
internal static class ZshCompletion
{
    /// <summary>Writes it.</summary>
    public static string Write(Sheet sheet)
    {
        var text = new StringBuilder("#compdef hintbook\n# Completes hintbook in zsh. Written by: hintbook completions zsh\n_hintbook() {\n");
        text.Append("  local -a verbs\n  verbs=(\n");
        foreach (var verb in sheet.Verbs)
            text.Append($"    {Quoted($"{verb.Name}:{verb.Says}")}\n");
        text.Append("  )\n  if (( CURRENT == 2 )); then\n    _describe 'verb' verbs\n    return\n  fi\n");
        text.Append("  local verb=$words[2]\n  shift words\n  (( CURRENT-- ))\n  case $verb in\n");
        foreach (var verb in sheet.Verbs)
        {
            text.Append($"    {verb.Name})\n      _arguments");
            foreach (var option in verb.Options)
                text.Append($" \\\n        {Quoted($"{option.Name}[{Shielded(option.Says)}]{(option.Takes == Takes.Nothing ? "" : Value(option))}")}");
            for (var place = 0; place < verb.Arguments.Length; place++)
            {
                var argument = verb.Arguments[place];
                text.Append($" \\\n        {Quoted(Place(argument, place + 1) + Value(argument))}");
            }

            text.Append("\n      ;;\n");
        }

        return text.Append("  esac\n}\n\nif [[ $funcstack[1] == _hintbook ]]; then\n  _hintbook \"$@\"\nelse\n  compdef _hintbook hintbook\nfi\n").ToString();
    }

    // “1::” is the first word, which may be left out; “*:” is each word that is left.
    private static string Place(SheetEntry argument, int number) => argument switch
    {
        { MayBeRepeated: true } => "*",
        { MayBeLeftOut: true } => $"{number}:",
        _ => $"{number}",
    };

    private static string Value(SheetEntry entry) => $":{Shielded(entry.Value)}:" + entry switch
    {
        { Words.IsEmpty: false } => $"({string.Join(' ', entry.Words)})",
        { Takes: Takes.Folder } => "_files -/",
        { Takes: Takes.Path } => "_files",
        _ => " ",
    };

    private static string Shielded(string text) =>
        text.Replace("[", "\\[", StringComparison.Ordinal).Replace("]", "\\]", StringComparison.Ordinal).Replace(":", "\\:", StringComparison.Ordinal);

    private static string Quoted(string text) => $"'{text.Replace("'", "'\\''", StringComparison.Ordinal)}'";
}
