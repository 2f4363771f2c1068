using HintBook.Text;

namespace HintBook.Books;

/// <summary>What a reader of a sealed book types before the help of a stage opens.</summary>
/// <param name="Written">The id of a code, or a word, as the author wrote it.</param>
/// <param name="IsWord">Whether the author says that it is a word, even if it looks like the id of a code.</param>
public sealed record StageGate(Located<string> Written, bool IsWord)
{
    /// <summary>The code that it names; null where it is a word.</summary>
    public Code? CodeIn(Box box) => IsWord ? null : box.Codes.FirstOrDefault(code => code.Id.Value == Written.Value);

    /// <summary>What all readers type; null where each copy has a code of its own.</summary>
    public string? WordOfAll(Box box) => CodeIn(box) is not { } code ? Written.Value : code.AnswerByCopy is null ? code.Answer.Value : null;

    /// <summary>What the owner of a copy types; null where the copy has no such code.</summary>
    public string? WordOf(Copy copy, Box box) =>
        CodeIn(box) is { AnswerByCopy: { } own } ? copy[own.Value]?.Value : WordOfAll(box);
}
