using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;

namespace HintBook.Books;

/// <summary>Where each stage's page lives. A name says nothing of the stage, and once printed it never changes.</summary>
/// <param name="Base">The site's address, ending in a slash, or null while the author has none.</param>
/// <param name="Names">Stage id to page names, the one in use first; the others are older ones that must keep working.</param>
public sealed record Addresses(string? Base, ImmutableSortedDictionary<string, ImmutableArray<string>> Names)
{
    /// <summary>The names of pages whose stage the book has no more, in ordinal order. Somebody may hold a card that leads there.</summary>
    public ImmutableArray<string> Gone { get; init; } = [];

    /// <summary>How many letters a page name has: 40 bits, so that 2,000 stages collide once in 500,000 books.</summary>
    public const int NameLength = 8;

    // Crockford's alphabet in small letters: no i, l, o or u, so that a name can be read aloud and copied from a card.
    private const string Alphabet = "0123456789abcdefghjkmnpqrstvwxyz";

    /// <summary>The page's file name in the site.</summary>
    public string PageOf(string stage) => Names[stage][0] + ".html";

    /// <summary>Whether cards carry addresses without <c>.html</c>. Hosts that answer them answer the whole ones too, so both keep working.</summary>
    public bool Short { get; init; }

    /// <summary>The address that a stage's card carries, or null while the book has none.</summary>
    public string? PrintedFor(string stage) => Base is null ? null : Base + (Short ? Names[stage][0] : PageOf(stage));

    /// <summary>
    /// The name that a stage gets when it has none: the first 40 bits of SHA-256 over the book's identity and the stage's id,
    /// eight letters of five bits each.
    /// </summary>
    /// <param name="identity">See <see cref="Book.Identity"/>.</param>
    /// <param name="stage">The stage's id.</param>
    public static string Derive(string identity, string stage)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes($"hintbook page\n{identity}\n{stage}"));
        var bits = 0UL;
        for (var i = 0; i < 5; i++)
            bits = (bits << 8) | hash[i];
        return string.Create(NameLength, bits, static (letters, bits) =>
        {
            for (var i = 0; i < letters.Length; i++)
                letters[i] = Alphabet[(int)((bits >> (35 - (5 * i))) & 31)];
        });
    }
}
