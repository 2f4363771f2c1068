namespace HintBook.Photos;

/// <summary>What comes of taking a photo into a book's folder: <see cref="KeptPhoto"/> or <see cref="PhotoNotKept"/>.</summary>
public abstract record PhotoKeeping;

/// <summary>The photo as it is kept: upright, in sRGB, without metadata.</summary>
/// <param name="Bytes">A JPEG.</param>
/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
public sealed record KeptPhoto(ReadOnlyMemory<byte> Bytes, int Width, int Height) : PhotoKeeping;

/// <summary>A photo that can't be published, so that it isn't taken in.</summary>
/// <param name="Why">What is wrong with it and what to do, in the words of <c>check</c>.</param>
public sealed record PhotoNotKept(string Why) : PhotoKeeping;
