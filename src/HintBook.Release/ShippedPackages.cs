using System.Collections.Immutable;
using System.Text.Json;
using System.Xml.Linq;

namespace HintBook.Release;

/// <summary>The packages whose files travel in the program of one system, read from what a restore notes (<c>project.assets.json</c>).</summary>
internal static class ShippedPackages
{
    private static readonly ImmutableArray<string> RuntimePacks = ["Microsoft.NETCore.App.Runtime.", "Microsoft.AspNetCore.App.Runtime."];
    private static readonly ImmutableArray<string> Shipping = ["runtime", "native"];
    private static readonly ImmutableArray<string> TextNames = ["LICENSE", "LICENCE", "COPYING", "NOTICE", "THIRD-PARTY", "THIRDPARTY"];

    /// <summary>Reads them, in the order of their names.</summary>
    /// <param name="assets">The text of <c>project.assets.json</c>.</param>
    /// <param name="system">The system, such as <c>linux-x64</c>.</param>
    public static ImmutableArray<Component> Of(string assets, string system)
    {
        using var json = JsonDocument.Parse(assets);
        var root = json.RootElement;
        var folders = root.GetProperty("packageFolders").EnumerateObject().Select(folder => folder.Name).ToImmutableArray();
        var target = root.GetProperty("targets").EnumerateObject().Single(each => each.Name.EndsWith($"/{system}", StringComparison.Ordinal)).Value;
        var packages =
            from package in target.EnumerateObject()
            where package.Value.GetProperty("type").ValueEquals("package") && Ships(package.Value)
            let needs = package.Value.TryGetProperty("dependencies", out var all) ? all.EnumerateObject().Select(need => need.Name) : []
            select Read(folders, package.Name.Split('/')[0], package.Name.Split('/')[1], needs);
        var packs =
            from framework in root.GetProperty("project").GetProperty("frameworks").EnumerateObject()
            where framework.Value.TryGetProperty("downloadDependencies", out _)
            from pack in framework.Value.GetProperty("downloadDependencies").EnumerateArray()
            let name = pack.GetProperty("name").GetString() ?? ""
            where RuntimePacks.Any(prefix => name == prefix + system)
            select Read(folders, name, ExactVersion(pack.GetProperty("version").GetString() ?? ""), []);
        ImmutableArray<Component> found = [.. packages.Concat(packs).OrderBy(component => component.Name, StringComparer.Ordinal)];
        var names = found.Select(component => component.Name).ToHashSet(StringComparer.Ordinal);
        return [.. found.Select(component => component with { Needs = [.. component.Needs.Where(names.Contains).Order(StringComparer.Ordinal)] })];
    }

    // A placeholder named “_._” stands for no file at all.
    private static bool Ships(JsonElement package) => Shipping
        .Any(kind => package.TryGetProperty(kind, out var files) && files.EnumerateObject().Any(file => !file.Name.EndsWith("_._", StringComparison.Ordinal)));

    // “[10.0.12, 10.0.12]” is one version.
    private static string ExactVersion(string range) => range.Trim('[', ']').Split(',')[0].Trim();

    private static Component Read(ImmutableArray<string> folders, string name, string version, IEnumerable<string> needs)
    {
        var relative = Path.Combine(name.ToLowerInvariant(), version.ToLowerInvariant());
        var folder = folders.Select(each => Path.Combine(each, relative)).FirstOrDefault(Directory.Exists)
            ?? throw new DirectoryNotFoundException($"The package {name} {version} isn't in {string.Join(" or ", folders)}. Restore it first.");
        var about = XDocument.Load(Path.Combine(folder, $"{name.ToLowerInvariant()}.nuspec")).Root!.Elements().First();
        var licence = Element(about, "license");
        var hash = Path.Combine(folder, $"{name.ToLowerInvariant()}.{version.ToLowerInvariant()}.nupkg.sha512");
        return new()
        {
            Name = name,
            Version = version,
            Purl = $"pkg:nuget/{name}@{version}",
            Licence = licence?.Attribute("type")?.Value == "expression" ? licence.Value.Trim() : "",
            LicenceAddress = licence is null ? Element(about, "licenseUrl")?.Value.Trim() ?? "" : "",
            Copyright = Element(about, "copyright")?.Value.Trim() is { Length: > 0 } copyright ? copyright : Element(about, "authors")?.Value.Trim() ?? "",
            Sha512 = File.Exists(hash) ? Convert.ToHexStringLower(Convert.FromBase64String(File.ReadAllText(hash).Trim())) : "",
            Texts = [.. from file in Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal)
                        let own = Path.GetFileName(file)
                        where TextNames.Any(start => own.StartsWith(start, StringComparison.OrdinalIgnoreCase))
                        select (own, File.ReadAllText(file).ReplaceLineEndings("\n"))],
            Needs = [.. needs],
        };
    }

    // Each version of the format has a namespace of its own.
    private static XElement? Element(XElement about, string name) => about.Elements().FirstOrDefault(each => each.Name.LocalName == name);
}
