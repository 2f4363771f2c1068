using System.IO.Compression;
using System.Text;
using System.Text.Json;
using HintBook.Release;
using HintBook.Tests.House;

namespace HintBook.Tests.Release;

/// <summary>What a download is made of, tried with a small restore and a small publish that are made up.</summary>
public sealed class DownloadTests : IDisposable
{
    private static readonly string[] Fonts = ["Inter", "ibm-plex-sans-arabic", "m-plus-1p", "eb-garamond", "barlow-semi-condensed"];

    private readonly string root = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;

    public DownloadTests()
    {
        Package("Sawmill", "1.0.0", "<license type=\"expression\">MIT</license><copyright>© Sawmill</copyright>", ("LICENSE.txt", "Sawmill's own licence"));
        Package("Lathe", "2.0.0", "<license type=\"expression\">BSD-2-Clause</license><authors>Lathe's authors</authors>");
        Package("Plane", "3.0.0", "<licenseUrl>https://plane.example/licence</licenseUrl>");
        Package("Analyser", "4.0.0", "<license type=\"expression\">MIT</license>");
        Package("Microsoft.NETCore.App.Runtime.linux-x64", "10.0.1", "<license type=\"expression\">MIT</license>", ("THIRD-PARTY-NOTICES.TXT", "Notices"));
        Package("Microsoft.NETCore.App.Runtime.win-x64", "10.0.1", "<license type=\"expression\">MIT</license>");
        Directory.CreateDirectory(Path.Combine(root, "licences", "licenses"));
        File.WriteAllText(Path.Combine(root, "licences", "licenses", "BSD-2-Clause.json"), """{ "licenseText": "The text of two clauses" }""");
        File.WriteAllText(Path.Combine(root, "licences", "licenses", "MIT.json"), """{ "licenseText": "The text of MIT" }""");
        Directory.CreateDirectory(Published);
        foreach (var program in new[] { "HintBook.Cli", "HintBook.Cli.exe" })
            File.WriteAllText(Path.Combine(Published, program), "program");
        foreach (var font in Fonts)
            File.WriteAllText(Path.Combine(Published, $"{font}.licence.txt"), $"The licence of {font}");
    }

    private string Published => Path.Combine(root, "published");

    private string Assets => JsonSerializer.Serialize(new Dictionary<string, object>
    {
        ["packageFolders"] = new Dictionary<string, object> { [Path.Combine(root, "packages")] = new { } },
        ["targets"] = new Dictionary<string, object>
        {
            ["net10.0"] = new { },
            ["net10.0/linux-x64"] = Target(),
            ["net10.0/osx-arm64"] = Target(),
            ["net10.0/win-x64"] = Target(),
        },
        ["project"] = new
        {
            frameworks = new Dictionary<string, object>
            {
                ["net10.0"] = new
                {
                    downloadDependencies = new[]
                    {
                        new { name = "Microsoft.NETCore.App.Runtime.linux-x64", version = "[10.0.1, 10.0.1]" },
                        new { name = "Microsoft.NETCore.App.Runtime.win-x64", version = "[10.0.1, 10.0.1]" },
                        new { name = "Microsoft.NETCore.App.Crossgen2.linux-x64", version = "[10.0.1, 10.0.1]" },
                    },
                },
            },
        },
    });

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void Only_what_travels_in_the_program_is_named()
    {
        var packages = ShippedPackages.Of(Assets, "linux-x64");

        Assert.Equal(
            ["Lathe 2.0.0", "Microsoft.NETCore.App.Runtime.linux-x64 10.0.1", "Plane 3.0.0", "Sawmill 1.0.0"],
            packages.Select(package => $"{package.Name} {package.Version}"));
        Assert.Equal(["Lathe"], packages[^1].Needs);
        Assert.Equal(("MIT", "© Sawmill"), (packages[^1].Licence, packages[^1].Copyright));
        Assert.Equal("https://plane.example/licence", packages[2].LicenceAddress);
        Assert.Equal(Convert.ToHexStringLower(Encoding.UTF8.GetBytes("Sawmill")), packages[^1].Sha512);
    }

    [Fact]
    public void The_notices_have_the_text_of_each_licence()
    {
        var notices = Notices.Write(ShippedPackages.Of(Assets, "linux-x64"), Path.Combine(root, "licences"));

        Assert.Contains("Sawmill's own licence", notices, StringComparison.Ordinal);
        Assert.Contains("Lathe's authors\nLicence: BSD-2-Clause", notices, StringComparison.Ordinal);
        Assert.Contains("The text of two clauses", notices, StringComparison.Ordinal);
        Assert.Contains("Licence: https://plane.example/licence", notices, StringComparison.Ordinal);
    }

    [Fact]
    public void A_licence_without_a_text_ends_the_release()
    {
        File.Delete(Path.Combine(root, "licences", "licenses", "BSD-2-Clause.json"));

        Assert.Throws<FileNotFoundException>(() => Made("linux-x64"));
    }

    [Fact]
    public void A_typeface_that_the_build_could_not_fetch_ends_the_release()
    {
        File.Delete(Path.Combine(Published, "eb-garamond.licence.txt"));

        Assert.Throws<FileNotFoundException>(() => Made("linux-x64"));
    }

    [Theory]
    [InlineData("linux-x64", "hintbook", "")]
    [InlineData("win-x64", "hintbook.exe", "")]
    [InlineData("osx-arm64", "hintbook", "Open HintBook.command")]
    public void A_download_is_one_folder_with_the_program_and_what_belongs_to_it(string system, string program, string more)
    {
        using var zip = new ZipArchive(new MemoryStream(Made(system)));

        string[] expected = ["CHANGES.md", "INSTALLING.md", "LICENSE.txt", "THIRD-PARTY.txt", "hintbook.cdx.json", program, more];
        Assert.Equal(
            expected.Where(name => name.Length > 0).Select(name => $"hintbook-0.1.0/{name}").Order(StringComparer.Ordinal),
            zip.Entries.Select(entry => entry.FullName));
        var starts = zip.Entries.Where(entry => ((entry.ExternalAttributes >> 16) & 0x49) != 0).Select(entry => entry.Name);
        Assert.Equal(new[] { more, program }.Where(name => name.Length > 0), starts);
        using var notices = new StreamReader(zip.GetEntry("hintbook-0.1.0/THIRD-PARTY.txt")!.Open());
        var text = notices.ReadToEnd();
        Assert.All(Fonts, font => Assert.Contains($"The licence of {font}", text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_files_give_the_same_zip() => Assert.Equal(Made("linux-x64"), Made("linux-x64"));

    [Fact]
    public void The_order_of_the_files_changes_nothing()
    {
        PackedFile[] files = [new("b", new byte[] { 1 }), new("a", new byte[] { 2 }, IsProgram: true)];

        Assert.Equal(StableZip.Write(files), StableZip.Write(files.Reverse()));
    }

    // A zip that is made on Windows says 0 where Unix says 3 (APPNOTE.TXT 6.3.10, 4.4.2.2), and then nobody may start what is in it.
    [Fact]
    public void A_program_that_was_packed_on_Windows_can_be_started_on_Unix()
    {
        var zip = StableZip.Write([new("a", new byte[] { 1 }, IsProgram: true), new("a longer name", new byte[] { 2 })]);
        var made = (byte[])zip.Clone();
        var headers = Enumerable.Range(0, zip.Length - 4).Where(at => zip.AsSpan(at, 4).SequenceEqual("PK\u0001\u0002"u8)).ToArray();
        Assert.Equal(2, headers.Length);
        foreach (var header in headers)
            zip[header + 5] = 0;

        StableZip.SayMadeOnUnix(zip);

        Assert.All(headers, header => Assert.Equal(3, zip[header + 5]));
        Assert.Equal(made, zip);
    }

    [Fact]
    public void The_page_about_installing_names_the_version_that_is_built()
    {
        var page = File.ReadAllText(Path.Combine(Repository.Root, "src", "HintBook.Release", "installing.md"));

        Assert.Contains($"hintbook-{typeof(Download).Assembly.GetName().Version!.ToString(3)}", page, StringComparison.Ordinal);
    }

    private static Dictionary<string, object> Target() => new()
    {
        ["Sawmill/1.0.0"] = new
        {
            type = "package",
            dependencies = new Dictionary<string, string> { ["Lathe"] = "2.0.0", ["Analyser"] = "4.0.0" },
            runtime = new Dictionary<string, object> { ["lib/net10.0/Sawmill.dll"] = new { } },
        },
        ["Lathe/2.0.0"] = new { type = "package", runtime = new Dictionary<string, object> { ["lib/net10.0/Lathe.dll"] = new { } } },
        ["Plane/3.0.0"] = new { type = "package", native = new Dictionary<string, object> { ["runtimes/linux-x64/native/libplane.so"] = new { } } },
        ["Analyser/4.0.0"] = new { type = "package", runtime = new Dictionary<string, object> { ["lib/net10.0/_._"] = new { } } },
        ["HintBook.Audit/0.1.0"] = new { type = "project" },
    };

    private byte[] Made(string system) => StableZip.Write(Download.Of("0.1.0", system, Published, Assets, Path.Combine(root, "licences")).Files);

    private void Package(string name, string version, string about, params (string Name, string Text)[] texts)
    {
        var folder = Directory.CreateDirectory(Path.Combine(root, "packages", name.ToLowerInvariant(), version)).FullName;
        var nuspec = $"<package xmlns=\"http://schemas.microsoft.com/packaging/2013/05/nuspec.xsd\"><metadata>{about}</metadata></package>";
        File.WriteAllText(Path.Combine(folder, $"{name.ToLowerInvariant()}.nuspec"), nuspec);
        File.WriteAllText(
            Path.Combine(folder, $"{name.ToLowerInvariant()}.{version}.nupkg.sha512"),
            Convert.ToBase64String(Encoding.UTF8.GetBytes(name)));
        foreach (var (file, text) in texts)
            File.WriteAllText(Path.Combine(folder, file), text);
    }
}
