using HintBook.Text;

namespace HintBook.Reading.Yaml;

/// <summary>Reads all that can be read of a file's keys, whatever a word processor or a slip has done to them.</summary>
internal static class YamlFile
{
    /// <summary>
    /// Reads the one document that a span of a file holds: an empty scalar where nothing is written, null after a mistake that
    /// leaves nothing to read. After a mistake reading goes on with the next entry in the first column.
    /// </summary>
    public static YamlNode? Read(Span within, List<Finding> findings)
    {
        var text = WithPlainSpaces(within, findings);
        var whole = YamlText.Attempt(within, text);
        // Without its spaces, “key:value” is a text.
        var isText = whole.Node is YamlScalar { Quoted: false, IsEmpty: false };
        if ((whole.Mistake is not null || isText) && YamlEntries.Read(within, text, findings) is { } entries)
            return entries;
        findings.AddRange(whole.Findings);
        if (whole.Mistake is not null)
            findings.Add(whole.Mistake);
        return whole.Node;
    }

    // Each odd space gives way to one plain space, so that every place stays where it is.
    private static string WithPlainSpaces(Span within, List<Finding> findings)
    {
        var text = within.Text;
        int[] odd = [.. Typography.OddSpacesOfStructure(text)];
        if (odd.Length == 0)
            return text;
        var lines = odd.Select(place => within.File.PlaceOf(within.Start + place).Line).Distinct().Count();
        findings.Add(YamlFindings.OddSpace(new Span(within.File, within.Start + odd[0], within.Start + odd[0] + 1), lines));
        var plain = text.ToCharArray();
        foreach (var place in odd)
            plain[place] = ' ';
        return new string(plain);
    }
}
