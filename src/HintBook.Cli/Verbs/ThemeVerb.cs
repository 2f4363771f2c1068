using System.CommandLine;
using HintBook.Pages;
using HintBook.Starting;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>theme BOOK [THEME]</c>: lays a copy of a theme into a book, to be changed there.</summary>
internal static class ThemeVerb
{
    public static Command Make(Terminal terminal)
    {
        var book = Options.Book();
        var theme = new Argument<string?>("THEME") { Description = "Which one (default: a list of them).", DefaultValueFactory = _ => null };
        var verb = new Command("theme", "Copy one of the looks into the book, to change it there.") { book, theme };
        verb.SetAction(parsed => Copy(parsed.GetValue(book)!, parsed.GetValue(theme), terminal));
        return verb;
    }

    private static int Copy(string book, string? theme, Terminal terminal)
    {
        if (theme is null)
        {
            foreach (var name in Theme.BuiltInNames)
                terminal.Out.WriteLine(name);
            return ExitCode.Fine;
        }

        if (!Theme.BuiltInNames.Contains(theme))
        {
            var instead = Nearest.To(theme, Theme.BuiltInNames) is { } near
                ? $"Write instead: {near}"
                : $"There are {Words.List(Theme.BuiltInNames)}.";
            return Refuse($"There is no theme named “{theme}”. {instead}");
        }

        if (!File.Exists(Path.Combine(book, "book.yaml")))
            return Refuse($"“{book}” isn't a book: it has no book.yaml.");
        var folder = OwnTheme.FolderOf(book, theme);
        if (Directory.Exists(folder))
            return Refuse($"{folder} is there already, and what you changed in it would be lost. Take it away first, or rename it.");

        if (!OwnTheme.LiesInBook(book, theme))
            return Refuse($"{folder} lies behind a link that leads out of the book, and nothing is written there.");
        OwnTheme.In(book, theme);
        terminal.Out.WriteLine(
            $"""
            The theme {theme} is in {folder}; the book uses this copy if book.yaml says “theme: {theme}”.
              Colours and type   {Path.Combine(folder, "theme.css")}
              Every sentence     {Path.Combine(folder, "words.en.yaml")} and its neighbours
              What a page is     {Path.Combine(folder, "README.md")} says what the templates get
            """);
        return ExitCode.Fine;

        int Refuse(string why)
        {
            terminal.Say(why);
            return ExitCode.WrongUsage;
        }
    }
}
