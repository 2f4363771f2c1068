using System.CommandLine;
using System.CommandLine.Completions;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>guide [PAGE]</c>: shows how to write what boxes do, and what a finding means.</summary>
internal static class GuideVerb
{
    public static Command Make(Terminal terminal)
    {
        var page = new Argument<string?>("PAGE")
        {
            Description = "A page, or a finding's code such as HB2101 (default: a list of the pages).",
            DefaultValueFactory = _ => null,
            HelpName = "PAGE",
        };
        page.CompletionSources.Add(_ => Guide.Pages.Keys.Select(name => new CompletionItem(name)));
        var findings = new Option<bool>("--findings") { Description = "List the codes of all findings, each with its weight and title." };
        var verb = new Command("guide", "Read how to write what a box does, and what a finding means, each with a small book.") { page, findings };
        verb.Validators.Add(given =>
        {
            if (given.GetValue(findings) && given.GetValue(page) is not null)
                given.AddError("“--findings” lists all codes; write it without a page.");
        });
        verb.SetAction(parsed => parsed.GetValue(findings) ? ListFindings(terminal)
            : parsed.GetValue(page) is { } name ? Show(name, terminal)
            : ListPages(terminal));
        return verb;
    }

    private static int ListPages(Terminal terminal)
    {
        foreach (var (page, text) in Guide.Pages)
            terminal.Out.WriteLine($"{page,-18}{Guide.TitleOf(text)}");
        terminal.Out.WriteLine("\nWhat a finding means and how it is mended: “hintbook guide” with its code, such as “hintbook guide HB2101”.");
        terminal.Out.WriteLine("“hintbook guide --findings” lists all codes.");
        return ExitCode.Fine;
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
        Guide.Pages.TryGetValue(name, out var page) ? page
        : name == FindingPages.SharedBookName ? FindingPages.SharedBook
        : FindingCodes.Of(name) is { } code ? FindingPages.Shown(code)
        : null;
}
