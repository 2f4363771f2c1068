using System.CommandLine;
using HintBook.Publishing;
using HintBook.Reading;

namespace HintBook.Cli.Verbs;

/// <summary><c>schema</c>: the JSON Schemas from which editors complete and check.</summary>
internal static class SchemaVerb
{
    public static Command Make(Terminal terminal)
    {
        var kind = new Argument<string>("KIND") { Description = "Which file: book or stage.", DefaultValueFactory = _ => "book" };
        kind.AcceptOnlyFromAmong("book", "stage");
        var output = Options.Out("A folder to write both schemas into (default: the one that is named, on standard output).");
        var verb = new Command("schema", "Write the JSON Schemas from which editors complete and check.") { kind, output };
        verb.SetAction(parsed => Write(parsed.GetValue(kind)!, parsed.GetValue(output), terminal));
        return verb;
    }

    private static int Write(string kind, string? output, Terminal terminal)
    {
        if (output is null)
        {
            terminal.Out.Write(Schemas.All.First(schema => schema.Name.StartsWith(kind, StringComparison.Ordinal)).Text);
            return ExitCode.Fine;
        }

        foreach (var (name, text) in Schemas.All)
            SingleFile.Write(Path.Combine(output, name), text);
        return ExitCode.Fine;
    }
}
