namespace HintBook.Cards.ReadingBack;

/// <summary>What was read from one place.</summary>
/// <param name="Says">What the code says; null where none can be read.</param>
/// <param name="Figures">What was measured on it; null where nothing was.</param>
internal sealed record ReadCode(string? Says, CodeFigures? Figures)
{
    /// <summary>Whether this wasn't read now but in an earlier run, from the same bytes.</summary>
    public bool IsKept { get; init; }

    /// <summary>The reading as bytes; null where nothing could be read, which is tried again each time.</summary>
    public byte[]? Write()
    {
        if (Says is null)
            return null;
        using var content = new MemoryStream();
        using var writer = new BinaryWriter(content);
        writer.Write(Says);
        writer.Write(Figures is not null);
        if (Figures is { } figures)
        {
            writer.Write(figures.Module);
            writer.Write(figures.Distance);
            writer.Write(figures.QuietZone);
            writer.Write(figures.Contrast);
        }

        return content.ToArray();
    }

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    public static ReadCode Kept(byte[] content)
    {
        using var reader = new BinaryReader(new MemoryStream(content, writable: false));
        var says = reader.ReadString();
        var figures = reader.ReadBoolean()
            ? new CodeFigures(reader.ReadDouble(), reader.ReadDouble(), reader.ReadDouble(), reader.ReadDouble())
            : null;
        return new(says, figures) { IsKept = true };
    }
}
