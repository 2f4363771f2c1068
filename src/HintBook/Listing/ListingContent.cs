using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Pages;
using HintBook.Sittings;

namespace HintBook.Listing;

/// <summary>
/// What a shop or a fair may say of a box: only what anyone sees on the closed box, and what is true of it as a whole.
/// </summary>
internal static class ListingContent
{
    private const int MinutesInAnHour = 60;

    /// <summary>The description in one language.</summary>
    /// <param name="known">The book.</param>
    /// <param name="plan">The same in that language.</param>
    public static ImmutableArray<ListingBlock> Of(Examined known, SitePlan plan)
    {
        var (book, words) = (plan.Book, known.Theme.WordsIn(plan.Book.Language).Words);
        return
        [
            new ListingBlock.Heading(book.Title.Value, IsTitle: true),
            .. book.Maker is { } maker ? [new ListingBlock.Paragraph(words.Say("made_by", ("maker", maker.Name.Value)))] : (ListingBlock[])[],
            .. book.Welcome is { } welcome ? [new ListingBlock.Written(welcome)] : (ListingBlock[])[],
            .. Facts(known, book, words),
            .. Visible(book, words),
            .. Time(known, book, words),
            .. Cautions(book, words),
            new ListingBlock.Heading(words["care"]),
            .. book.Care is { } care ? [new ListingBlock.Written(care)] : (ListingBlock[])[],
            .. CareTopic.All.Where(topic => topic.Where.IsEmpty || topic.Where.Any(book.Cautions.Select(caution => caution.Kind).Contains))
                .SelectMany(topic => Care(topic, book, words)),
            new ListingBlock.Heading(words["how"]),
            new ListingBlock.Paragraph(words["how_steps"]),
            new ListingBlock.Paragraph(words["how_secret"]),
        ];
    }

    private static IEnumerable<ListingBlock> Facts(Examined known, Book book, ThemeWords words)
    {
        var colon = words["label_colon"];
        var languages = known.Book.Translations.Prepend(known.Book).Select(each => known.Theme.NameOf(each.Language.Value));
        return
        [
            .. book.Size is { } size ? [new ListingBlock.Paragraph(words["listing_size"] + colon + size)] : (ListingBlock[])[],
            .. book.Weight is { } weight ? [new ListingBlock.Paragraph(words["listing_weight"] + colon + weight)] : (ListingBlock[])[],
            new ListingBlock.Paragraph(words["listing_languages"] + colon + string.Join(words["list_comma"], languages)),
        ];
    }

    // How the whole box lies is a part too, which moves freely and has no place on the box: nobody sees it there.
    private static IEnumerable<ListingBlock> Visible(Book book, ThemeWords words)
    {
        ImmutableArray<string> seen = [.. book.Box.Parts.Where(part => part.Seen && !(part.Free && part.Place is null)).Select(part => part.Name)];
        return seen.IsEmpty ? [] : [new ListingBlock.Heading(words["listing_visible"]), new ListingBlock.Items(seen)];
    }

    private static IEnumerable<ListingBlock> Time(Examined known, Book book, ThemeWords words)
    {
        var sittings = BoxSittings.Of(known.Book, known.Survey);
        if (sittings.Whole is not { } whole)
            return [];
        var text = words.SayNumber("listing_time_text", "people", sittings.People)
            .Replace("{half}", Length(whole.Alone.Half), StringComparison.Ordinal)
            .Replace("{least}", Length(whole.Alone.Tenth), StringComparison.Ordinal)
            .Replace("{most}", Length(whole.Alone.NineTenths), StringComparison.Ordinal);
        var alone = words.Say(
            "listing_alone",
            ("alone", Said(book.Sittings.Count(row => row.Help == HelpTaken.Nothing))),
            ("steps", Said(book.Sittings.Length)));
        return [new ListingBlock.Heading(words["listing_time"]), new ListingBlock.Paragraph(text), new ListingBlock.Paragraph(alone)];
    }

    private static IEnumerable<ListingBlock> Cautions(Book book, ThemeWords words)
    {
        var age = Books.Cautions.AgeOf(book);
        if (book.Cautions.IsEmpty && age is null)
            return [];
        var colon = words["label_colon"];
        return
        [
            new ListingBlock.Heading(words["cautions"]),
            .. age is { } under ? [new ListingBlock.Paragraph(words.Say("card_age", ("age", Said(under))))] : (ListingBlock[])[],
            new ListingBlock.Items([.. book.Cautions.Select(caution => words.NameOf(caution.Kind) + colon
                + (caution.Note is { } note ? $"{note} " : "") + words.TextOf(caution.Kind, age))]),
            new ListingBlock.Paragraph(words.LocalRules),
        ];
    }

    // What keeps people from harm stays below the author's words; what is done to the piece gives way to them.
    private static IEnumerable<ListingBlock> Care(CareTopic topic, Book book, ThemeWords words)
    {
        if (book.CareTopics.GetValueOrDefault(topic.Name) is { } own)
            yield return new ListingBlock.Written(own);
        if (!book.CareTopics.ContainsKey(topic.Name) || !topic.Instead)
            yield return new ListingBlock.Paragraph(words[$"care_{topic.Name}_text"]);
    }

    // Symbols of the SI and of what is used beside it (SI Brochure, 9th edition, table 8), the same in every language.
    private static string Length(double minutes)
    {
        var whole = (int)Math.Ceiling(minutes);
        return whole < MinutesInAnHour ? $"{Said(whole)} min"
            : whole % MinutesInAnHour == 0 ? $"{Said(whole / MinutesInAnHour)} h"
            : $"{Said(whole / MinutesInAnHour)} h {Said(whole % MinutesInAnHour)} min";
    }

    private static string Said(int number) => number.ToString(CultureInfo.InvariantCulture);
}
