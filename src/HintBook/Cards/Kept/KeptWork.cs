using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;

namespace HintBook.Cards.Kept;

/// <summary>
/// What earlier runs made or read, each by a digest of everything that it follows from. What is asked for is kept for the next run, all else is
/// dropped. Thread-safe.
/// </summary>
public sealed class KeptWork
{
    private const string Heading = "hintbook kept work 1";

    private readonly ConcurrentDictionary<string, byte[]> before = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, byte[]> after = new(StringComparer.Ordinal);

    /// <summary>Whether the next run should keep other work than this one found.</summary>
    public bool IsChanged => before.Count != after.Count || after.Keys.Any(key => !before.ContainsKey(key));

    /// <summary>Reads what <see cref="Write"/> wrote. A file that was cut short or changed is as good as none, never an error.</summary>
    public static KeptWork Read(byte[] file)
    {
        var kept = new KeptWork();
        var body = file.Length - SHA256.HashSizeInBytes;
        if (body < 0 || !SHA256.HashData(file.AsSpan(0, body)).AsSpan().SequenceEqual(file.AsSpan(body)))
            return kept;
        using var reader = new BinaryReader(new MemoryStream(file, 0, body, writable: false));
        if (reader.ReadString() != Heading)
            return kept;
        for (var left = reader.ReadInt32(); left > 0; left--)
        {
            var key = reader.ReadString();
            kept.before[key] = reader.ReadBytes(reader.ReadInt32());
        }

        return kept;
    }

    /// <summary>What was asked for in this run, with a digest of the whole: the same work gives the same bytes.</summary>
    public byte[] Write()
    {
        using var file = new MemoryStream();
        using var writer = new BinaryWriter(file);
        writer.Write(Heading);
        var all = after.OrderBy(one => one.Key, StringComparer.Ordinal).ToArray();
        writer.Write(all.Length);
        foreach (var (key, content) in all)
        {
            writer.Write(key);
            writer.Write(content.Length);
            writer.Write(content);
        }

        writer.Write(SHA256.HashData(file.GetBuffer().AsSpan(0, (int)file.Length)));
        return file.ToArray();
    }

    /// <summary>What was kept, where it was.</summary>
    /// <param name="key">From <see cref="WorkKey"/>.</param>
    /// <param name="content">What was kept.</param>
    public bool TryTake(string key, [NotNullWhen(true)] out byte[]? content)
    {
        if (!after.TryGetValue(key, out content) && !before.TryGetValue(key, out content))
            return false;
        after[key] = content;
        return true;
    }

    /// <summary>Keeps something for later runs.</summary>
    /// <param name="key">From <see cref="WorkKey"/>.</param>
    /// <param name="content">What it is.</param>
    public void Keep(string key, byte[] content) => after[key] = content;

    /// <summary>What was kept, or else what is made now.</summary>
    /// <param name="key">From <see cref="WorkKey"/>.</param>
    /// <param name="make">Makes it.</param>
    public byte[] Take(string key, Func<byte[]> make)
    {
        if (TryTake(key, out var kept))
            return kept;
        var made = make();
        Keep(key, made);
        return made;
    }
}
