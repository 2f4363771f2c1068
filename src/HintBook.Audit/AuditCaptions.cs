using System.Collections;
using System.Collections.Immutable;

namespace HintBook.Audit;

/// <summary>A text that is shown while a film plays: its captions, or its chapters.</summary>
/// <param name="File">Its path in the site, with forward slashes.</param>
/// <param name="Parts">The parts of the film with what may be said in them; what is said in no part may be anything.</param>
/// <param name="Language">The language of the text.</param>
public sealed record AuditCaptions(string File, ImmutableArray<AuditFilmPart> Parts, string Language);

/// <summary>A part of a film.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends; null for the end of the film.</param>
/// <param name="May">What may be said in it.</param>
public sealed record AuditFilmPart(TimeSpan From, TimeSpan? To, BitArray May)
{
    /// <summary>The secrets that are proved to be unknown here, so that telling one is a fault and no doubt; null for all.</summary>
    public BitArray? Sure { get; init; }
}
