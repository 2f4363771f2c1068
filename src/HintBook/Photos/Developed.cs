using System.Collections.Immutable;

namespace HintBook.Photos;

/// <summary>What comes out of the darkroom: either <see cref="Prints"/> or <see cref="Spoiled"/>.</summary>
public abstract record Developed;

/// <summary>The photo in every size.</summary>
/// <param name="Key">What it is kept under: see <see cref="PhotoKey"/>.</param>
/// <param name="Picture">The sizes, for the pages.</param>
/// <param name="Bytes">The finished JPEG files, in the order of <see cref="Picture.Files"/>.</param>
public sealed record Prints(PhotoKey Key, Picture Picture, ImmutableArray<ReadOnlyMemory<byte>> Bytes) : Developed;

/// <summary>Nothing that can be published.</summary>
/// <param name="Problem">Why.</param>
public sealed record Spoiled(PhotoProblem Problem) : Developed;
