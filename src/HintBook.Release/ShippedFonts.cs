using System.Collections.Immutable;
using System.Xml.Linq;

namespace HintBook.Release;

/// <summary>The typefaces that travel in the program, read from the list that the build takes them from.</summary>
internal static class ShippedFonts
{
    private const string Licence = "OFL-1.1";
    private const string Ending = ".licence.txt";

    /// <summary>Reads them.</summary>
    /// <param name="targets">The text of <c>Fonts.targets</c>.</param>
    /// <param name="published">The folder of a publish, where each typeface's licence lies.</param>
    /// <exception cref="FileNotFoundException">A typeface is missing: npm couldn't fetch it when the program was built.</exception>
    public static ImmutableArray<Component> Of(string targets, string published)
    {
        var root = XDocument.Parse(targets).Root!;
        var inter = Component("Inter", root.Descendants("PrintFontVersion").Single().Value, "pkg:nuget/Avalonia.Fonts.Inter@", published);
        var others =
            from font in root.Descendants("NpmFontPackage")
            let name = font.Attribute("Include")!.Value
            select Component(name, font.Attribute("Version")!.Value, $"pkg:npm/%40expo-google-fonts/{name}@", published);
        return [inter, .. others.OrderBy(font => font.Name, StringComparer.Ordinal)];
    }

    private static Component Component(string name, string version, string purl, string published)
    {
        var text = Path.Combine(published, name + Ending);
        if (!File.Exists(text))
            throw new FileNotFoundException($"The typeface {name} isn't in this build: {text} is missing. npm must be there when it is built.");
        return new()
        {
            Name = name,
            Version = version,
            Purl = purl + version,
            Licence = Licence,
            Texts = [(name + Ending, File.ReadAllText(text).ReplaceLineEndings("\n"))],
        };
    }
}
