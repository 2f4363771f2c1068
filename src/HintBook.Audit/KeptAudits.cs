using System.Security.Cryptography;

namespace HintBook.Audit;

/// <summary>
/// What earlier audits read in printed files, each by the bytes that were read. A file in which nothing was wrong is known by its bytes, its name, the
/// whole table and this build; a picture's code by its bytes and this build. Faults aren't kept.
/// </summary>
/// <param name="take">What was kept under a key; null where nothing was.</param>
/// <param name="keep">Keeps something under a key for the next audit.</param>
public sealed class KeptAudits(Func<string, byte[]?> take, Action<string, byte[]> keep)
{
    private static readonly byte[][] Builds =
    [
        .. new[] { typeof(KeptAudits), typeof(UglyToad.PdfPig.PdfDocument), typeof(ZXing.BarcodeReaderGeneric), typeof(SixLabors.ImageSharp.Image) }
            .Select(type => type.Module.ModuleVersionId.ToByteArray()),
    ];

    /// <summary>Keeps nothing and knows nothing.</summary>
    public static KeptAudits None { get; } = new(_ => null, (_, _) => { });

    /// <summary>The codes of a file in which nothing was wrong with this table; null where that isn't known.</summary>
    internal (string? Says, int Page)[]? Clean(string path, byte[] file, byte[] table) =>
        take(KeyOf("clean", path, file, table)) is { } known ? Codes(known) : null;

    /// <summary>Keeps that nothing was wrong with a file.</summary>
    internal void KeepClean(string path, byte[] file, byte[] table, IReadOnlyCollection<(string? Says, int Page)> codes)
    {
        if (codes.All(code => code.Says is not null))
            keep(KeyOf("clean", path, file, table), Written(codes));
    }

    /// <summary>What the code in a picture says: as it was read from the same bytes, or else as it is read now.</summary>
    internal string? CodeIn(byte[] picture, Func<byte[], string?> read)
    {
        var key = KeyOf("code", "", picture, []);
        if (take(key) is { } known && Codes(known) is [var only])
            return only.Says;
        var says = read(picture);
        if (says is not null)
            keep(key, Written([(says, 0)]));
        return says;
    }

    private static string KeyOf(string kind, string path, byte[] file, byte[] table)
    {
        using var all = new MemoryStream();
        using var input = new BinaryWriter(all);
        foreach (var build in Builds)
            input.Write(build);
        input.Write(path);
        input.Write(SHA256.HashData(file));
        input.Write(table);
        return $"audit {kind} {Convert.ToHexStringLower(SHA256.HashData(all.GetBuffer().AsSpan(0, (int)all.Length)))}";
    }

    private static byte[] Written(IReadOnlyCollection<(string? Says, int Page)> codes)
    {
        using var all = new MemoryStream();
        using var output = new BinaryWriter(all);
        output.Write(codes.Count);
        foreach (var (says, page) in codes)
        {
            output.Write(says ?? "");
            output.Write(page);
        }

        return all.ToArray();
    }

    private static (string? Says, int Page)[] Codes(byte[] written)
    {
        using var input = new BinaryReader(new MemoryStream(written, writable: false));
        var codes = new (string?, int)[input.ReadInt32()];
        for (var i = 0; i < codes.Length; i++)
            codes[i] = (input.ReadString(), input.ReadInt32());
        return codes;
    }
}
