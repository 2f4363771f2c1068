using System.Collections.Immutable;

namespace HintBook.Photos;

/// <summary>What comes of preparing a photo: either <see cref="ResizedPhoto"/> or <see cref="RejectedPhoto"/>.</summary>
public abstract record PhotoResult;

/// <summary>The photo in every size.</summary>
/// <param name="Key">What it is kept under: see <see cref="PhotoKey"/>.</param>
/// <param name="Picture">The sizes, for the pages.</param>
/// <param name="Bytes">The finished JPEG files, in the order of <see cref="Picture.Files"/>.</param>
public sealed record ResizedPhoto(PhotoKey Key, Picture Picture, ImmutableArray<ReadOnlyMemory<byte>> Bytes) : PhotoResult;

/// <summary>Nothing that can be published.</summary>
/// <param name="Problem">Why.</param>
public sealed record RejectedPhoto(PhotoProblem Problem) : PhotoResult;
