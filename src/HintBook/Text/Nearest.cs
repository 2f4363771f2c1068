namespace HintBook.Text;

/// <summary>Finds the name that an author probably meant.</summary>
public static class Nearest
{
    /// <summary>
    /// The candidate with the fewest single-letter edits from <paramref name="name"/>, or null if none is near: at most a third
    /// of the name's letters may differ. Ties go to the first in ordinal order, so that the answer never depends on the order of files.
    /// </summary>
    public static string? To(string name, IEnumerable<string> candidates)
    {
        var allowed = Math.Max(1, name.Length / 3);
        return candidates
            .Where(candidate => Math.Abs(candidate.Length - name.Length) <= allowed)
            .Select(candidate => (candidate, distance: Edits(name, candidate)))
            .Where(pair => pair.distance <= allowed)
            .OrderBy(pair => pair.distance)
            .ThenBy(pair => pair.candidate, StringComparer.Ordinal)
            .Select(pair => pair.candidate)
            .FirstOrDefault();
    }

    /// <summary>
    /// The number of insertions, deletions, replacements and swaps of neighbours that turn one word into the other, letter
    /// case aside (optimal string alignment, after Damerau 1964).
    /// </summary>
    public static int Edits(string left, string right)
    {
        left = left.ToLowerInvariant();
        right = right.ToLowerInvariant();
        var twoBack = new int[right.Length + 1];
        var oneBack = Enumerable.Range(0, right.Length + 1).ToArray();
        for (var i = 1; i <= left.Length; i++)
        {
            var row = new int[right.Length + 1];
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var replace = oneBack[j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1);
                row[j] = Math.Min(replace, Math.Min(oneBack[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                    row[j] = Math.Min(row[j], twoBack[j - 2] + 1);
            }

            (twoBack, oneBack) = (oneBack, row);
        }

        return oneBack[right.Length];
    }
}
