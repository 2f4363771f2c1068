using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using HintBook.Sealing;

namespace HintBook.Publishing;

/// <summary>The folder <c>p</c> of a sealed site: photos and films in sealed segments, each file once. Safe to be asked by several threads.</summary>
/// <param name="keys">The keys of the files.</param>
/// <param name="writer">Where the site is put together.</param>
internal sealed class SealedFileFolder(FileKeys keys, OutputWriter writer)
{
    private const string Folder = "p/";

    private readonly ConcurrentDictionary<string, Lazy<string>> made = new(StringComparer.Ordinal);

    /// <summary>Seals a file that lies in the site in the open, and says what opens it: its name, key, number of segments and length.</summary>
    /// <param name="path">The file in the site.</param>
    public string Of(string path) => made.GetOrAdd(path, each => new(() => Written(each))).Value;

    private string Written(string path)
    {
        var content = File.ReadAllBytes(writer.PathOf(Path.Combine("site", path)));
        var padded = new byte[Padding.SizeOfFile(content.Length)];
        content.CopyTo(padded, 0);
        var file = SealedFile.Of(keys, padded);
        for (var k = 0; k < file.Segments.Length; k++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"{Folder}{file.Name}-{k}");
            var script = $"hintbook.take(\"{name}\",\"{Convert.ToBase64String(file.Segments[k])}\")\n";
            writer.WriteUnkept(Path.Combine("site", name + ".js"), Encoding.ASCII.GetBytes(script));
        }

        return string.Create(CultureInfo.InvariantCulture, $"{file.Name} {Convert.ToHexStringLower(file.Key)} {file.Segments.Length} {content.Length}");
    }
}
