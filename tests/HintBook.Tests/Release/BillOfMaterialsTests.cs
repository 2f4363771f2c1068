using System.Collections.Immutable;
using System.Text.Json;
using HintBook.Release;
using HintBook.Tests.House;
using Json.Schema;

namespace HintBook.Tests.Release;

public class BillOfMaterialsTests
{
    private static readonly ImmutableArray<Component> Some =
    [
        new() { Name = "One", Version = "1.2.3", Purl = "pkg:nuget/One@1.2.3", Licence = "MIT", Copyright = "© One", Sha512 = new('a', 128), Needs = ["Two"] },
        new() { Name = "Two", Version = "2.0.0", Purl = "pkg:nuget/Two@2.0.0", Licence = "MIT AND Apache-2.0" },
        new() { Name = "Three", Version = "3", Purl = "pkg:nuget/Three@3", LicenceAddress = "https://three.example/licence" },
    ];

    private static readonly string Bill = BillOfMaterials.Write("0.1.0", "linux-x64", new('b', 64), Some);

    // The schema of CycloneDX 1.6 (ECMA-424) as its own project publishes it, with the two that it names.
    [Fact]
    public void It_keeps_to_the_published_schema()
    {
        var folder = Path.Combine(NpmPackage.Have("@cyclonedx/cyclonedx-library", "10.3.0"), "res", "schema");
        var options = new EvaluationOptions { OutputFormat = OutputFormat.List };
        foreach (var other in new[] { "spdx.SNAPSHOT.schema.json", "jsf-0.82.SNAPSHOT.schema.json" })
            SchemaRegistry.Global.Register(new Uri($"http://cyclonedx.org/schema/{other}"), Read(other));
        var schema = Read("bom-1.6.SNAPSHOT.schema.json");

        using var bill = JsonDocument.Parse(Bill);
        var result = schema.Evaluate(bill.RootElement, options);

        Assert.True(result.IsValid, string.Join('\n', Errors(result)));
        using var wrong = JsonDocument.Parse(Bill.Replace("\"bomFormat\": \"CycloneDX\",", "", StringComparison.Ordinal));
        Assert.False(schema.Evaluate(wrong.RootElement, options).IsValid);

        JsonSchema Read(string name) => JsonSchema.FromText(File.ReadAllText(Path.Combine(folder, name)));
    }

    [Fact]
    public void It_says_what_each_part_needs()
    {
        using var bill = JsonDocument.Parse(Bill);
        var needs = bill.RootElement.GetProperty("dependencies").EnumerateArray().ToDictionary(
            each => each.GetProperty("ref").GetString()!,
            each => string.Join(' ', each.GetProperty("dependsOn").EnumerateArray().Select(need => need.GetString())));

        Assert.Equal("pkg:nuget/One@1.2.3 pkg:nuget/Two@2.0.0 pkg:nuget/Three@3", needs["hintbook"]);
        Assert.Equal("pkg:nuget/Two@2.0.0", needs["pkg:nuget/One@1.2.3"]);
        Assert.Equal("", needs["pkg:nuget/Three@3"]);
    }

    private static IEnumerable<string> Errors(EvaluationResults result) =>
        from detail in result.Details ?? []
        from error in detail.Errors ?? []
        select $"{detail.InstanceLocation}: {error.Value}";
}
