using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Photos;

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

    /// <summary>The published pictures by <see cref="Photo.File"/>; a photo that is not among them is left out of the pages.</summary>
    public ImmutableDictionary<string, Picture> Pictures { get; init; } = ImmutableDictionary<string, Picture>.Empty;

    /// <summary>The published films by <see cref="Clip.File"/>, as paths relative to the site; a clip whose film is not among them is left out. Beside each stand its chapters, with the ending <c>.vtt</c>.</summary>
    public ImmutableDictionary<string, string> Films { get; init; } = ImmutableDictionary<string, string>.Empty;
}
