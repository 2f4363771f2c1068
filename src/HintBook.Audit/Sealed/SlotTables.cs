using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace HintBook.Audit.Sealed;

/// <summary>The tables of slots in the folder <c>k</c> of a site.</summary>
internal sealed class SlotTables
{
    /// <summary>The table of the whole box.</summary>
    public const string Box = "box";

    private const int ShortestValue = 8, InAFile = 128, Shortest = Unsealing.NonceLength + Unsealing.KeyLength + Unsealing.TagLength, StepOfOwn = 32;

    private readonly Dictionary<string, byte[][]> tables;

    private SlotTables(Dictionary<string, byte[][]> tables, ImmutableArray<AuditFault> faults) => (this.tables, Faults) = (tables, faults);

    /// <summary>What is wrong with their form.</summary>
    public ImmutableArray<AuditFault> Faults { get; }

    /// <summary>The tables' names, in order.</summary>
    public IEnumerable<string> Names => tables.Keys.Order(StringComparer.Ordinal);

    /// <summary>The slot with a number; null where there is none.</summary>
    public byte[]? At(string table, int number) => tables.TryGetValue(table, out var slots) && number < slots.Length ? slots[number] : null;

    /// <summary>Slots, those of nobody too, in which something lies as it is that belongs to a card.</summary>
    /// <param name="keys">What cards find in their slots.</param>
    /// <param name="values">What copies have of their own.</param>
    public IEnumerable<AuditFault> InClear(IEnumerable<byte[]> keys, IEnumerable<string> values)
    {
        // Fewer letters stand in noise by chance.
        var texts = values.Distinct(StringComparer.Ordinal).Select(Encoding.UTF8.GetBytes).Where(text => text.Length >= ShortestValue);
        byte[][] sought = [.. keys, .. texts];
        return
            from table in tables.AsParallel().AsOrdered()
            from slot in table.Value.Index()
            where sought.Any(each => slot.Item.AsSpan().IndexOf(each) >= 0)
            select new AuditFault(FileOf(table.Key, slot.Index), 0, 0, "In a slot a key, or what a copy has of its own, lies in the clear.");
    }

    /// <summary>The file in which a slot stands.</summary>
    public static string FileOf(string table, int number) => string.Create(CultureInfo.InvariantCulture, $"k/{table}-{number / InAFile}.js");

    /// <summary>Reads every table.</summary>
    public static SlotTables Read(string folder, IEnumerable<string> paths)
    {
        var faults = new List<AuditFault>();
        var read = paths.Where(path => path.StartsWith("k/", StringComparison.Ordinal)).SelectMany(path => Read(folder, path, faults)).ToArray();
        var found = read.GroupBy(file => file.Table, StringComparer.Ordinal)
            .ToDictionary(table => table.Key, table => table.OrderBy(file => file.Part).SelectMany(file => file.Slots).ToArray(), StringComparer.Ordinal);
        foreach (var table in read.GroupBy(file => file.Table, StringComparer.Ordinal))
            faults.AddRange(Gaps([.. table.OrderBy(file => file.Part)]));
        foreach (var odd in found.Where(table => table.Value.Length != found.Values.First().Length || !IsClass(table.Value.Length)))
            faults.Add(new(FileOf(odd.Key, 0), 0, 0, "This table of slots has another length than it may have: lengths must say nothing of copies and steps."));
        var slots = found.SelectMany(table => table.Value.Select((slot, number) => (Table: table.Key, Number: number, Bytes: Convert.ToHexString(slot))));
        foreach (var (table, number, _) in slots.GroupBy(slot => slot.Bytes, StringComparer.Ordinal).SelectMany(same => same.Skip(1)))
            faults.Add(new(FileOf(table, number), 0, 0, "A slot stands in the tables twice."));
        return new(found, [.. faults]);
    }

    private static IEnumerable<SlotFile> Read(string folder, string path, List<AuditFault> faults)
    {
        var said = SealedForm.Read(File.ReadAllText(Path.Combine(folder, path)));
        var bytes = said.Groups["table"].Success && said.Groups["epoch"].Success ? SealedForm.Bytes(said.Groups["bytes"].Value) : null;
        var size = bytes is null ? 0 : int.Parse(said.Groups["size"].Value, CultureInfo.InvariantCulture);
        if (bytes is null || said.Groups["name"].Value + ".js" != path || size < Shortest || (size - Shortest) % StepOfOwn != 0 || bytes.Length % size != 0)
        {
            faults.Add(new(path, 0, 0, "This isn't a table of slots, and nothing else may lie in the folder “k”."));
            return [];
        }

        var part = int.Parse(said.Groups["part"].Value, CultureInfo.InvariantCulture);
        return [new(path, said.Groups["table"].Value, part, said.Groups["epoch"].Value, [.. bytes.Chunk(size)])];
    }

    private static IEnumerable<AuditFault> Gaps(SlotFile[] files) =>
        from file in files.Index()
        where file.Item.Part != file.Index || (file.Index < files.Length - 1 && file.Item.Slots.Length != InAFile)
            || file.Item.Slots.Length > InAFile || file.Item.Epoch != files[0].Epoch
        select new AuditFault(file.Item.Path, 0, 0, "This part of a table of slots doesn't fit to the parts before it.");

    // 64, 96, 128, 192, 256, 384 and so on.
    private static bool IsClass(int room) => room >= 64 && (int.IsPow2(room) || (room % 3 == 0 && int.IsPow2(room / 3)));

    private sealed record SlotFile(string Path, string Table, int Part, string Epoch, byte[][] Slots);
}
