using System.Collections.Immutable;
using System.Security.Cryptography;

namespace HintBook.Audit.Sealed;

/// <summary>A sealed page that was opened.</summary>
/// <param name="Shell">The page as it lies there.</param>
/// <param name="Texts">What its pieces say; null where one doesn't open.</param>
/// <param name="Faults">Pieces that don't open, or aren't sealed as they must be.</param>
internal sealed record OpenedPage(SealedShell Shell, ImmutableArray<string>? Texts, ImmutableArray<AuditFault> Faults)
{
    /// <summary>Opens a page with the key of the box.</summary>
    /// <param name="shell">The page.</param>
    /// <param name="boxKey">The key.</param>
    /// <param name="gates">The keys of gates, which their words gave.</param>
    public static OpenedPage Of(SealedShell shell, byte[] boxKey, GateKeys gates)
    {
        var faults = new List<AuditFault>();
        var texts = ImmutableArray.CreateBuilder<string>();
        var said = new List<byte>();
        foreach (var piece in shell.Pieces)
        {
            var (key, context) = (gates.KeyOf(PageKey(boxKey, shell.KeyNameOf(piece)), shell, piece), shell.ContextOf(piece));
            if (Unsealing.Open(key, context, piece.Closed) is not { } padded)
                Tell($"The piece “{piece.Name}” doesn't open with the key of its page: it is damaged, or was sealed for another place.");
            else if (Unsealing.Unpadded(padded) is not { } text)
                Tell($"The piece “{piece.Name}” opens, but what is in it isn't a text of its length with zeros behind it.");
            else
            {
                if (!piece.Closed.AsSpan(0, Unsealing.NonceLength).SequenceEqual(Unsealing.NonceOf(key, context, padded)))
                    Tell($"The piece “{piece.Name}” has a nonce that doesn't follow from its text.");
                said.AddRange(Unsealing.Fields(piece.Name, SHA256.HashData(padded)));
                texts.Add(text);
            }
        }

        var isWhole = texts.Count == shell.Pieces.Length;
        var version = HMACSHA256.HashData(Unsealing.Derive(PageKey(boxKey, shell.Name), 32, "version", shell.Language), said.ToArray());
        if (isWhole && texts.Count > 0 && !version.AsSpan(0, shell.Version.Length).SequenceEqual(shell.Version))
            Tell("The version of the page doesn't follow from its pieces.");
        return new(shell, isWhole ? texts.ToImmutable() : null, [.. faults]);

        void Tell(string message) => faults.Add(new(shell.Path, 0, 0, message));
    }

    /// <summary>Pieces that the cards of one page must open, and don't.</summary>
    public static IEnumerable<AuditFault> Shut(string page, byte[] key, IEnumerable<SealedShell> shells, GateKeys gates) =>
        from shell in shells
        from piece in shell.Pieces
        where shell.KeyNameOf(piece) == page && Unsealing.Open(gates.KeyOf(key, shell, piece), shell.ContextOf(piece), piece.Closed) is null
        select new AuditFault(shell.Path, 0, 0, $"The piece “{piece.Name}” doesn't open with the cards of the page {page}.");

    private static byte[] PageKey(byte[] boxKey, string name) => Unsealing.Derive(boxKey, Unsealing.KeyLength, "page", name);
}
