using System.Collections;
using System.Collections.Immutable;
using HintBook.Audit;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Photos;
using HintBook.Reading.Folder;
using HintBook.Spoilers;

namespace HintBook.Publishing;

/// <summary>Writes down for the audit who may see what: all that the audit ever learns of a book.</summary>
internal static class AuditTables
{
    /// <summary>The table of a book that has been read and surveyed.</summary>
    public static AuditTable Of(CheckedBook book)
    {
        var (source, addresses) = (book.Book!, book.Addresses!);
        var sayable = Sayable.Of(source, book.Survey!);
        var everything = new BitArray(sayable.Secrets.Length, defaultValue: true);
        return new()
        {
            Secrets = SecretsOf(sayable),
            Outside = sayable.Outside,
            Pages =
            [
                .. source.Stages.SelectMany(stage => PagesOf(addresses.Names[stage.Id.Value], sayable.Stages.GetValueOrDefault(stage.Id.Value))),
                new AuditPage("where.html", sayable.Outside, Folds()) { IsSignpost = true },
                .. from name in (string[])["solution.html", "reset.html"]
                   select new AuditPage(name, sayable.Outside, Folds(("*", everything))),
            ],
            // The film's chapters belong to the page of the whole solution.
            Free = ["films/*.vtt"],
            Pictures = PicturesOf(book, sayable),
            SaidEverywhere = [.. book.Theme!.WordsIn(source.Language).Words.Entries.Values],
            English = Finder.IsEnglish(source.Language.Value),
            Address = addresses.Base is { } site ? Deck.Ascii(site) : null,
            PrintedPages = ImmutableDictionary<string, int>.Empty.Add("cards.pdf", PagesOfCards(source)),
        };
    }

    // Behind the sheets of cards come the pages that tell the maker which card is which.
    private static int PagesOfCards(Book book)
    {
        var cards = book.Cards switch { CardChoice.Box => 1, CardChoice.Stages => book.Stages.Length, _ => 1 + book.Stages.Length };
        return 2 * Imposition.SheetsFor(cards);
    }

    private static ImmutableArray<AuditSecret> SecretsOf(Sayable sayable)
    {
        var spellings = sayable.Looked.ToLookup(looked => looked.Secret.Number, looked => new AuditSpelling(
            looked.Spelling,
            looked.As switch { LookedAs.Symbols => SpelledAs.Symbols, LookedAs.Capitals => SpelledAs.Capitals, _ => SpelledAs.Words },
            looked.Sureness == Sureness.Sure));
        return [.. sayable.Secrets.Select(secret => new AuditSecret(secret.Spellings[0], [.. spellings[secret.Number]]) { Covers = secret.Kind != SecretKind.Title })];
    }

    // A page keeps its older addresses. Nobody can come to a stage that can't be reached; its page may say no more than any other file.
    private static IEnumerable<AuditPage> PagesOf(ImmutableArray<string> names, SayableOfStage? may) => may is null
        ? []
        : names.Select((name, age) => new AuditPage(
            name + ".html",
            may.Sign,
            Folds(("sign", may.Sign), ("nudge", may.Sign), ("clue", may.Clue), ("answer", may.Answer), ("done", may.Answer)))
        {
            Name = age == 0 ? name : null,
            Sure = may.Sure,
        });

    private static ImmutableDictionary<string, BitArray> Folds(params (string Name, BitArray May)[] folds) =>
        folds.ToImmutableDictionary(fold => fold.Name, fold => fold.May, StringComparer.Ordinal);

    // A picture's name follows from the photo that it was made from.
    private static ImmutableDictionary<string, ImmutableArray<int>> PicturesOf(CheckedBook book, Sayable sayable)
    {
        var numbers = sayable.Secrets.Where(secret => secret.Kind != SecretKind.Title)
            .GroupBy(secret => secret.Id)
            // Of a code the picture shows what opens the lock.
            .ToDictionary(same => same.Key, same => same.OrderByDescending(secret => secret.Kind == SecretKind.Answer).First().Number);
        if (book.Folder is not { } folder)
            return ImmutableDictionary<string, ImmutableArray<int>>.Empty;
        return book.Book!.Photos.Concat(book.Book.Stages.SelectMany(stage => stage.Photos))
            .GroupBy(photo => photo.File.Value)
            .Select(same => (Photo: same.First(), Shows: same.SelectMany(photo => photo.Shows).Where(shown => numbers.ContainsKey(shown.Value)).Select(shown => numbers[shown.Value]).Distinct().ToImmutableArray()))
            .Where(shown => !shown.Shows.IsEmpty)
            .Select(shown => (Name: NameOf(folder, book.Book.Identity, shown.Photo), shown.Shows))
            .Where(shown => shown.Name is not null)
            .DistinctBy(shown => shown.Name)
            .ToImmutableDictionary(shown => shown.Name!, shown => shown.Shows, StringComparer.Ordinal);
    }

    private static string? NameOf(BookFolder folder, string identity, Photo photo) =>
        folder.ReadBytes(photo.File.Value, photo.File.At, PhotoSettings.Standard.MaxFileBytes, []) is { } bytes
            ? Path.GetFileName(Darkroom.KeyOf(bytes, identity, PhotoSettings.Standard).PathOf(0)).Split('-')[0]
            : null;
}
