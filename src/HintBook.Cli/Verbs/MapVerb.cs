using System.CommandLine;
using HintBook.Maps;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>map BOOK</c>: draws which stage opens which.</summary>
internal static class MapVerb
{
    private static readonly Dictionary<string, Func<StageMap, MapWords, bool, string>> Writers = new()
    {
        [".svg"] = SvgMap.Write,
        [".dot"] = (map, _, spoilerFree) => DotMap.Write(map, spoilerFree),
        [".gv"] = (map, _, spoilerFree) => DotMap.Write(map, spoilerFree),
        [".mmd"] = (map, _, spoilerFree) => MermaidMap.Write(map, spoilerFree),
        [".mermaid"] = (map, _, spoilerFree) => MermaidMap.Write(map, spoilerFree),
    };

    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var book = Options.Book();
        var output = Options.Out("The file to write: .svg, .dot, .gv, .mmd or .mermaid (default: SVG on standard output).");
        var spoilerFree = new Option<bool>("--spoiler-free") { Description = "Numbers only." };
        var replace = Options.Replace();
        var verb = new Command("map", "Draw which stage opens which.") { book, output, replace, spoilerFree };
        verb.SetAction(parsed =>
        {
            var file = parsed.GetValue(output);
            if (file is not null && OwnFile.WhyKept(file, parsed.GetValue(replace)) is { } why)
            {
                terminal.Say(why);
                return ExitCode.WrongUsage;
            }

            return Draw(parsed.GetValue(book)!, file, parsed.GetValue(spoilerFree), terminal, stop);
        });
        return verb;
    }

    private static int Draw(string path, string? output, bool spoilerFree, Terminal terminal, CancellationToken stop)
    {
        Func<StageMap, MapWords, bool, string>? write = SvgMap.Write;
        if (output is not null && !Writers.TryGetValue(Path.GetExtension(output).ToLowerInvariant(), out write))
        {
            terminal.Say($"“{output}” has none of the endings that a map can have: {Words.List(Writers.Keys, "or")}.");
            return ExitCode.WrongUsage;
        }

        var looked = CheckedBook.At(path, null, terminal, stop);
        if (looked.Known is not { } book)
            return OutcomePrinter.NotReady("No map can be drawn", looked.Findings, terminal);

        var words = MapWords.Of(book.Theme.WordsIn(book.Book.Language).Words.Entries);
        var map = write!(StageMap.Build(book.Book, book.Survey), words, spoilerFree);
        if (output is null)
            terminal.Out.Write(map);
        else
            SingleFile.Write(output, map);
        return ExitCode.Fine;
    }
}
