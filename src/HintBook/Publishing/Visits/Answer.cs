using System.Collections.Immutable;

namespace HintBook.Publishing.Visits;

/// <summary>What a host answered.</summary>
internal sealed record Answer
{
    /// <summary>How many redirects are followed.</summary>
    public const int MostRedirects = 5;

    /// <summary>Why there was no answer, as the end of a sentence that begins with “it”; null where there was one.</summary>
    public string? Failure { get; init; }

    /// <summary>The HTTP status (RFC 9110, section 15); 0 where there was no answer.</summary>
    public int Status { get; init; }

    /// <summary>Where the answer came from, after all redirects.</summary>
    public required Uri From { get; init; }

    /// <summary>Where each redirect on the way led, as the host wrote it and as it is meant.</summary>
    public ImmutableArray<Uri> Redirects { get; init; } = [];

    /// <summary>The media type; null where the host named none.</summary>
    public string? Type { get; init; }

    /// <summary>The character set that goes with the type; null where the host named none.</summary>
    public string? Charset { get; init; }

    /// <summary>How long it may be kept without asking again; null where the host says nothing of it.</summary>
    public TimeSpan? KeptFor { get; init; }

    /// <summary>The content, or its beginning.</summary>
    public byte[] Content { get; init; } = [];

    /// <summary>Whether the content goes on behind what was fetched.</summary>
    public bool GoesOn { get; init; }

    /// <summary>The size of the whole content in bytes, where the host says so.</summary>
    public long? Length { get; init; }
}
