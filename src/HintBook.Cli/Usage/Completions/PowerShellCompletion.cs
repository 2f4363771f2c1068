using System.Text;

namespace HintBook.Cli.Usage.Completions;

/// <summary>Completion for PowerShell. Where nothing is offered it completes files by itself.</summary>
internal static class PowerShellCompletion
{
    private const string Frame =
        """
        # Completes hintbook in PowerShell. Written by: hintbook completions powershell
        Register-ArgumentCompleter -Native -CommandName hintbook -ScriptBlock {
            param($word, $command, $cursor)
            $verbs = [ordered]@{
        VERBS
            }
            $values = @{
        VALUES
            }
            $written = @($command.CommandElements | Select-Object -Skip 1 | ForEach-Object { "$_" })
            if ($word -and $written.Count -gt 0) { $written = @($written | Select-Object -SkipLast 1) }
            if ($written.Count -eq 0) {
                $offered = $verbs.Keys
            }
            elseif ($values.ContainsKey("$($written[0]) $($written[-1])")) {
                $offered = $values["$($written[0]) $($written[-1])"]
            }
            elseif ($word -like '-*' -and $verbs.Contains($written[0])) {
                $offered = $verbs[$written[0]]
            }
            else {
                $offered = $values["$($written[0]) $($written.Count - 1)"]
            }
            $offered | Where-Object { $_ -like "$word*" } | ForEach-Object {
                [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_)
            }
        }

        """;

    /// <summary>Writes it.</summary>
    public static string Write(Sheet sheet)
    {
        var (verbs, values) = (new StringBuilder(), new StringBuilder());
        foreach (var verb in sheet.Verbs)
        {
            verbs.Append($"        '{verb.Name}' = {List(verb.Options.Select(option => option.Name))}\n");
            foreach (var option in verb.Options.Where(option => option.Takes != Takes.Nothing && !option.Words.IsEmpty))
                values.Append($"        '{verb.Name} {option.Name}' = {List(option.Words)}\n");
            for (var place = 0; place < verb.Arguments.Length; place++)
            {
                if (verb.Arguments[place].Words is { IsEmpty: false } words)
                    values.Append($"        '{verb.Name} {place}' = {List(words)}\n");
            }
        }

        return Frame.ReplaceLineEndings("\n")
            .Replace("VERBS\n", verbs.ToString(), StringComparison.Ordinal)
            .Replace("VALUES\n", values.ToString(), StringComparison.Ordinal);
    }

    private static string List(IEnumerable<string> words) => $"@({string.Join(", ", words.Select(word => $"'{word}'"))})";
}
