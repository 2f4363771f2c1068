using System.CommandLine;
using System.CommandLine.Completions;
using HintBook.Handbook;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>guide [PAGE]</c>: the handbook, page by page on the terminal or as a folder of pages for a browser.</summary>
internal static class GuideVerb
{
    public static Command Make(Terminal terminal)
    {
        var page = new Argument<string?>("PAGE")
        {
            Description = "A page, a chapter's number, or a finding's code such as HB2101 (default: a list of the pages).",
            DefaultValueFactory = _ => null,
            HelpName = "PAGE",
        };
        page.CompletionSources.Add(_ => Guide.Pages.Keys.Select(name => new CompletionItem(name)));
        var findings = new Option<bool>("--findings") { Description = "List the codes of all findings, each with its weight and title." };
        var output = Options.Out("A folder to write the whole handbook into, as pages for a browser.");
        var replace = Options.Replace();
        var verb = new Command("guide", "Read the handbook: fourteen chapters, what a box can do, and what each finding means.")
        {
            page, findings, output, replace,
        };
        verb.Validators.Add(given =>
        {
            if (given.GetValue(output) is not null && (given.GetValue(findings) || given.GetValue(page) is not null))
                given.AddError("“--out” writes the whole handbook; write it without a page.");
            if (given.GetValue(findings) && given.GetValue(page) is not null)
                given.AddError("“--findings” lists all codes; write it without a page.");
        });
        verb.SetAction(parsed => parsed.GetValue(output) is { } folder ? Write(folder, parsed.GetValue(replace), terminal)
            : parsed.GetValue(findings) ? ListFindings(terminal)
            : parsed.GetValue(page) is { } name ? Show(name, terminal)
            : ListPages(terminal));
        return verb;
    }

    private static int ListPages(Terminal terminal)
    {
        terminal.Out.WriteLine("The chapters:");
        List(Guide.Chapters, terminal);
        terminal.Out.WriteLine("\nWhat a box can do, and more:");
        List(Guide.Pages.Keys.Except(Guide.Chapters), terminal);
        terminal.Out.WriteLine("\nTo read one: “hintbook guide” with its name, or a chapter's number, such as “hintbook guide 3”.");
        terminal.Out.WriteLine("What a finding means and how to put it right: “hintbook guide HB2101”. “hintbook guide --findings” lists all codes.");
        terminal.Out.WriteLine("All of it as pages for a browser: “hintbook guide --out FOLDER”.");
        return ExitCode.Fine;
    }

    private static void List(IEnumerable<string> names, Terminal terminal)
    {
        foreach (var name in names)
            terminal.Out.WriteLine($"  {name,-32}{Guide.TitleOf(Guide.Pages[name])}");
    }

    private static int Write(string folder, bool replace, Terminal terminal)
    {
        if (File.Exists(folder))
        {
            terminal.Say($"“{folder}” is a file. Name a folder with --out.");
            return ExitCode.WrongUsage;
        }

        (string Path, ReadOnlyMemory<byte> Bytes)[] files =
            [.. HandbookSite.Make(Texts(), Scratch(folder)).Select(file => (Path.Combine(folder, file.Path), file.Content()))];
        if (OwnFile.WhyAllKept(files, replace) is { } why)
        {
            terminal.Say(why);
            return ExitCode.WrongUsage;
        }

        foreach (var (path, bytes) in files)
            SingleFile.Write(path, bytes.Span);
        terminal.Out.WriteLine($"The handbook is in {folder}. Open {Path.Combine(folder, "index.html")} in a browser.");
        return ExitCode.Fine;
    }

    private static HandbookTexts Texts() => new(
        [.. Guide.Chapters.Select(name => new HandbookText(name, Guide.Pages[name]))],
        [
            .. Guide.Pages.Keys.Except(Guide.Chapters).Select(name => new HandbookText(name, Guide.Pages[name])),
            new(FindingPages.SharedBookName, FindingPages.SharedBook),
        ],
        [.. FindingCodes.All.Select(code => new HandbookText(code.Id, FindingPages.Shown(code) ?? $"# {code.Title}\n"))]);

    // A name in the folder that nothing has.
    private static string Scratch(string folder)
    {
        for (var number = 0; ; number++)
        {
            var name = Path.Combine(folder, $".making-{number}");
            if (!Path.Exists(name))
                return name;
        }
    }

    private static int ListFindings(Terminal terminal)
    {
        foreach (var code in FindingCodes.All)
            terminal.Out.WriteLine($"{code.Id}  {code.Severity.Word(),-9}{code.Title}");
        return ExitCode.Fine;
    }

    private static int Show(string name, Terminal terminal)
    {
        if (TextOf(name) is not { } text)
        {
            var near = Nearest.To(name, FindingPages.Codes.Concat(Guide.Pages.Keys)) is { } nearest ? $" Write instead: {nearest}." : "";
            terminal.Say(
                $"The guide has no page “{name}”.{near} “hintbook guide” lists the pages, “hintbook guide --findings” the codes of findings.");
            return ExitCode.WrongUsage;
        }

        terminal.Out.Write(text);
        return ExitCode.Fine;
    }

    private static string? TextOf(string name) =>
        Guide.Of(name) is { } page ? page
        : name == FindingPages.SharedBookName ? FindingPages.SharedBook
        : FindingCodes.Of(name) is { } code ? FindingPages.Shown(code)
        : null;
}
