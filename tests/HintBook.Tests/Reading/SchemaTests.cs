using System.Text.Json;
using CsCheck;
using HintBook.Reading;
using Json.Schema;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace HintBook.Tests.Reading;

/// <summary>The JSON Schemas and the reader give the same answers. JsonSchema.Net 8.0.5 checks, by JSON Schema's draft 2020-12.</summary>
public sealed class SchemaTests : IDisposable
{
    private static readonly JsonSchema BookSchema = JsonSchema.FromText(Schemas.All[0].Text);
    private static readonly JsonSchema StageSchema = JsonSchema.FromText(Schemas.All[1].Text);

    private readonly BookOnDisk book = new BookOnDisk().Without("stages/01-the-lid.md");

    public static TheoryData<string> GoodBooks => [.. SchemaCorpus.GoodBooks];

    public static TheoryData<string> BadBooks => [.. SchemaCorpus.BadBooks];

    public static TheoryData<string> GoodStages => [.. SchemaCorpus.GoodStages];

    public static TheoryData<string> BadStages => [.. SchemaCorpus.BadStages];

    public void Dispose() => book.Dispose();

    [Fact]
    public void The_schemas_are_schemas() => Assert.All(Schemas.All, schema =>
    {
        using var text = JsonDocument.Parse(schema.Text);
        Assert.True(MetaSchemas.Draft202012.Evaluate(text.RootElement).IsValid, schema.Name);
    });

    [Theory]
    [MemberData(nameof(GoodBooks))]
    public void Both_take_a_good_book(string yaml) => Assert.Equal((true, true), (SchemaTakesBook(yaml), ReaderTakesBook(yaml)));

    [Theory]
    [MemberData(nameof(BadBooks))]
    public void Both_refuse_a_bad_book(string yaml) => Assert.Equal((false, false), (SchemaTakesBook(yaml), ReaderTakesBook(yaml)));

    [Theory]
    [MemberData(nameof(GoodStages))]
    public void Both_take_a_good_stage(string yaml) => Assert.Equal((true, true), (SchemaTakesStage(yaml), ReaderTakesStage(yaml)));

    [Theory]
    [MemberData(nameof(BadStages))]
    public void Both_refuse_a_bad_stage(string yaml) => Assert.Equal((false, false), (SchemaTakesStage(yaml), ReaderTakesStage(yaml)));

    [Fact]
    public void Both_take_the_whole_example()
    {
        Assert.True(SchemaTakesBook(File.ReadAllText(Path.Combine(Where.Example, "book.yaml"))));
        Assert.DoesNotContain(Reader.Read(Where.Example).Findings.All, finding => finding.Code.Id.StartsWith("HB12", StringComparison.Ordinal));
    }

    // JSON has numbers and no spelling of them, so the reader may be stricter about how one is spelt where a name or a time is wanted.
    [Theory]
    [InlineData("title: x\ngoal: [ 1.0 ]")]
    [InlineData("title: x\ngoal: [ +1 ]")]
    [InlineData("title: x\ngoal: [ -0 ]")]
    [InlineData("title: x\ngoal: [ a ]\ncodes: { c: { answer: 1, lock: { wheels: 0x4, symbols: 0-9 } } }")]
    public void Only_the_reader_sees_how_a_number_is_spelt(string yaml) => Assert.Equal((true, false), (SchemaTakesBook(yaml), ReaderTakesBook(yaml)));

    [Fact]
    public void Books_changed_anywhere_get_the_same_answer() =>
        Changes.Sample(change =>
        {
            var yaml = change.In(SchemaCorpus.GoodBooks);
            return SchemaTakesBook(yaml) == ReaderTakesBook(yaml);
        }, iter: 1000, threads: 1, print: change => change.In(SchemaCorpus.GoodBooks));

    [Fact]
    public void Stages_changed_anywhere_get_the_same_answer() =>
        Changes.Sample(change =>
        {
            var yaml = change.In(SchemaCorpus.GoodStages);
            return SchemaTakesStage(yaml) == ReaderTakesStage(yaml);
        }, iter: 1000, threads: 1, print: change => change.In(SchemaCorpus.GoodStages));

    private static readonly Gen<Change> Changes =
        Gen.Select(Gen.Int[0, 999], Gen.Int[0, 999], Gen.Int[0, 5], Gen.Int[0, 999], (text, node, kind, word) => new Change(text, node, kind, word));

    private static bool SchemaTakesBook(string yaml) => IsValid(BookSchema, yaml);

    private static bool SchemaTakesStage(string yaml) => IsValid(StageSchema, yaml);

    private static bool IsValid(JsonSchema schema, string yaml)
    {
        using var json = JsonDocument.Parse(CoreSchema.ToJson(yaml)?.ToJsonString() ?? "null");
        return schema.Evaluate(json.RootElement).IsValid;
    }

    private bool ReaderTakesBook(string yaml) => Takes(book.With("book.yaml", yaml), "book.yaml");

    private bool ReaderTakesStage(string yaml) => Takes(book.With("stages/01-a.yaml", yaml), "stages/01-a.yaml");

    private static bool Takes(BookOnDisk book, string file) =>
        !book.Read().Findings.All.Any(finding => finding.At.File.Path == file && finding.Code.Id.StartsWith("HB12", StringComparison.Ordinal));

    /// <summary>One change to one place of a good text.</summary>
    private sealed record Change(int Text, int Node, int Kind, int Word)
    {
        private static readonly string[] Words =
        [
            "true", "false", "no", "12", "0", "-1", "2.5", "101", "~", "any", "a-b", "a b", "x.jpg", "2:16", "20 min",
            "https://a.example/", "mailto:a@b.example", "0-9", "both", "heavy", "en", "ä",
        ];

        public string In(string[] texts)
        {
            var stream = new YamlStream();
            stream.Load(new StringReader(texts[Text % texts.Length]));
            var all = stream.Documents[0].AllNodes.ToArray();
            Apply(all[Node % all.Length]);
            var written = new StringWriter { NewLine = "\n" };
            stream.Save(written, assignAnchors: false);
            return written.ToString().Replace("\n...\n", "\n", StringComparison.Ordinal);
        }

        private void Apply(YamlNode node)
        {
            var word = new YamlScalarNode(Words[Word % Words.Length]) { Style = Kind == 1 ? ScalarStyle.DoubleQuoted : ScalarStyle.Plain };
            switch (node)
            {
                case YamlMappingNode map when Kind == 2:
                    map.Children[word] = new YamlScalarNode("x");
                    break;
                case YamlMappingNode map when map.Children.Count > 0:
                    var (key, value) = map.Children.ElementAt(Word % map.Children.Count);
                    map.Children.Remove(key);
                    if (Kind is 3 or 4 or 5)
                        map.Children[Kind == 3 ? word : key] = Kind switch { 3 => value, 4 => new YamlSequenceNode(value), _ => word };
                    break;
                case YamlSequenceNode list when Kind == 2 || list.Children.Count == 0:
                    list.Children.Add(word);
                    break;
                case YamlSequenceNode list:
                    var index = Word % list.Children.Count;
                    list.Children[index] = Kind switch
                    {
                        3 => new YamlSequenceNode(list.Children[index]),
                        4 => new YamlMappingNode(word, list.Children[index]),
                        _ => word,
                    };
                    if (Kind == 0)
                        list.Children.RemoveAt(index);
                    break;
                case YamlScalarNode scalar:
                    scalar.Value = word.Value;
                    scalar.Style = word.Style;
                    break;
            }
        }
    }
}
