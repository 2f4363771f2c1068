namespace HintBook.Audit.Sealed;

/// <summary>A slot that was opened with its card.</summary>
/// <param name="Card">The card.</param>
/// <param name="File">The file in which the slot stands.</param>
/// <param name="Bytes">What stands in it behind the key.</param>
internal sealed record OpenedSlot(SealedCard Card, string File, byte[] Bytes);
