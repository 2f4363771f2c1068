using System.CommandLine;
using HintBook.Starting;

namespace HintBook.Cli.Verbs;

/// <summary><c>begin FOLDER</c>: starts a book from a small one with comments that teach.</summary>
internal static class BeginVerb
{
    public static Command Make(Terminal terminal)
    {
        var folder = new Argument<string>("FOLDER") { Description = "The folder to make." };
        var verb = new Command("begin", "Start a new book: three stages with comments that teach.") { folder };
        verb.SetAction(parsed => Begin(parsed.GetValue(folder)!, terminal));
        return verb;
    }

    private static int Begin(string folder, Terminal terminal)
    {
        if (File.Exists(folder) || (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any()))
        {
            terminal.Say($"“{folder}” exists and isn't empty, so nothing is written there. Name a new folder.");
            return ExitCode.WrongUsage;
        }

        NewBook.In(folder);
        terminal.Out.WriteLine(
            $"""
            A new book stands in {folder}.
              Write in   {Path.Combine(folder, "book.yaml")} and the files in {Path.Combine(folder, "stages")}
              Check it   hintbook check {Quoted(folder)}
              Publish    hintbook publish {Quoted(folder)}
            """);
        return ExitCode.Fine;
    }

    private static string Quoted(string path) => path.Contains(' ') ? $"\"{path}\"" : path;
}
