using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Mechanism;
using HintBook.Photos;
using HintBook.Spoilers;

namespace HintBook.Pages;

/// <summary>All that the pages of a book are made from. Nothing more is read while they are rendered.</summary>
public sealed record SitePlan
{
    /// <summary>What the author wrote.</summary>
    public required Book Book { get; init; }

    /// <summary>Which stages are open when.</summary>
    public required Survey Survey { get; init; }

    /// <summary>Where each stage's page lives.</summary>
    public required Addresses Addresses { get; init; }

    /// <summary>
    /// What texts are searched for in each language, the book's own first and then its translations in their order. A name that isn't there tells nothing.
    /// </summary>
    public required ImmutableArray<ImmutableArray<SoughtSpelling>> Sought { get; init; }

    /// <summary>What is proved of the codes, for the workings that texts ask for.</summary>
    public Proofs Proofs { get; init; } = Proofs.None;

    /// <summary>The published pictures by <see cref="Photo.File"/>; a photo that is not among them is left out of the pages.</summary>
    public ImmutableDictionary<string, Picture> Pictures { get; init; } = ImmutableDictionary<string, Picture>.Empty;

    /// <summary>The published films by <see cref="Clip.File"/>; a clip whose film is not among them is left out.</summary>
    public ImmutableDictionary<string, PublishedFilm> Films { get; init; } = ImmutableDictionary<string, PublishedFilm>.Empty;

    /// <summary>How the pages of a sealed book say which one they are of; null for a book that lies open.</summary>
    public SealSigns? Seal { get; init; }

    /// <summary>Whether the help of a stage of a sealed book opens behind a gate. Which stage that is, no page says in the open.</summary>
    public bool HasGates => Seal is not null && Book.Stages.Any(stage => stage.Gate is not null);

    /// <summary>
    /// The languages of the site with the folders of their pages, the book's own first. Pages in one language alone say nothing of
    /// languages.
    /// </summary>
    public ImmutableArray<SiteLanguage> Languages { get; init; } = [];

    /// <summary>A key (<see cref="Text.RunResults.KeyOf"/>) of all that <see cref="Survey"/> was made from; null where nothing is kept between runs.</summary>
    public string? MechanismContent { get; init; }
}

/// <summary>What a sealed page says of its book in the open; nothing follows from it.</summary>
/// <param name="Tag">Names the book, 16 hexadecimal digits.</param>
/// <param name="Epoch">Names the epoch, 16 hexadecimal digits.</param>
public sealed record SealSigns(string Tag, string Epoch);

/// <summary>One of the languages of a site.</summary>
/// <param name="Tag">The language as a BCP 47 tag.</param>
/// <param name="Folder">Where its pages stand: nothing for the book's own language, else such as <c>fr/</c>.</param>
/// <param name="Book">The book in this language.</param>
public sealed record SiteLanguage(string Tag, string Folder, Book Book);
