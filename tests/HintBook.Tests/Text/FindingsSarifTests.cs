using System.Text.Json;
using HintBook.Text;
using Json.Schema;

namespace HintBook.Tests.Text;

/// <summary>
/// SARIF 2.1.0, OASIS Standard. The schema is the one that the NuGet package Sarif.Sdk 5.8.0 carries
/// (Schemata/sarif-2.1.0.json); JsonSchema.Net checks against it.
/// </summary>
public class FindingsSarifTests
{
    private static readonly SourceFile Book = new("book.yaml", "title: x\ngoal: [ honey ]\n");
    private static readonly SourceFile Stage = new("stages/04 the #1: smöker?.md", "---\nneed: [ card ]\n🐝 sign: x\n");

    private static readonly Findings All = Findings.Of(
    [
        Say.At(Say.Wrong, Book, "honey", "Nothing gives \"honey\".", "Let a stage give it."),
        Say.At(Say.Odd, Stage, "need") with { Related = [new(Say.Place(Book, "goal"), "The goal is here.")] },
        Say.At(Say.Wrong, Stage, "sign"),
        Say.At(Say.Mild, Stage, ""),
    ]);

    private static readonly JsonSchema Schema = ReadSchema();

    [Fact]
    public void The_log_is_valid() => Assert.True(IsValid(FindingsSarif.Write(All, "1.2.3", withNotes: true)));

    [Fact]
    public void A_log_without_findings_is_valid() => Assert.True(IsValid(FindingsSarif.Write(Findings.None, "1.2.3")));

    [Theory]
    [InlineData("\"version\": \"2.1.0\"", "\"version\": \"2.0.0\"")]
    [InlineData("\"level\": \"error\"", "\"level\": \"bad\"")]
    [InlineData("\"startLine\": 2", "\"startLine\": 0")]
    public void The_check_would_see_a_broken_log(string right, string wrong)
    {
        var log = FindingsSarif.Write(All, "1.2.3");
        Assert.Contains(right, log, StringComparison.Ordinal);
        Assert.False(IsValid(log.Replace(right, wrong)));
    }

    [Fact]
    public void Each_kind_of_finding_is_one_rule_and_each_result_points_to_its_own()
    {
        var run = Run(FindingsSarif.Write(All, "1.2.3"));
        var rules = run.GetProperty("tool").GetProperty("driver").GetProperty("rules").EnumerateArray().ToArray();
        Assert.Equal(["HB1101", "HB2102"], rules.Select(rule => rule.GetProperty("id").GetString()));
        Assert.All(
            run.GetProperty("results").EnumerateArray(),
            result => Assert.Equal(
                result.GetProperty("ruleId").GetString(), rules[result.GetProperty("ruleIndex").GetInt32()].GetProperty("id").GetString()));
    }

    [Fact]
    public void Levels_are_the_standard_s_words() =>
        Assert.Equal(
            ["error", "note", "warning", "error"],
            Results(FindingsSarif.Write(All, "1.2.3", withNotes: true)).Select(result => result.GetProperty("level").GetString()));

    [Fact]
    public void Notes_are_left_out_unless_asked_for() =>
        Assert.DoesNotContain("HB3103", FindingsSarif.Write(All, "1.2.3"), StringComparison.Ordinal);

    [Fact]
    public void The_help_is_the_last_paragraph_of_the_message() =>
        Assert.Equal(
            "Nothing gives \"honey\".\n\nLet a stage give it.",
            Results(FindingsSarif.Write(All, "1.2.3"))[0].GetProperty("message").GetProperty("text").GetString());

    // RFC 3986: "#" and "?" would end the path, and a colon in the first name would make it a scheme.
    [Fact]
    public void Files_are_relative_references_that_lead_back_to_the_path()
    {
        var uri = Places(Results(FindingsSarif.Write(All, "1.2.3"))[1])[0].GetProperty("artifactLocation").GetProperty("uri").GetString()!;
        Assert.Matches("^[A-Za-z0-9._~%/-]+$", uri);
        Assert.Equal("/book/" + Stage.Path, Uri.UnescapeDataString(new Uri(new Uri("file:///book/"), uri).AbsolutePath));
    }

    [Fact]
    public void Columns_count_utf_16_units_and_exclude_the_end()
    {
        var log = FindingsSarif.Write(All, "1.2.3");
        Assert.Equal("utf16CodeUnits", Run(log).GetProperty("columnKind").GetString());
        var region = Places(Results(log)[2])[0].GetProperty("region");
        Assert.Equal(
            (3, 4, 3, 8),
            (region.GetProperty("startLine").GetInt32(), region.GetProperty("startColumn").GetInt32(),
                region.GetProperty("endLine").GetInt32(), region.GetProperty("endColumn").GetInt32()));
    }

    [Fact]
    public void Related_places_carry_their_own_messages()
    {
        var related = Assert.Single(Results(FindingsSarif.Write(All, "1.2.3"))[1].GetProperty("relatedLocations").EnumerateArray());
        Assert.Equal("The goal is here.", related.GetProperty("message").GetProperty("text").GetString());
    }

    private static JsonElement Run(string log)
    {
        using var document = JsonDocument.Parse(log);
        return Assert.Single(document.RootElement.GetProperty("runs").EnumerateArray()).Clone();
    }

    private static JsonElement[] Results(string log) => [.. Run(log).GetProperty("results").EnumerateArray()];

    private static JsonElement[] Places(JsonElement result) =>
        [.. result.GetProperty("locations").EnumerateArray().Select(location => location.GetProperty("physicalLocation"))];

    private static bool IsValid(string log)
    {
        using var document = JsonDocument.Parse(log);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    private static JsonSchema ReadSchema()
    {
        using var stream = typeof(FindingsSarifTests).Assembly.GetManifestResourceStream("sarif-2.1.0.json")!;
        using var reader = new StreamReader(stream);
        return JsonSchema.FromText(reader.ReadToEnd());
    }
}
