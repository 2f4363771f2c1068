using HintBook.Books;
using HintBook.Text;

namespace HintBook.Spoilers;

/// <summary>A text of the book with the place where it is read.</summary>
/// <param name="Text">The text, as the author wrote it.</param>
/// <param name="At">Where it stands in the source.</param>
/// <param name="Tier">What may be mentioned in it.</param>
/// <param name="Where">What findings call the place: <c>the nudge</c>.</param>
internal sealed record Passage(string Text, Span At, Tier Tier, string Where)
{
    /// <summary>The place of some of its words: exact where the source has them as they are, otherwise the first that look alike.</summary>
    public Span SpanOf(int start, int end)
    {
        if (At.End - At.Start == Text.Length && string.CompareOrdinal(At.File.Text, At.Start, Text, 0, Text.Length) == 0)
            return new Span(At.File, At.Start + start, At.Start + end);
        var words = Text[start..end];
        var earlier = CountOf(words, Text.AsSpan(0, start));
        var source = At.Text;
        var found = source.IndexOf(words, StringComparison.Ordinal);
        for (; earlier > 0 && found >= 0; earlier--)
            found = source.IndexOf(words, found + words.Length, StringComparison.Ordinal);
        return found < 0 ? At : new Span(At.File, At.Start + found, At.Start + found + words.Length);
    }

    /// <summary>Where a book has texts that nobody has translated.</summary>
    public static HashSet<Span> Untranslated(Book book) =>
        book.Source is { } source ? [.. Outside(source).Concat(source.Stages.SelectMany(AllOf)).Select(passage => passage.At)] : [];

    /// <summary>What is read of a book without opening anything.</summary>
    public static IEnumerable<Passage> Outside(Book book)
    {
        yield return AllOf(book.Title, Tier.Outside, "the book's title");
        if (book.Maker is { } maker)
            yield return AllOf(maker.Name, Tier.Outside, "the maker's name");
        if (book.Maker?.Help is { } help)
            yield return AllOf(help, Tier.Outside, "the address for help");
        if (book.Shelf?.Line is { } line)
            yield return AllOf(line, Tier.Outside, "the line for the shelf");
        if (book.Address is { } address)
            yield return AllOf(address, Tier.Outside, "the address, which the cards carry,");
        if (book.Welcome is { } welcome)
            yield return new Passage(welcome.Markdown, welcome.At, Tier.Outside, "the welcome");
        if (book.Care is { } care)
            yield return new Passage(care.Markdown, care.At, Tier.Outside, "the words on care");
        foreach (var topic in book.CareTopics.Values)
            yield return new Passage(topic.Markdown, topic.At, Tier.Outside, "the words on care");
        foreach (var caution in book.Cautions.Where(caution => caution.Note is not null))
            yield return new Passage(caution.Note!, caution.At, Tier.Outside, "a caution of the book");
        foreach (var passage in PhotosOutside(book).SelectMany(photo => OfPhoto(photo, Tier.Outside)))
            yield return passage;
        foreach (var says in PositionsOutside(book).Select(details => details.Says).OfType<Located<string>>())
            yield return AllOf(says, Tier.Outside, "the words for a position that shows on the closed box");
    }

    /// <summary>The photos that are seen without opening anything.</summary>
    public static IEnumerable<Photo> PhotosOutside(Book book) => book.Photos.Concat(PositionsOutside(book).Select(details => details.Photo).OfType<Photo>());

    private static IEnumerable<PositionDetails> PositionsOutside(Book book) =>
        from part in book.Box.Parts
        from position in part.Positions
        where part.ShowsAt(position)
        let details = part.Details.GetValueOrDefault(position)
        where details is not null
        select details;

    /// <summary>What is read on a stage's page. The reset tasks stand behind a warning and may say everything.</summary>
    public static IEnumerable<Passage> AllOf(Stage stage)
    {
        yield return AllOf(stage.Title, Tier.Sign, "the title");
        yield return AllOf(stage.Sign, Tier.Sign, "the sign");
        foreach (var caution in stage.Cautions.Where(caution => caution.Note is not null))
            yield return new Passage(caution.Note!, caution.At, Tier.Sign, "a caution, which stands beside the sign,");
        yield return new Passage(stage.Nudge.Markdown, stage.Nudge.At, Tier.Nudge, "the nudge");
        yield return new Passage(stage.Clue.Markdown, stage.Clue.At, Tier.Clue, "the clue");
        yield return new Passage(stage.Answer.Markdown, stage.Answer.At, Tier.Answer, "the answer");
        foreach (var passage in stage.Photos.SelectMany(photo => TierOf(photo.Place) is { } tier ? OfPhoto(photo, tier) : []))
            yield return passage;
    }

    /// <summary>The tier in which a photo stands, or null on the reset page.</summary>
    public static Tier? TierOf(Place place) => place switch
    {
        Place.Front or Place.Position or Place.Logo => Tier.Outside,
        Place.Sign => Tier.Sign,
        Place.Nudge => Tier.Nudge,
        Place.Clue => Tier.Clue,
        Place.Answer => Tier.Answer,
        _ => null,
    };

    /// <summary>The words for a photo and its marks.</summary>
    public static IEnumerable<Passage> OfPhoto(Photo photo, Tier tier)
    {
        if (photo.Alt is { } alt)
            yield return AllOf(alt, tier, $"the words for a photo {In(photo.Place)}");
        foreach (var mark in photo.Marks)
            yield return AllOf(mark.Says, tier, $"a mark on a photo {In(photo.Place)}");
    }

    /// <summary>Where a photo stands, in words.</summary>
    public static string In(Place place) => place switch
    {
        Place.Front => "on the front page",
        Place.Position => "of a position that shows on the closed box",
        Place.Sign => "beside the sign",
        _ => $"in the {place.ToString().ToLowerInvariant()}",
    };

    private static Passage AllOf(Located<string> text, Tier tier, string where) => new(text.Value, text.At, tier, where);

    private static int CountOf(string words, ReadOnlySpan<char> text)
    {
        var count = 0;
        for (var at = text.IndexOf(words, StringComparison.Ordinal); at >= 0; at = text.IndexOf(words, StringComparison.Ordinal))
        {
            count++;
            text = text[(at + words.Length)..];
        }

        return count;
    }
}
