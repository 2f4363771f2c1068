using System.Net;
using HintBook.Audit;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Audit;

/// <summary>
/// Counted things, rows of labels and figures, things with their steps, and names turned about, in six languages. The lines of
/// <c>tellings-held-back.txt</c> were written before the classes were mended and aren't tuned on: of them only sums are printed. Those of
/// <c>tellings-later.txt</c> were written behind it; their first run stands in <c>Elsewhere/README.md</c>.
/// </summary>
public class TellingsTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("tellings.txt", 0.99, 0.94)]
    [InlineData("tellings-held-back.txt", 0.99, 0.92)]
    [InlineData("tellings-later.txt", 0.96, 0.90)]
    public void Nearly_all_that_is_told_is_found_and_nearly_all_that_is_found_is_told(string file, double recall, double precision)
    {
        var lines = Read(file);
        Assert.NotEmpty(lines);
        var isTuned = file != "tellings-held-back.txt";
        foreach (var line in isTuned ? lines.Where(line => line.IsFound != line.IsTold) : [])
            output.WriteLine($"{(line.IsTold ? "missed" : "wrong ")} {line.Language} {line.Secret}: {line.Text}");
        foreach (var each in lines.GroupBy(line => line.Class))
            output.WriteLine(Figures(each.Key, [.. each]));
        output.WriteLine(Figures("all", lines));

        Assert.True(Recall(lines) >= recall, $"recall {Recall(lines):0.000}");
        Assert.True(Precision(lines) >= precision, $"precision {Precision(lines):0.000}");
    }

    // "Les ciseaux du tailleur" differs from the name by a word that counts as the same, so it is the name itself.
    [Theory]
    [InlineData("tellings.txt")]
    [InlineData("tellings-held-back.txt")]
    public void What_is_told_so_never_stops_a_publish(string file) =>
        Assert.Empty(Read(file).Where(line => line.IsSure && line is not { Class: "turned", Language: "fr" }).Select(line => line.Text));

    [Theory]
    [InlineData("tellings.txt")]
    [InlineData("tellings-held-back.txt")]
    [InlineData("tellings-later.txt")]
    public void No_other_code_is_found_in_the_same_lines(string file) =>
        Assert.Empty(Read(file, Other).Where(line => line is { IsCode: true, IsFound: true }).Select(line => line.Text));

    // Another last figure; in another order the other readers may take the figures for the code's.
    private static string Other(string code) => $"{code[..^1]}{(char)('0' + ((code[^1] - '0' + 1) % 10))}";

    private static string Figures(string name, Line[] lines) =>
        $"{name,-8} told {lines.Count(line => line.IsTold),3}, innocent {lines.Count(line => !line.IsTold),3}, "
        + $"recall {Recall(lines):0.000}, precision {Precision(lines):0.000}";

    private static double Recall(Line[] lines) =>
        lines.Count(line => line is { IsTold: true, IsFound: true }) / (double)lines.Count(line => line.IsTold);

    private static double Precision(Line[] lines) =>
        lines.Any(line => line.IsFound) ? lines.Count(line => line is { IsTold: true, IsFound: true }) / (double)lines.Count(line => line.IsFound) : 1;

    private static Line[] Read(string file, Func<string, string>? other = null) =>
    [
        .. from line in File.ReadAllLines(Path.Combine(Where.Tests, "Audit", file))
           where line.Length > 0 && line[0] != '#'
           let cells = line.Split('|', 6, StringSplitOptions.TrimEntries)
           let secret = cells[2] == "code" && other is not null ? other(cells[3]) : cells[3]
           let faults = Told(cells[1], SecretOf(cells[2], secret), Html(cells[5]))
           select new Line(cells[0], cells[1], secret, cells[4] == "+", cells[5], faults.Length > 0, Array.Exists(faults, fault => fault.IsSure))
           {
               IsCode = cells[2] == "code",
           },
    ];

    private static AuditSecret SecretOf(string kind, string secret) => new(secret, kind switch
    {
        "code" => [new(secret, SpelledAs.Symbols)],
        "thing" => [new(secret, SpelledAs.Thing, Sure: false)],
        _ => [new(secret)],
    });

    private static string Html(string text) =>
        text[0] == '<' ? text : $"<p>{WebUtility.HtmlEncode(text).Replace("⏎", "<br>", StringComparison.Ordinal).Replace('⇥', '\t')}</p>";

    private static AuditFault[] Told(string language, AuditSecret secret, string html)
    {
        using var site = Site.Good().Write("t.html", Site.Page(html));
        var table = Table.Of(secret) with { Language = language, Pages = [], Free = [] };
        return [.. SiteAudit.Run(site.Folder, table).Faults.Where(fault => fault.Secret is not null)];
    }

    private sealed record Line(string Class, string Language, string Secret, bool IsTold, string Text, bool IsFound, bool IsSure)
    {
        public bool IsCode { get; init; }
    }
}
