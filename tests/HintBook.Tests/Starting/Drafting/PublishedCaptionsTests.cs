using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using HintBook.Starting.Drafting;
using HintBook.Tests.House;

namespace HintBook.Tests.Starting.Drafting;

/// <summary>
/// Captions that others have collected, with what others read in them. npm brings them, once, into the build folder; where it can't, these tests are
/// skipped and say so. vtt.js 0.10.0 carries 264 files for each rule of the W3C's chapter on parsing, each with its cues (Apache-2.0); its later versions
/// carry none, and of fifteen packages none carries the W3C's own tests. @aj-archipelago/subvibe 1.0.12 carries SubRip and WebVTT as programs of
/// transcription write them, and a parser (MIT).
/// </summary>
public partial class PublishedCaptionsTests
{
    private const string Headless = "A file without the first line “WEBVTT”, or with something before it, still says what is said when.";
    private const string NeverClosed = "A tag that is never closed stays in the text, where the maker sees it; a browser drops all that follows.";
    private const string InOneBlock = "SubRip as found has empty lines within a caption, and none before the next one.";
    private const string Digits = "Times with two digits behind the point are found, and can only mean one thing.";

    // Where a reader that takes what it finds differs from one that throws away what isn't WebVTT: the file, and why.
    private static readonly Dictionary<string, string> Departures = new()
    {
        ["cue-times/fraction-digits.vtt"] = Digits,
        ["cue-times/minimum-spots-over-sixty.vtt"] =
            "“120:00.000” is an error by the W3C's rule (6.3, collect a timestamp), and told as one; that parser takes it for 120 hours.",
        ["cuetext/format/double-line-break.vtt"] = InOneBlock,
        ["cuetext/lang/no-end-gt.vtt"] = NeverClosed,
        ["cuetext/tag-format/end-tag-no-gt.vtt"] = NeverClosed,
        ["cuetext/tag-format/no-closing-gt.vtt"] = NeverClosed,
        ["cuetext/tag-format/start-tag-missing-gt.vtt"] = NeverClosed,
        ["cuetext/timestamp/no-end-gt.vtt"] = NeverClosed,
        ["cuetext/voice/no-end-gt.vtt"] = NeverClosed,
        ["file-layout/bom-garbage-data.vtt"] = Headless,
        ["file-layout/bom-tab-webvtt.vtt"] = Headless,
        ["file-layout/cue-spacing.vtt"] = InOneBlock,
        ["file-layout/header-no-new-line.vtt"] = Headless,
        ["file-layout/newline-before-webvtt.vtt"] = Headless,
        ["file-layout/tab-after-bom-before-header.vtt"] = Headless,
        ["integration/id.vtt"] = "A caption whose name is an arrow is read; by the W3C's rule it is dropped.",
    };

    private const string OtherReader =
        """
        const fs = require("fs");
        import(require("url").pathToFileURL(process.argv[1])).then(other => {
          const cues = other.parse(fs.readFileSync(process.argv[2], "utf8")).cues;
          console.log(JSON.stringify(cues.map(cue => ({ startTime: cue.startTime / 1000, endTime: cue.endTime / 1000, text: cue.text }))));
        });
        """;

    [Fact]
    public void Cues_and_their_times_are_those_that_a_browsers_parser_is_tested_with()
    {
        var known = Known();

        Assert.Equal(264, known.Length);
        var wrong = from file in known
                    where !Departures.ContainsKey(file.Name)
                    let ours = Ours(file.Path)
                    where ours != file.Cues
                    select $"{file.Name}\n  theirs {file.Cues}\n  ours   {ours}";
        Assert.Equal("", string.Join('\n', wrong));
    }

    [Fact]
    public void Every_departure_is_needed() =>
        Assert.Equal(
            Departures.Keys.Order(StringComparer.Ordinal),
            Known().Where(file => Departures.ContainsKey(file.Name) && Ours(file.Path) != file.Cues).Select(file => file.Name).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("sublong.srt", 1136)]
    [InlineData("numeric-content.srt", 3)]
    [InlineData("sample.srt", 3)]
    [InlineData("sample.vtt", 3)]
    [InlineData("subnospacing.vtt", 111)]
    public void What_programs_of_transcription_write_is_read_as_another_library_reads_it(string name, int cues)
    {
        var package = NpmPackage.Have("@aj-archipelago/subvibe", "1.0.12");
        var file = Path.Combine(package, "src", "__tests__", "fixtures", name);

        using var theirs = JsonDocument.Parse(
            DebianProgram.Run(package, "node", "-e", OtherReader, Path.Combine(package, "dist", "index.esm.js"), file));

        Assert.Equal(cues, theirs.RootElement.GetArrayLength());
        Assert.Equal(Written(theirs.RootElement), Ours(file));
    }

    private static string Ours(string path) =>
        Written(SpeechFile.Read(WrittenText.Of(File.ReadAllBytes(path)).Text).Said.Select(said => (said.From.TotalSeconds, said.To.TotalSeconds, said.Text)));

    // Its tests name each file with the file of its cues: jsonEqual("cue-times/fractions.vtt", "cue-times/fractions.json", …).
    private static (string Name, string Path, string Cues)[] Known()
    {
        var tests = Path.Combine(NpmPackage.Have("vtt.js", "0.10.0"), "tests");
        return
        [
            .. from script in Directory.EnumerateFiles(tests, "*.js", SearchOption.AllDirectories)
               from Match pair in Pair().Matches(File.ReadAllText(script))
               let name = pair.Groups["captions"].Value
               let path = Path.Combine(tests, name)
               group pair by (name, path) into file
               orderby file.Key.name
               select (file.Key.name, file.Key.path, CuesIn(Path.Combine(tests, file.First().Groups["cues"].Value))),
        ];
    }

    private static string CuesIn(string path)
    {
        using var file = JsonDocument.Parse(File.ReadAllText(path));
        return Written(file.RootElement.GetProperty("cues"));
    }

    private static string Written(JsonElement cues) => Written(
        from cue in cues.EnumerateArray()
        let text = Plain(cue.GetProperty("text").GetString() ?? "")
        where text.Length > 0
        select (cue.GetProperty("startTime").GetDouble(), cue.GetProperty("endTime").GetDouble(), text));

    private static string Written(IEnumerable<(double From, double To, string Text)> cues) =>
        string.Join(" | ", cues.Select(cue => string.Create(CultureInfo.InvariantCulture, $"{cue.From:0.###} {cue.To:0.###} {cue.Text}")));

    // W3C WebVTT, section 6.4, without the elements: what stands between < and > is a tag, one that isn't closed goes on to the end; six references.
    private static string Plain(string cue)
    {
        var text = Tag().Replace(cue, "");
        (string Reference, string Means)[] references =
            [("&lt;", "<"), ("&gt;", ">"), ("&nbsp;", " "), ("&lrm;", "\u200E"), ("&rlm;", "\u200F"), ("&amp;", "&")];
        foreach (var (reference, means) in references)
            text = text.Replace(reference, means, StringComparison.Ordinal);
        return Blanks().Replace(text, " ").Trim();
    }

    [GeneratedRegex(@"(?m)^(?!\s*//).*jsonEqual\w*\(\s*""(?<captions>[^""]+)"",\s*""(?<cues>[^""]+(?<!-proc)\.json)""", RegexOptions.ExplicitCapture)]
    private static partial Regex Pair();

    [GeneratedRegex("<[^>]*>?")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
