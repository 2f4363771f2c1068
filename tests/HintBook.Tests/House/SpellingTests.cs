using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Cli;

namespace HintBook.Tests.House;

/// <summary>What makers read is spelled right: asked of Debian's hunspell with its British dictionary, and of our own list of words beside this file.</summary>
public partial class SpellingTests
{
    private static readonly HashSet<string> Ours =
        [.. File.ReadAllLines(Path.Combine(Repository.Root, "tests", "HintBook.Tests", "House", "words.txt"))];

    [Fact]
    public void No_page_of_the_handbook_and_no_finding_has_a_word_that_no_dictionary_has()
    {
        HaveHunspell();
        Assert.Empty(
            from page in Guide.Pages.Concat(FindingPages.Codes.Select(code => KeyValuePair.Create(code, FindingPages.Of(code)!)))
            from word in Unknown(page.Value)
            select $"{page.Key}: {word}");
    }

    [Fact]
    public void Nor_has_the_readme_above_its_list_of_packages()
    {
        HaveHunspell();
        var text = File.ReadAllText(Path.Combine(Repository.Root, "README.md"));
        Assert.Empty(Unknown(text[..text.IndexOf("## Packages", StringComparison.Ordinal)]));
    }

    [Fact]
    public void A_slip_of_the_pen_would_be_noticed()
    {
        HaveHunspell();
        Assert.Equal(["boks", "hinjes"], Unknown("The boks has two hinjes, and `kode` isn't read."));
    }

    [Fact]
    public void Our_list_of_words_is_in_order_and_has_each_word_once() => Assert.Equal(
        Ours.Order(StringComparer.Ordinal), File.ReadAllLines(Path.Combine(Repository.Root, "tests", "HintBook.Tests", "House", "words.txt")));

    private static void HaveHunspell() => DebianProgram.Have("hunspell with its British dictionary", "hunspell hunspell-en-gb", () =>
        DebianProgram.IsThere("hunspell") && File.Exists("/usr/share/hunspell/en_GB.dic"));

    private static IEnumerable<string> Unknown(string markdown)
    {
        var start = new ProcessStartInfo("hunspell", ["-d", "en_GB", "-i", "UTF-8", "-l"])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            StandardInputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            StandardOutputEncoding = Encoding.UTF8,
        };
        using var hunspell = Process.Start(start)!;
        // It answers only once it has read everything of a text as short as a page.
        hunspell.StandardInput.Write(NotRead().Replace(markdown, " ").Replace('’', '\''));
        hunspell.StandardInput.Close();
        var said = hunspell.StandardOutput.ReadToEnd();
        hunspell.WaitForExit();
        return said.Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(word => !Ours.Contains(word));
    }

    // Listings, code, addresses, codes of findings and the names of files are no prose.
    [GeneratedRegex(
        @"^```(?s:.*?)^```$|`[^`\n]+`|https?:[^ )]+|\]\([^)]*\)|\bHB\d{4}\b|\S*\.(yaml|md|txt|vtt|srt)\b",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex NotRead();
}
