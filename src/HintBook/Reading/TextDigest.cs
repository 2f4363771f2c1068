using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using HintBook.Books;

namespace HintBook.Reading;

/// <summary>
/// A short digest of a stage's texts, for <c>translates:</c> in its translations: a translation with another one was made from other texts.
/// Six signs stand for each text, so that it can be told which have changed. How lines end and what spaces stand at the ends doesn't count.
/// </summary>
internal static class TextDigest
{
    private const int Signs = 6;

    // Digests were shorter at first: the first three signs of each text. What was written then still counts.
    private const int SignsBefore = 3;

    // The alphabet of RFC 4648, section 6 (base 32), in small letters: no sign in it looks like another.
    private const string Alphabet = "abcdefghijklmnopqrstuvwxyz234567";

    private static readonly (string Called, Func<Stage, IEnumerable<string?>> Texts)[] All =
    [
        ("the title", stage => [stage.Title.Value]),
        ("the sign", stage => [stage.Sign.Value]),
        ("the nudge", stage => [stage.Nudge.Markdown]),
        ("the clue", stage => [stage.Clue.Markdown]),
        ("the answer", stage => [stage.Answer.Markdown]),
        ("the reset", stage => [stage.Reset?.Markdown]),
        ("the words among the keys", AmongTheKeys),
    ];

    /// <summary>The digest of a stage: 42 letters and digits.</summary>
    public static string Of(Stage stage) => string.Concat(All.Select(text => Short(text.Texts(stage))));

    /// <summary>Whether a digest that was written is that of a stage.</summary>
    public static bool Fits(string digest, Stage stage) => ChangedSince(digest, stage) is [];

    /// <summary>What the texts are called that have changed since a digest was written; null for what is no digest at all.</summary>
    public static ImmutableArray<string>? ChangedSince(string digest, Stage stage)
    {
        var now = Of(stage);
        var signs = digest.Length / All.Length;
        return digest.Length % All.Length != 0 || signs is not (Signs or SignsBefore)
            ? null
            : [.. All.Where((_, i) => string.CompareOrdinal(digest, i * signs, now, i * Signs, signs) != 0).Select(text => text.Called)];
    }

    private static IEnumerable<string?> AmongTheKeys(Stage stage) =>
    [
        .. stage.Cautions.Select(caution => caution.Note),
        .. stage.Moves.Length > 1 ? stage.Moves.Select(move => move.Name.Value) : [],
        .. stage.Moves.Select(move => move.Undo).OfType<Undo>().Distinct().SelectMany(undo => undo.Steps.Select(step => step.Says).Append(undo.Never?.Value)),
        .. stage.Photos.SelectMany(photo => photo.Marks.Select(mark => mark.Says.Value).Prepend(photo.Alt?.Value)),
    ];

    private static string Short(IEnumerable<string?> texts)
    {
        var lines = texts.SelectMany(text => (text ?? "").ReplaceLineEndings("\n").Split('\n').Select(line => line.TrimEnd()).Append("\0"));
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', lines)));
        return string.Create(Signs, hash, (signs, bytes) =>
        {
            // Three signs of five bits from each two bytes.
            for (var i = 0; i < signs.Length; i++)
            {
                var pair = i / SignsBefore * 2;
                signs[i] = Alphabet[(((bytes[pair] << 8) | bytes[pair + 1]) >> (i % SignsBefore * 5)) & 31];
            }
        });
    }
}
