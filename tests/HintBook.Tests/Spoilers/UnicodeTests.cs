using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Spoilers;
using HintBook.Tests.House;

namespace HintBook.Tests.Spoilers;

/// <summary>How texts are compared when secrets are looked for, against the files of the Unicode Character Database (Debian's unicode-data).</summary>
public partial class UnicodeTests
{
    private const string Folder = "/usr/share/unicode";

    // CaseFolding.txt: the full foldings, statuses C and F.
    [Fact]
    public void A_letter_and_what_it_folds_to_are_the_same_letter()
    {
        var foldings =
            from line in Lines("CaseFolding.txt")
            let fields = line.Split(';', StringSplitOptions.TrimEntries)
            where fields[1] is "C" or "F"
            select (Letter: Text(fields[0]), Folded: Text(fields[2]));

        Assert.Empty(foldings.Where(folding => Bare(folding.Letter) != Bare(folding.Folded)).Select(folding => $"{folding.Letter} {folding.Folded}"));
    }

    // NormalizationTest.txt: columns 1 to 3 are a text, its NFC and its NFD; all three are canonically the same. In Thai, Lao and Burmese every mark
    // counts as a letter, so that the order of several is not mended, nor the one Burmese letter that is taken apart.
    [Fact]
    public void A_text_is_the_same_composed_and_decomposed()
    {
        var texts =
            from line in Lines("NormalizationTest.txt")
            where !line.StartsWith('@')
            where !CountsMarks().IsMatch(line)
            let columns = line.Split(';')
            select (Written: Text(columns[0]), Composed: Text(columns[1]), Decomposed: Text(columns[2]));
        var all = texts.ToArray();
        var wrong = all
            .Where(text => Bare(text.Composed) != Bare(text.Decomposed) || Bare(text.Written) != Bare(text.Decomposed))
            .Select(text => text.Written)
            .ToArray();

        Assert.True(wrong.Length == 0, $"{wrong.Length}: {string.Join(' ', wrong.Take(100))}");
        Assert.True(all.Length > 18_000);
    }

    private static string Bare(string text)
    {
        var reader = new WordReader(new WordList(HintBook.Spoilers.Languages.SearchLanguage.Unknown));
        reader.Read(text);
        var bare = new StringBuilder();
        foreach (var word in reader.Words)
            bare.Append(reader.Bare(word));
        return bare.ToString();
    }

    private static string Text(string points) => string.Concat(
        from point in points.Split(' ', StringSplitOptions.RemoveEmptyEntries)
        select char.ConvertFromUtf32(int.Parse(point, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)));

    private static IEnumerable<string> Lines(string name)
    {
        var file = Path.Combine(Folder, name);
        DebianProgram.Have(file, "unicode-data", () => File.Exists(file) || File.Exists(file + ".bz2"));
        var text = File.Exists(file) ? File.ReadAllText(file) : Unpacked(file + ".bz2");
        return text.Split('\n').Select(line => line.Split('#')[0].Trim()).Where(line => line.Length > 0);
    }

    [GeneratedRegex(@"\b0E[0-9A-F]{2}\b|\b10[0-9][0-9A-F]\b")]
    private static partial Regex CountsMarks();

    private static string Unpacked(string file)
    {
        DebianProgram.Have("bzcat", "bzip2");
        return DebianProgram.Run("/", "bzcat", file);
    }
}
