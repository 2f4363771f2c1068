namespace HintBook.Replying;

/// <summary>How much help a letter gives.</summary>
public enum LetterStep
{
    /// <summary>A push in the right direction.</summary>
    Nudge,

    /// <summary>What to look at, and why.</summary>
    Clue,

    /// <summary>Everything of the stage.</summary>
    Answer,
}

/// <summary>The names of the steps, as makers write them and as the words of a theme have them.</summary>
public static class LetterSteps
{
    /// <summary>All names, the least help first.</summary>
    public static string[] Names { get; } = [.. Enum.GetValues<LetterStep>().Select(NameOf)];

    /// <summary>The name of a step.</summary>
    public static string NameOf(LetterStep step) => step.ToString().ToLowerInvariant();

    /// <summary>The step of a name; null for a word that names none.</summary>
    public static LetterStep? Named(string? name) =>
        Enum.GetValues<LetterStep>().Where(step => NameOf(step) == name).Select(step => (LetterStep?)step).FirstOrDefault();
}
