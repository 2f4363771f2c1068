using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Listing;

/// <summary>A piece of a description, whatever it is written as.</summary>
internal abstract record ListingBlock
{
    private ListingBlock()
    {
    }

    /// <summary>A heading.</summary>
    /// <param name="Text">Its words.</param>
    /// <param name="IsTitle">Whether it is the title of the whole.</param>
    public sealed record Heading(string Text, bool IsTitle = false) : ListingBlock;

    /// <summary>A paragraph of plain text.</summary>
    /// <param name="Text">Its words.</param>
    public sealed record Paragraph(string Text) : ListingBlock;

    /// <summary>The author's own Markdown.</summary>
    /// <param name="Text">The text.</param>
    public sealed record Written(Prose Text) : ListingBlock;

    /// <summary>A list of plain texts.</summary>
    /// <param name="Texts">The texts.</param>
    public sealed record Items(ImmutableArray<string> Texts) : ListingBlock;
}
