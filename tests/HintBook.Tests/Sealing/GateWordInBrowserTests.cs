using System.Text;
using HintBook.Pages;
using HintBook.Sealing;
using HintBook.Tests.House;

namespace HintBook.Tests.Sealing;

/// <summary>A word is checked by this program and compared by a browser: both must make the same of every letter that it may have.</summary>
public sealed class GateWordInBrowserTests : IDisposable
{
    // The script of the pages itself, without a page. Reads a line, and writes what is made of it.
    private const string Reader =
        """
        const fs = require("fs"), [script, typed] = process.argv.slice(1);
        globalThis.window = globalThis;
        globalThis.document = { documentElement: { dataset: {} } };
        globalThis.hintbook = { tools: {} };
        eval(fs.readFileSync(script, "utf8"));
        process.stdout.write(fs.readFileSync(typed, "utf8").split("\n").map(line => hintbook.gate.spellings(line).join(" ")).join("\n"));
        """;

    private readonly string folder = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_letter_is_the_same_in_both()
    {
        string[] letters =
        [
            .. Enumerable.Range(0, 0x11_0000).Where(Rune.IsValid).Select(value => new Rune(value).ToString())
                .Where(letter => GateWord.Odd(letter) is null && Gate.Plain(letter).Length > 0),
        ];

        Assert.True(letters.Length > 20_000, $"{letters.Length} letters");
        Assert.Equal(letters.Select(Gate.Plain), InBrowser(letters));
    }

    [Fact]
    public void Marks_between_letters_count_in_neither()
    {
        string[] marks =
        [
            .. Enumerable.Range(' ', 0x3000).Select(value => ((char)value).ToString())
                .Where(mark => GateWord.Odd(mark) is null && Gate.Plain(mark).Length == 0),
        ];

        Assert.True(marks.Length > 30, $"{marks.Length} marks");
        Assert.All(InBrowser([.. marks.Select(mark => $"a{mark}7")]), made => Assert.Equal("a7", made));
    }

    [Theory]
    [InlineData("Straße", "straße strasse")]
    [InlineData("İZMİR", "i\u0307zmi\u0307r izmir")]
    [InlineData("ΜΕΛΙΣΣΕΣ", "μελισσεσ")]
    [InlineData("٥١٧٣", "٥١٧٣ 5173")]
    [InlineData("５１７３", "5173")]
    [InlineData("cafe\u0301", "café")]
    [InlineData(" - ", "")]
    public void What_keyboards_write_in_two_ways_is_tried_in_the_common_one_as_well(string typed, string made) =>
        Assert.Equal([made], InBrowser([typed]));

    private string[] InBrowser(string[] typed)
    {
        DebianProgram.Have("node", "nodejs");
        var (script, lines) = (Path.Combine(folder, "gate.js"), Path.Combine(folder, "typed.txt"));
        File.WriteAllText(script, Theme.TextsOf(Theme.Default)["gate.js"]);
        File.WriteAllText(lines, string.Join('\n', typed));
        return DebianProgram.Run(folder, "node", ["-e", Reader, script, lines]).Split('\n');
    }
}
