using System.Collections.Immutable;
using HintBook.Audit.Sealed;

namespace HintBook.Tests.Audit.Sealed;

/// <summary>How many pairs of a key and a page of another stage the audit tries.</summary>
public class ForeignPagesTests
{
    private const string Digits = "0123456789abcdef";

    [Fact]
    public void All_pairs_are_tried_as_long_as_they_are_not_too_many() =>
        Assert.Equal(new(40 * 39, 40 * 39), ForeignPages.Of(Keys(40), Shells(40)).Tries);

    [Fact]
    public void Beyond_that_each_key_is_tried_on_as_many_pages_and_on_16_at_least()
    {
        Assert.Equal(new(40 * 20, 40 * 39), ForeignPages.Of(Keys(40), Shells(40), most: 800).Tries);
        Assert.Equal(new(40 * 16, 40 * 39), ForeignPages.Of(Keys(40), Shells(40), most: 100).Tries);
    }

    private static IEnumerable<KeyValuePair<string, byte[]>> Keys(int pages) =>
        Enumerable.Range(0, pages).Select(page => new KeyValuePair<string, byte[]>($"page{page}", [.. Enumerable.Repeat((byte)page, Unsealing.KeyLength)]));

    private static ImmutableArray<SealedShell> Shells(int pages) =>
    [
        .. Enumerable.Range(0, pages).Select(page => SealedShell.Read(
            $"page{page}.html",
            $"<html lang=\"en\" data-seal=\"1\" data-tag=\"{Digits}\" data-epoch=\"{Digits}\" data-version=\"{Digits}\"><body class=\"stage\">"
                + $"<div data-sealed=\"head\" data-text=\"{Convert.ToBase64String(new byte[1052])}\"></div></body></html>")
            ?? throw new InvalidOperationException("The page is sealed.")),
    ];
}
