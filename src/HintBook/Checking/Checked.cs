using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking.Media;
using HintBook.Ciphers;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Reading;
using HintBook.Reading.Folder;
using HintBook.Spoilers;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>What came of checking a book: <see cref="Unreadable"/>, <see cref="Faulty"/> or <see cref="Sound"/>.</summary>
public abstract record Checked
{
    /// <summary>Everything there is to tell the author.</summary>
    public required Findings Findings { get; init; }

    /// <summary>What was found out about the book, with its errors or without; null where something must be mended first.</summary>
    public Examined? Known => this switch
    {
        Sound sound => sound.Examined,
        Faulty faulty => faulty.Examined,
        _ => null,
    };
}

/// <summary>Nothing can be made of the folder.</summary>
public sealed record Unreadable : Checked;

/// <summary>A book with errors: it can be looked at, but not published.</summary>
public sealed record Faulty : Checked
{
    /// <summary>The book, as far as it could be read.</summary>
    public required Book Book { get; init; }

    /// <summary>What was found out about it; null where names or files must be mended first.</summary>
    public required Examined? Examined { get; init; }
}

/// <summary>A book without errors: all that publishing needs.</summary>
public sealed record Sound : Checked
{
    /// <summary>What was found out about it.</summary>
    public required Examined Examined { get; init; }
}

/// <summary>A book with all that is found out about it without making anything. Each value was worked out once.</summary>
public sealed record Examined
{
    /// <summary>The author's folder.</summary>
    public required BookFolder Folder { get; init; }

    /// <summary>What the author wrote.</summary>
    public required Book Book { get; init; }

    /// <summary>What is proved of the box.</summary>
    public required Survey Survey { get; init; }

    /// <summary>What is proved of the codes.</summary>
    public required Proofs Proofs { get; init; }

    /// <summary>What may be said where: for the book's own language, then for each translation in the book's order.</summary>
    public required ImmutableArray<MayBeSaid> MayBeSaid { get; init; }

    /// <summary>Where its pages live.</summary>
    public required Addresses Addresses { get; init; }

    /// <summary>The addresses that a publish keeps.</summary>
    public required AddressList Kept { get; init; }

    /// <summary>How its pages look.</summary>
    public required Theme Theme { get; init; }

    /// <summary>Its photos and films.</summary>
    public required BookMedia Media { get; init; }

    /// <summary>What it is sealed with; null for a book that lies open.</summary>
    public SealingPlan? Sealing { get; init; }

    /// <summary>Its pages, ready to be rendered.</summary>
    public required Site Site { get; init; }
}
