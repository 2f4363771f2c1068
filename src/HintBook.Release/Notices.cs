using System.Collections.Immutable;
using System.Text;
using System.Text.Json;

namespace HintBook.Release;

/// <summary>The notices of everybody whose work travels in the program: who they are, under which licence, and the licences' texts.</summary>
internal static class Notices
{
    private const string Rule = "\n----------------------------------------------------------------------\n\n";

    /// <summary>Writes them.</summary>
    /// <param name="components">What travels in the program.</param>
    /// <param name="licences">The folder with the text of each SPDX licence (<c>licenses/MIT.json</c>), from the npm package <c>spdx-license-list</c>.</param>
    /// <exception cref="FileNotFoundException">A licence has no text there.</exception>
    public static string Write(ImmutableArray<Component> components, string licences)
    {
        var text = new StringBuilder("HintBook is under the MIT licence (LICENSE.txt). What follows travels inside the program and keeps its own licence.\n\n");
        foreach (var component in components)
            text.Append($"{component.Name} {component.Version}: {(component.Licence.Length > 0 ? component.Licence : component.LicenceAddress)}\n");
        foreach (var component in components)
        {
            text.Append(Rule).Append($"{component.Name} {component.Version}\n");
            if (component.Copyright.Length > 0)
                text.Append(component.Copyright).Append('\n');
            text.Append(component.Licence.Length > 0 ? $"Licence: {component.Licence}\n" : $"Licence: {component.LicenceAddress}\n");
            foreach (var (name, words) in component.Texts)
                text.Append($"\n[{name}]\n\n{words.TrimEnd()}\n");
        }

        // Those whose package has no text of its own are covered by the usual one.
        var bare = components.Where(component => component.Texts.IsEmpty && component.Licence.Length > 0).Select(component => component.Licence);
        foreach (var id in bare.SelectMany(Ids).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
            text.Append(Rule).Append($"The text of {id}, for those above that name it and bring none of their own:\n\n{TextOf(id, licences)}\n");
        return text.ToString();
    }

    private static IEnumerable<string> Ids(string expression) => expression.Split(' ', '(', ')')
        .Where(word => word.Length > 0 && word is not ("AND" or "OR" or "WITH"));

    private static string TextOf(string id, string licences)
    {
        var file = Path.Combine(licences, "licenses", $"{id}.json");
        if (!File.Exists(file))
            throw new FileNotFoundException($"There is no text of the licence {id} in {licences}.");
        using var json = JsonDocument.Parse(File.ReadAllText(file));
        return (json.RootElement.GetProperty("licenseText").GetString() ?? "").ReplaceLineEndings("\n").Trim();
    }
}
