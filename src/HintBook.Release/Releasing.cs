using System.Security.Cryptography;
using System.Text;

namespace HintBook.Release;

/// <summary><c>HintBook.Release ASSETS LICENCES PUBLISHED OUT</c>: packs what was published for each system (PUBLISHED/linux-x64 and so on) into OUT.</summary>
internal static class Releasing
{
    private static int Main(string[] args)
    {
        if (args is not [var assetsFile, var licences, var published, var output])
        {
            Console.Error.WriteLine("HintBook.Release ASSETS LICENCES PUBLISHED OUT: see build.ps1.");
            return 2;
        }

        var version = typeof(Download).Assembly.GetName().Version!.ToString(3);
        var assets = File.ReadAllText(assetsFile);
        Directory.CreateDirectory(output);
        var sums = new StringBuilder();
        foreach (var folder in Directory.EnumerateDirectories(published).Order(StringComparer.Ordinal))
        {
            var name = $"hintbook-{version}-{Path.GetFileName(folder)}";
            var (files, bill) = Download.Of(version, Path.GetFileName(folder), folder, assets, licences);
            foreach (var (file, bytes) in new[] { ($"{name}.cdx.json", Encoding.UTF8.GetBytes(bill)), ($"{name}.zip", StableZip.Write(files)) })
            {
                File.WriteAllBytes(Path.Combine(output, file), bytes);
                sums.Append($"{Convert.ToHexStringLower(SHA256.HashData(bytes))}  {file}\n");
                Console.WriteLine($"{file}: {bytes.Length:N0} bytes");
            }
        }

        File.WriteAllText(Path.Combine(output, "SHA256SUMS.txt"), sums.ToString());
        return 0;
    }
}
