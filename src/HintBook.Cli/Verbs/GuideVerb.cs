using System.CommandLine;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>guide [PAGE]</c>: shows how to write what boxes do.</summary>
internal static class GuideVerb
{
    public static Command Make(Terminal terminal)
    {
        var page = new Argument<string?>("PAGE") { Description = "The page (default: a list of them).", DefaultValueFactory = _ => null };
        var verb = new Command("guide", "Read how to write what a box does, with a small book for each device.") { page };
        verb.SetAction(parsed => Show(parsed.GetValue(page), terminal));
        return verb;
    }

    private static int Show(string? name, Terminal terminal)
    {
        if (name is null)
        {
            foreach (var (page, text) in Guide.Pages)
                terminal.Out.WriteLine($"{page,-18}{Guide.TitleOf(text)}");
            return ExitCode.Fine;
        }

        if (!Guide.Pages.TryGetValue(name, out var found))
        {
            var near = Nearest.To(name, Guide.Pages.Keys) is { } nearest ? $" Did you mean `{nearest}`?" : "";
            terminal.Error.WriteLine($"The guide has no page `{name}`.{near} `hintbook guide` lists them.");
            return ExitCode.WrongUsage;
        }

        terminal.Out.Write(found);
        return ExitCode.Fine;
    }
}
