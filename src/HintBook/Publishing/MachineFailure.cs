namespace HintBook.Publishing;

/// <summary>Why a command could not do its work although the book may be fine.</summary>
public enum FailureKind
{
    /// <summary>The command was given something it can't use.</summary>
    Usage,

    /// <summary>The machine failed: disk full, no permission, another publish at work.</summary>
    Machine,

    /// <summary>The user stopped it.</summary>
    Stopped,
}

/// <summary>Thrown inside a publish where nothing can be done but to say so; the pipeline turns it into an answer.</summary>
internal sealed class MachineFailure(FailureKind kind, string message, string help, Exception? cause = null) : Exception(message, cause)
{
    public FailureKind Kind { get; } = kind;

    public string Help { get; } = help;
}
