using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;

namespace HintBook.Release;

/// <summary>What a maker downloads for one system.</summary>
internal static class Download
{
    private const string Built = "HintBook.Cli";

    /// <summary>Its files, in one folder.</summary>
    /// <param name="version">The version.</param>
    /// <param name="system">The system, such as <c>win-x64</c>.</param>
    /// <param name="published">The folder with the published program and the typefaces' licences.</param>
    /// <param name="assets">The text of <c>project.assets.json</c>.</param>
    /// <param name="licences">Where the licences' texts are (<see cref="Notices"/>).</param>
    /// <returns>The files, and the bill of materials that is among them.</returns>
    public static (ImmutableArray<PackedFile> Files, string Bill) Of(string version, string system, string published, string assets, string licences)
    {
        var ending = system.StartsWith("win", StringComparison.Ordinal) ? ".exe" : "";
        var program = File.ReadAllBytes(Path.Combine(published, Built + ending));
        ImmutableArray<Component> components = [.. ShippedPackages.Of(assets, system), .. ShippedFonts.Of(Text("Fonts.targets"), published)];
        var bill = BillOfMaterials.Write(version, system, Convert.ToHexStringLower(SHA256.HashData(program)), components);
        ImmutableArray<PackedFile> files =
        [
            new($"hintbook-{version}/hintbook{ending}", program, IsProgram: true),
            Packed("CHANGES.md", Text("CHANGES.md")),
            Packed("INSTALLING.md", Text("installing.md")),
            Packed("LICENSE.txt", Text("LICENSE")),
            Packed("THIRD-PARTY.txt", Notices.Write(components, licences)),
            Packed("hintbook.cdx.json", bill),
        ];
        // Finder gives a program a terminal, so that it can't tell a double click.
        if (system.StartsWith("osx", StringComparison.Ordinal))
            files = files.Add(Packed("Open HintBook.command", Text("open.command")) with { IsProgram = true });
        return (files, bill);

        PackedFile Packed(string name, string text) => new($"hintbook-{version}/{name}", Encoding.UTF8.GetBytes(text));
    }

    private static string Text(string name)
    {
        using var reader = new StreamReader(typeof(Download).Assembly.GetManifestResourceStream($"download/{name}")
            ?? throw new InvalidOperationException($"{name} isn't embedded."));
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
