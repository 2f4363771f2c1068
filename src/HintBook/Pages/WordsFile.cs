using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Reading.Yaml;
using HintBook.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace HintBook.Pages;

/// <summary>Reads <c>words.&lt;lang&gt;.yaml</c>: one flat mapping of texts. Read event by event, so that no file can be too deep.</summary>
internal static partial class WordsFile
{
    // What the tool's own words no longer say and a list that was copied before may: it is filled as it was.
    private static readonly ImmutableDictionary<string, ImmutableArray<string>> StillFilled =
        ImmutableDictionary<string, ImmutableArray<string>>.Empty.Add("title_stage", ["page"]);

    /// <summary>The texts of a file by key. A repeated key keeps its last text.</summary>
    public static (ImmutableDictionary<string, Located<string>> Words, ImmutableArray<Finding> Findings) Read(SourceFile file)
    {
        var words = ImmutableDictionary.CreateBuilder<string, Located<string>>(StringComparer.Ordinal);
        var parser = new Parser(new StringReader(file.Text));
        try
        {
            parser.Consume<StreamStart>();
            parser.Consume<DocumentStart>();
            parser.Consume<MappingStart>();
            while (!parser.TryConsume<MappingEnd>(out _))
            {
                var key = parser.Consume<Scalar>();
                var text = parser.Consume<Scalar>();
                words[key.Value] = new(text.Value, Place(file, text.Start, text.End));
            }
        }
        catch (Exception broken) when (broken is YamlException or InvalidOperationException)
        {
            var at = broken is YamlException { Start: var start } ? Place(file, start, start) : file.Top;
            return (words.ToImmutable(), [PageFindings.Unreadable(at, YamlMistakes.InWords(broken.Message))]);
        }

        return (words.ToImmutable(), []);
    }

    /// <summary>The names of a text's placeholders, each once, in order.</summary>
    public static ImmutableArray<string> Placeholders(string text) =>
        [.. Placeholder().Matches(text).Select(match => match.Groups["name"].Value).Distinct(StringComparer.Ordinal)];

    /// <summary>
    /// Makes a language's words complete against the keys that pages need, English standing in for what is missing.
    /// Words of a theme's own beyond these are kept.
    /// </summary>
    public static (ThemeWords Words, ImmutableArray<Finding> Findings) Complete(
        string language, SourceFile file, ImmutableDictionary<string, Located<string>> own, ImmutableSortedDictionary<string, string> needed)
    {
        var findings =
            from need in needed
            let word = own.TryGetValue(need.Key, out var found) ? found : (Located<string>?)null
            from finding in word is null
                ? [PageFindings.NoWord(file, need.Key, need.Value)]
                : Strangers(need.Key, word.Value, [.. Placeholders(need.Value), .. StillFilled.GetValueOrDefault(need.Key, [])])
            select finding;
        var all = needed.SetItems(own.Select(word => KeyValuePair.Create(word.Key, word.Value.Value)));
        return (new ThemeWords(language, all), [.. findings]);
    }

    private static IEnumerable<Finding> Strangers(string key, Located<string> word, ImmutableArray<string> known) =>
        from name in Placeholders(word.Value)
        where !known.Contains(name)
        select PageFindings.Placeholder(word, key, name, known);

    private static Span Place(SourceFile file, Mark start, Mark end) =>
        new(file, (int)Math.Min(start.Index, file.Text.Length), (int)Math.Min(Math.Max(start.Index, end.Index), file.Text.Length));

    [GeneratedRegex(@"\{(?<name>[a-z]+)\}", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Placeholder();
}
