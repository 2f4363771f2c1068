using System.Collections.Immutable;
using System.Text.Json;
using System.Text.RegularExpressions;
using HintBook.Cli;
using HintBook.Publishing.Films;
using HintBook.Reading;
using HintBook.Tests.Cards;
using HintBook.Text;

namespace HintBook.Tests.Cli.GuidePages;

/// <summary>A book of a page, on disk: the shared book and what the page changes in it.</summary>
internal sealed partial class TriedBook : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("hintbook-finding-").FullName;
    private readonly string asked;
    private readonly Circumstance[] circumstances;

    public TriedBook(ImmutableArray<Fence> changes)
    {
        circumstances = [.. changes.Where(change => change.Language == Fence.Circumstance).Select(change => Circumstances.Of(change.Body.Trim()))];
        foreach (var book in BooksIn(changes))
        {
            foreach (var (path, text) in FindingPages.Start)
                WriteText(Path.Combine(Folder, book, path), text);
        }

        foreach (var circumstance in circumstances)
            circumstance.Before(Folder, Output);
        foreach (var change in changes)
            Apply(change);
        foreach (var circumstance in circumstances)
            circumstance.After(Folder);
        asked = circumstances.Aggregate(Folder, (book, circumstance) => circumstance.Named(book));
    }

    private FilmTools? FilmTools => circumstances.Select(circumstance => circumstance.FilmTools).FirstOrDefault(tools => tools is not null);

    private string Folder => Path.Combine(root, "tea-caddy");

    private string Output => Path.Combine(root, "published");

    public void Dispose() => Directory.Delete(root, recursive: true);

    /// <summary>What <c>check</c> says, notes included.</summary>
    public Told Check()
    {
        var said = Said.By(FilmTools, "check", asked, "--format", "json", "--notes");
        using var json = JsonDocument.Parse(said.Out);
        return new Told(said, [.. json.RootElement.GetProperty("findings").EnumerateArray()
            .Select(finding => (finding.GetProperty("severity").GetString()!, finding.GetProperty("code").GetString()!))]);
    }

    /// <summary>What <c>publish</c> says, notes included.</summary>
    public Told Publish()
    {
        // Nothing that is written in a book makes a card go wrong, so its printing is interfered with.
        if (circumstances.Select(circumstance => circumstance.Card).FirstOrDefault(card => card is not null) is { } spoil)
        {
            var (_, findings) = SpoiltCards.Print(Reader.Read(asked).Book!, spoil);
            return new Told(new Said(findings.AnyError ? ExitCode.BookHasErrors : ExitCode.Fine, "", FindingsText.Write(findings, withNotes: true)),
                [.. findings.All.Select(finding => (finding.Code.Severity.Word(), finding.Code.Id))]);
        }

        var said = Said.By(FilmTools, "publish", asked, "--out", Output, "--notes");
        return new Told(said, [.. PrintedFinding().Matches(said.Error).Select(finding => (finding.Groups["weight"].Value, finding.Groups["code"].Value))]);
    }

    // On a page about a shelf the paths begin with the folder of a book.
    private static string[] BooksIn(ImmutableArray<Fence> changes) =>
        changes
            .Where(change => change.Path.EndsWith("/book.yaml", StringComparison.Ordinal))
            .Select(change => change.Path.Split('/')[0])
            .ToArray() is { Length: > 0 } shelf
            ? shelf
            : [""];

    private void Apply(Fence change)
    {
        var path = Path.Combine(Folder, change.Path);
        switch (change.Language)
        {
            case Fence.Circumstance:
                break;
            case Fence.Absent:
                File.Delete(path);
                break;
            case Fence.Made:
                MadeFiles.Make(change.Body.Trim(), path);
                break;
            default:
                WriteText(path, change.Body);
                break;
        }
    }

    private static void WriteText(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    [GeneratedRegex(" · (?<weight>error|warning|note) (?<code>HB[0-9]{4})$", RegexOptions.Multiline)]
    private static partial Regex PrintedFinding();
}

/// <summary>What a verb said of a book.</summary>
internal sealed record Told(Said Said, ImmutableArray<(string Weight, string Code)> Findings)
{
    public IEnumerable<string> Errors => Findings.Where(finding => finding.Weight == "error").Select(finding => finding.Code).Distinct();

    public bool Has(string code) => Findings.Any(finding => finding.Code == code);
}
