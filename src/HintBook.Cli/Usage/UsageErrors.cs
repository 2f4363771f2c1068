using System.CommandLine;
using System.CommandLine.Parsing;
using HintBook.Text;

namespace HintBook.Cli.Usage;

/// <summary>What is said of a command that can't be understood: what was probably meant, and how to write it.</summary>
internal static class UsageErrors
{
    /// <summary>The sentences, at least one.</summary>
    /// <param name="parsed">The command as far as it was understood.</param>
    /// <param name="args">The command as it was given.</param>
    public static IEnumerable<string> In(ParseResult parsed, string[] args)
    {
        var verb = parsed.CommandResult.Command;
        if (args[0] != verb.Name)
            return [NoVerb(parsed.RootCommandResult.Command, args), "“hintbook --help” lists all verbs."];
        string[] sentences = [.. Missing(parsed, verb), .. Unknown(parsed, verb, args), .. Others(parsed)];
        return sentences.Append($"“hintbook {verb.Name} --help” says how it is used.");
    }

    private static string NoVerb(Command root, string[] args)
    {
        var (word, rest) = (args[0], args[1..]);
        if (word.StartsWith('-'))
        {
            return root.Subcommands.FirstOrDefault(verb => rest.Contains(verb.Name)) is { } late
                ? $"The verb comes first. Write instead: hintbook {late.Name} …"
                : $"There is no option “{word}” without a verb.";
        }

        if (Directory.Exists(word))
            return $"“{word}” is a folder; the verb comes first. Write instead: hintbook check {Quoted(word)}";
        return Nearest.To(word, root.Subcommands.Select(verb => verb.Name)) is { } near
            ? $"There is no verb “{word}”. Write instead: {Command([near, .. rest])}"
            : $"There is no verb “{word}”.";
    }

    private static IEnumerable<string> Missing(ParseResult parsed, Command verb)
    {
        var arguments =
            from argument in verb.Arguments
            where argument.Arity.MinimumNumberOfValues > 0 && !argument.HasDefaultValue
            where parsed.GetResult(argument) is not { Tokens.Count: > 0 }
            select $"“hintbook {verb.Name}” needs {argument.Name}: {argument.Description}";
        var options =
            from option in verb.Options
            where option.Arity.MinimumNumberOfValues > 0
            where parsed.GetResult(option) is { Implicit: false, Tokens.Count: 0 }
            select $"{option.Name} is empty. What belongs there: {option.Description}";
        return arguments.Concat(options);
    }

    private static IEnumerable<string> Unknown(ParseResult parsed, Command verb, string[] args)
    {
        var unknown = parsed.UnmatchedTokens;
        if (unknown.FirstOrDefault(word => word.StartsWith('-')) is { } option)
        {
            var near = Nearest.To(option.Split('=')[0], verb.Options.Select(option => option.Name));
            yield return $"“hintbook {verb.Name}” has no option “{option}”." + (near is null ? "" : $" Write instead: {near}");
        }
        else if (unknown.Count > 0)
        {
            yield return OneWordTooMany(args, unknown[0]);
        }
    }

    // A name with a space that wasn't quoted arrives as several words in a row.
    private static string OneWordTooMany(string[] args, string word)
    {
        var at = Math.Max(1, Array.LastIndexOf(args, word));
        var from = at;
        while (from > 1 && !args[from - 1].StartsWith('-'))
            from--;
        var to = at + 1;
        while (to < args.Length && !args[to].StartsWith('-'))
            to++;
        var words = Enumerable.Range(from, to - from);
        var names =
            from first in words
            from last in words
            where first < last && Path.Exists(Joined(first, last))
            orderby last - first descending
            select (first, last);
        var found = names.FirstOrDefault();
        if (found.last > 0)
            return $"“{Joined(found.first, found.last)}” has a space in its name, so it needs quotes. Write instead: {With(found.first, found.last)}";
        return to - from < 2 || args[0] is "guide" or "clue" or "schema"
            ? $"“{word}” is one word too many."
            : $"“{word}” is one word too many. If it belongs to a name with a space, write quotes: {With(from, to - 1)}";

        string Joined(int first, int last) => string.Join(' ', args[first..(last + 1)]);
        string With(int first, int last) => Command([.. args[..first], Joined(first, last), .. args[(last + 1)..]]);
    }

    // What is told in words of our own isn't told twice.
    private static IEnumerable<string> Others(ParseResult parsed) =>
        from error in parsed.Errors
        where !error.Message.StartsWith("Unrecognized command or argument", StringComparison.Ordinal)
            && !error.Message.StartsWith("Required argument", StringComparison.Ordinal)
        select NotAmong(error) ?? error.Message;

    // The library's sentence lists what is allowed in lines of its own, each in single quotes.
    private static string? NotAmong(ParseError error)
    {
        var lines = error.Message.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (lines.Length < 2 || !lines[0].EndsWith("Must be one of:", StringComparison.Ordinal) || error.SymbolResult is not { Tokens: [.., var word] })
            return null;
        var name = error.SymbolResult switch
        {
            OptionResult option => option.Option.Name,
            ArgumentResult argument => argument.Argument.Name,
            _ => "This",
        };
        string[] allowed = [.. lines[1..].Select(line => line.Trim('\''))];
        var wrong = allowed.Contains(word.Value) ? error.SymbolResult.Tokens.First(token => !allowed.Contains(token.Value)).Value : word.Value;
        return $"{name} can't be “{wrong}”. It can be {Words.List(allowed, "or")}.";
    }

    private static string Command(string[] words) => string.Join(' ', words.Select(Quoted).Prepend("hintbook"));

    private static string Quoted(string word) => word.Contains(' ') ? $"\"{word}\"" : word;
}
