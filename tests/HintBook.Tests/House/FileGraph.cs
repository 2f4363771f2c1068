using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace HintBook.Tests.House;

/// <summary>
/// Which file names a type that another one declares at its top level. It reads the text without a compiler: a name behind a dot, an
/// argument's name, and a member with the name of a type don't count; extension methods aren't seen.
/// </summary>
internal sealed partial class FileGraph
{
    private static readonly HashSet<string> Keywords =
    [
        .. ("abstract and as async await by case class const default do else enum event explicit extern file fixed foreach from global goto if implicit in "
            + "init internal into is join let namespace new not on operator or orderby out override params partial private protected public readonly record "
            + "ref required return scoped sealed select stackalloc static struct switch this throw typeof unsafe using virtual when where while with yield")
            .Split(' '),
    ];

    // By file, the files that it names, each with the type by which it names it.
    private readonly ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, string>> named;

    private FileGraph(ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, string>> named) => this.named = named;

    public static FileGraph Of(IEnumerable<(string Path, string Text)> files)
    {
        var codes = files.Select(file => (file.Path, Code: NotCode().Replace(file.Text, " "))).ToArray();
        var declared = codes
            .SelectMany(file => Declaration().Matches(file.Code), (file, match) => (Type: match.Groups["name"].Value, file.Path))
            .ToLookup(one => one.Type, one => one.Path);
        return new(codes.ToImmutableSortedDictionary(file => file.Path, file => NamedIn(file.Path, file.Code, declared), StringComparer.Ordinal));
    }

    /// <summary>Every file with every file that it names: <c>A.cs names B.cs (B)</c>.</summary>
    public IEnumerable<string> Edges() =>
        from file in named
        from other in file.Value
        select $"{file.Key} names {other.Key} ({other.Value})";

    /// <summary>For each set of files that all lead to each other one shortest circle: <c>A.cs → B.cs (B) → A.cs (A)</c>.</summary>
    public IEnumerable<string> Circles()
    {
        var seen = new HashSet<string>();
        foreach (var file in named.Keys)
        {
            if (seen.Contains(file) || Way(file, file) is not { } circle)
                continue;
            seen.UnionWith(named.Keys.Where(other => Way(file, other) is not null && Way(other, file) is not null));
            yield return file + string.Concat(circle.Select(step => $" → {step.File} ({step.Type})"));
        }
    }

    /// <summary>A shortest way along the names, of one step at least; null if there is none.</summary>
    private ImmutableArray<(string File, string Type)>? Way(string from, string to)
    {
        var met = new HashSet<string>();
        var waiting = new Queue<(string At, ImmutableArray<(string File, string Type)> Steps)>([(from, [])]);
        while (waiting.TryDequeue(out var next))
        {
            foreach (var (file, type) in named[next.At])
            {
                if (file == to)
                    return next.Steps.Add((file, type));
                if (met.Add(file))
                    waiting.Enqueue((file, next.Steps.Add((file, type))));
            }
        }

        return null;
    }

    private static ImmutableSortedDictionary<string, string> NamedIn(string path, string code, ILookup<string, string> declared)
    {
        var members = Member().Matches(code)
            .Where(match => !Keywords.Contains(match.Groups["word"].Value))
            .Select(match => match.Groups["name"].Value)
            .ToHashSet();
        var edges =
            from name in Name().Matches(code)
            where !members.Contains(name.Value) || BeforeVariable().IsMatch(code, name.Index + name.Length)
            let files = declared[name.Value]
            where !files.Contains(path)
            from file in files
            select (file, name.Value);
        return edges.DistinctBy(edge => edge.file).ToImmutableSortedDictionary(edge => edge.file, edge => edge.Value, StringComparer.Ordinal);
    }

    // Comments, raw strings, verbatim strings, strings and characters.
    [GeneratedRegex("""
        //[^\n]*|/\*[\s\S]*?\*/|\$*"{3,}[\s\S]*?"{3,}|(\$@|@\$?)"(""|[^"])*"|\$?"(\\.|[^"\\])*"|'(\\.|[^'\\])+'
        """, RegexOptions.ExplicitCapture)]
    private static partial Regex NotCode();

    [GeneratedRegex(@"^([a-z]+ )*(class|struct|interface|enum|record) (?<name>[A-Z]\w*)", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Declaration();

    // Behind a type stands the name of a member, a parameter or a variable.
    [GeneratedRegex(@"((?<word>\w+)|[\w\[)][>?\]]+|\))\s+(?<name>[A-Z]\w*)(?=\s*([,;)({=<]|=>))", RegexOptions.ExplicitCapture)]
    private static partial Regex Member();

    // Neither behind a dot nor the name of an argument.
    [GeneratedRegex(@"(?<![.\w])[A-Z]\w*(?!\w|\s*:\s)")]
    private static partial Regex Name();

    [GeneratedRegex(@"\G(<[\w<>,? ]*>)?[?\[\]]*\s+[A-Za-z_]", RegexOptions.ExplicitCapture)]
    private static partial Regex BeforeVariable();
}
