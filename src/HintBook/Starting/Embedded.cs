using System.Reflection;

namespace HintBook.Starting;

/// <summary>Files of a book that travel inside the library.</summary>
internal static class Embedded
{
    /// <summary>The names of the files in a folder, with the path inside it, in the order of their code points.</summary>
    /// <param name="folder">The folder, such as <c>starter/</c>.</param>
    public static IEnumerable<(string Path, string Resource)> In(string folder) =>
        Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(name => name.StartsWith(folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(name => (name[folder.Length..], name));

    /// <summary>What a file says.</summary>
    /// <param name="resource">Its name.</param>
    public static string Text(string resource)
    {
        using var reader = new StreamReader(Open(resource));
        return reader.ReadToEnd();
    }

    /// <summary>The bytes of a file.</summary>
    /// <param name="resource">Its name.</param>
    public static byte[] Bytes(string resource)
    {
        using var stream = Open(resource);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static Stream Open(string resource) =>
        Assembly.GetExecutingAssembly().GetManifestResourceStream(resource) ?? throw new InvalidOperationException($"{resource} isn't embedded.");
}
