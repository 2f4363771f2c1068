using System.CommandLine;
using System.Text;
using HintBook.Publishing;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>schema</c>: the JSON Schemas from which editors complete and check.</summary>
internal static class SchemaVerb
{
    // “book.translation.schema.json” is asked for as “translation”.
    private static readonly string[] Kinds = [.. Schemas.Names.Select(name => name.Split('.')[^3])];

    public static Command Make(Terminal terminal)
    {
        var kind = new Argument<string>("KIND") { Description = $"Which file: {Words.List(Kinds, "or")}.", DefaultValueFactory = _ => "book" };
        kind.AcceptOnlyFromAmong(Kinds);
        var output = Options.Out("A folder to write all schemas into (default: the one that is named, on standard output).");
        var replace = Options.Replace();
        var verb = new Command("schema", "Write the JSON Schemas from which editors complete and check.") { kind, output, replace };
        verb.SetAction(parsed => Write(parsed.GetValue(kind)!, parsed.GetValue(output), parsed.GetValue(replace), terminal));
        return verb;
    }

    private static int Write(string kind, string? output, bool replace, Terminal terminal)
    {
        if (output is null)
        {
            terminal.Out.Write(Schemas.All.First(schema => schema.Name.Split('.')[^3] == kind).Text);
            return ExitCode.Fine;
        }

        (string Path, ReadOnlyMemory<byte> Bytes)[] files =
            [.. Schemas.All.Select(schema => (Path.Combine(output, schema.Name), (ReadOnlyMemory<byte>)Encoding.UTF8.GetBytes(schema.Text)))];
        if (OwnFile.WhyAllKept(files, replace) is { } why)
        {
            terminal.Say(why);
            return ExitCode.WrongUsage;
        }

        foreach (var (path, bytes) in files)
            SingleFile.Write(path, bytes.Span);
        return ExitCode.Fine;
    }
}
