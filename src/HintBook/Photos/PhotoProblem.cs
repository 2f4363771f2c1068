namespace HintBook.Photos;

/// <summary>Why a photo can't be published.</summary>
public abstract record PhotoProblem;

/// <summary>The file is none of the kinds that are read: JPEG, PNG and WebP.</summary>
/// <param name="LooksLike">What it seems to be instead, such as <c>a HEIC photo</c>, or null where its first bytes say nothing.</param>
public sealed record NotAPicture(string? LooksLike) : PhotoProblem;

/// <summary>The file is larger than is looked at.</summary>
/// <param name="Bytes">Its length.</param>
public sealed record TooLarge(long Bytes) : PhotoProblem;

/// <summary>The header promises more pixels than are decoded, or a side longer than a JPEG can have.</summary>
/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
public sealed record TooManyPixels(int Width, int Height) : PhotoProblem;

/// <summary>The file stops before its end mark: the rest was lost on the way.</summary>
public sealed record CutShort : PhotoProblem;

/// <summary>The file has several frames.</summary>
public sealed record Moving : PhotoProblem;

/// <summary>The drawing has something that isn't drawn.</summary>
/// <param name="Problem">What.</param>
public sealed record NotDrawn(Drawings.DrawingProblem Problem) : PhotoProblem;

/// <summary>The file can't be decoded.</summary>
public sealed record Broken : PhotoProblem;
