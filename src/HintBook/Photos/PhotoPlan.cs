namespace HintBook.Photos;

/// <summary>What will become of a photo, before a pixel is decoded: either <see cref="PlannedPhoto"/> or <see cref="UnfitPhoto"/>.</summary>
public abstract record PhotoPlan;

/// <summary>A photo that can be developed, as far as its header and its end tell.</summary>
/// <param name="Key">What its pictures are kept and named under.</param>
/// <param name="Orientation">How the camera was held, 1 to 8: see <see cref="Photos.Orientation"/>.</param>
/// <param name="Picture">The sizes that it will have.</param>
public sealed record PlannedPhoto(PhotoKey Key, int Orientation, Picture Picture) : PhotoPlan;

/// <summary>A photo that can't be published.</summary>
/// <param name="Problem">Why.</param>
public sealed record UnfitPhoto(PhotoProblem Problem) : PhotoPlan;
