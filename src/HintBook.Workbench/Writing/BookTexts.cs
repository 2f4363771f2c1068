using System.Collections.Immutable;
using System.Text;

namespace HintBook.Workbench.Writing;

/// <summary>The texts of a book's stages and rehearsals at one moment, and what is to become of them.</summary>
internal sealed class BookTexts
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private static readonly ImmutableArray<byte> Mark = [0xEF, 0xBB, 0xBF];

    private readonly ImmutableDictionary<string, ImmutableArray<byte>> before;
    private readonly Dictionary<string, (bool Marked, string Text)> texts = [];

    /// <summary>Takes files.</summary>
    /// <param name="files">Their bytes by name. Those that aren't UTF-8 are left alone.</param>
    public BookTexts(IEnumerable<KeyValuePair<string, ImmutableArray<byte>>> files)
    {
        before = files.ToImmutableDictionary(StringComparer.Ordinal);
        foreach (var (name, bytes) in before)
        {
            try
            {
                var marked = bytes.AsSpan().StartsWith(Mark.AsSpan());
                texts[name] = (marked, Strict.GetString(bytes.AsSpan()[(marked ? Mark.Length : 0)..]));
            }
            catch (DecoderFallbackException)
            {
                // It can't be changed here, and nothing is lost of it.
            }
        }
    }

    /// <summary>The names of the files as they are to be, in ordinal order.</summary>
    public IEnumerable<string> Names => [.. texts.Keys.Order(StringComparer.Ordinal)];

    /// <summary>The text of a file, as it is to be.</summary>
    public string this[string name]
    {
        get => texts[name].Text;
        set => texts[name] = (texts.TryGetValue(name, out var old) && old.Marked, value);
    }

    /// <summary>Gives files other names, all at once: each may take the name of another that gives its own up.</summary>
    public void Rename(IEnumerable<(string From, string To)> names)
    {
        var moved = names.Where(name => name.From != name.To).Select(name => (name.From, name.To, Text: texts[name.From])).ToArray();
        foreach (var (from, _, _) in moved)
            texts.Remove(from);
        foreach (var (_, to, text) in moved)
            texts.Add(to, text);
    }

    /// <summary>Takes a file out.</summary>
    public void Remove(string name) => texts.Remove(name);

    /// <summary>What has become of the files.</summary>
    /// <param name="says">What is done, as one line.</param>
    public FilesChange Change(string says)
    {
        var after = texts.ToDictionary(
            text => text.Key,
            ImmutableArray<byte> (text) => [.. text.Value.Marked ? Mark : [], .. Strict.GetBytes(text.Value.Text)],
            StringComparer.Ordinal);
        foreach (var (name, bytes) in before)
        {
            // What couldn't be read stays.
            if (!texts.ContainsKey(name) && !Readable(bytes))
                after.TryAdd(name, bytes);
        }

        return new(says,
        [
            .. from name in before.Keys.Union(after.Keys).Order(StringComparer.Ordinal)
               let old = before.TryGetValue(name, out var was) ? was : (ImmutableArray<byte>?)null
               let now = after.TryGetValue(name, out var then) ? then : (ImmutableArray<byte>?)null
               where !(old is { } a && now is { } b && a.AsSpan().SequenceEqual(b.AsSpan()))
               select new ChangedFile(name, old, now),
        ]);
    }

    private static bool Readable(ImmutableArray<byte> bytes)
    {
        try
        {
            Strict.GetCharCount(bytes.AsSpan());
            return true;
        }
        catch (DecoderFallbackException)
        {
            return false;
        }
    }
}
