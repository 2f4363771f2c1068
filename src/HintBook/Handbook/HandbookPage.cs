using System.Collections.Immutable;
using System.Text;

namespace HintBook.Handbook;

/// <summary>A page taken apart: its title, and its sections in order.</summary>
/// <param name="Name">Its name without an ending.</param>
/// <param name="Title">The first line.</param>
/// <param name="Sections">What stands below; the first has no heading of its own.</param>
internal sealed record HandbookPage(string Name, string Title, ImmutableArray<HandbookSection> Sections)
{
    private const string Heading = "## ";
    private const string Fence = "```";

    /// <summary>Its file in the finished handbook.</summary>
    public string File => $"{Name}.html";

    public static HandbookPage Parse(HandbookText written)
    {
        var lines = written.Text.ReplaceLineEndings("\n").Split('\n');
        var sections = ImmutableArray.CreateBuilder<HandbookSection>();
        var (title, text, isCode) = ((string?)null, new StringBuilder(), false);
        foreach (var line in lines.Skip(1))
        {
            isCode ^= line.StartsWith(Fence, StringComparison.Ordinal);
            if (!isCode && line.StartsWith(Heading, StringComparison.Ordinal))
            {
                sections.Add(new(title, text.ToString()));
                (title, text) = (line[Heading.Length..].Trim(), new StringBuilder());
            }
            else
            {
                text.Append(line).Append('\n');
            }
        }

        sections.Add(new(title, text.ToString()));
        return new(written.Name, lines[0].TrimStart('#', ' '), sections.ToImmutable());
    }
}

/// <summary>A part of a page under one heading.</summary>
/// <param name="Title">The heading; null for what stands before the first.</param>
/// <param name="Markdown">The text.</param>
internal sealed record HandbookSection(string? Title, string Markdown)
{
    /// <summary>What an address ends in that leads here: letters, digits and hyphens; null for the page's beginning.</summary>
    public string? Anchor => Title is null ? null : AnchorOf(Title);

    /// <summary>The name of a place: small letters and digits, and a hyphen for whatever stands between them.</summary>
    public static string AnchorOf(string title)
    {
        var name = new StringBuilder();
        foreach (var letter in title.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(letter))
                name.Append(letter);
            else if (name.Length > 0 && name[^1] != '-' && letter is not ('’' or '\''))
                name.Append('-');
        }

        return name.ToString().TrimEnd('-');
    }
}
