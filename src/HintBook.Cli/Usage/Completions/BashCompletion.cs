using System.Text;

namespace HintBook.Cli.Usage.Completions;

/// <summary>Completion for bash, from 3.2 (which macOS has) on; it needs no package of completions.</summary>
internal static class BashCompletion
{
    private const string Frame =
        """
        # Completes hintbook in bash. Written by: hintbook completions bash
        _hintbook() {
            local IFS=$'\n'
            local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} verb=${COMP_WORDS[1]} at place=0
            COMPREPLY=()
            if (( COMP_CWORD == 1 )); then
                _hintbook_words "$word" VERBS
                return
            fi
            case "$verb $before" in
        VALUES
            esac
            if [[ $word == -* ]]; then
                case $verb in
        OPTIONS
                esac
                return
            fi
            for (( at = 2; at < COMP_CWORD; at++ )); do
                case "$verb ${COMP_WORDS[at]}" in
                    TAKING) at=$(( at + 1 )) ;;
                    *' -'*) ;;
                    *) place=$(( place + 1 )) ;;
                esac
            done
            case "$verb $place" in
        PLACES
            esac
        }

        _hintbook_words() {
            local word=$1
            shift
            COMPREPLY=( $(compgen -W "$*" -- "$word") )
        }

        complete -o filenames -F _hintbook hintbook

        """;

    /// <summary>Writes it.</summary>
    public static string Write(Sheet sheet)
    {
        var (values, options, places) = (new StringBuilder(), new StringBuilder(), new StringBuilder());
        foreach (var verb in sheet.Verbs)
        {
            options.Append($"            {verb.Name}) _hintbook_words \"$word\" {Words(verb.Options.Select(option => option.Name))} ;;\n");
            foreach (var option in verb.Options.Where(option => option.Takes != Takes.Nothing))
                values.Append($"        '{verb.Name} {option.Name}') {Offer(option)}return ;;\n");
            for (var place = 0; place < verb.Arguments.Length; place++)
            {
                var argument = verb.Arguments[place];
                if (Offer(argument) is { Length: > 0 } offer)
                    places.Append($"        {(argument.MayBeRepeated ? $"'{verb.Name} '*" : $"'{verb.Name} {place}'")}) {offer};;\n");
            }
        }

        var taking = from verb in sheet.Verbs from option in verb.Options where option.Takes != Takes.Nothing select $"'{verb.Name} {option.Name}'";
        return Frame.ReplaceLineEndings("\n")
            .Replace("VERBS", Words(sheet.Verbs.Select(verb => verb.Name)), StringComparison.Ordinal)
            .Replace("TAKING", string.Join('|', taking), StringComparison.Ordinal)
            .Replace("VALUES\n", values.ToString(), StringComparison.Ordinal)
            .Replace("OPTIONS\n", options.ToString(), StringComparison.Ordinal)
            .Replace("PLACES\n", places.ToString(), StringComparison.Ordinal);
    }

    private static string Offer(SheetEntry entry) => entry switch
    {
        { Words.IsEmpty: false } => $"_hintbook_words \"$word\" {Words(entry.Words)}; ",
        { Takes: Takes.Folder } => "COMPREPLY=( $(compgen -d -- \"$word\") ); ",
        { Takes: Takes.Path } => "COMPREPLY=( $(compgen -f -- \"$word\") ); ",
        _ => "",
    };

    private static string Words(IEnumerable<string> words) => string.Join(' ', words);
}
