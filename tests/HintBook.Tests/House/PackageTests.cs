using System.Xml.Linq;

namespace HintBook.Tests.House;

/// <summary>What goes out, and what it is built on.</summary>
public class PackageTests
{
    [Fact]
    public void The_release_notes_begin_with_the_version_that_is_built()
    {
        var version = Xml("Directory.Build.props").Descendants("Version").Single().Value;
        var notes = File.ReadLines(Path.Combine(Repository.Root, "src", "HintBook.Cli", "CHANGES.md"));

        Assert.Equal($"## {version}", notes.First(line => line.StartsWith("## ", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_version_of_a_package_has_its_reason_beside_it()
    {
        var without = Xml("Directory.Packages.props").Descendants("PackageVersion")
            .Where(package => package.PreviousNode is not XComment { Value.Length: > 5 })
            .Select(package => package.Attribute("Include")?.Value);

        Assert.Empty(without);
    }

    private static XDocument Xml(string file) => XDocument.Load(Path.Combine(Repository.Root, file));
}
