using System.Collections;
using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Audit;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Checking.Media;
using HintBook.Ciphers.Making;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Print;
using HintBook.Spoilers;

namespace HintBook.Publishing;

/// <summary>Writes down for the audit who may see what: all that the audit ever learns of a book.</summary>
internal static partial class AuditTables
{
    /// <summary>The table of a book.</summary>
    /// <param name="source">The book in its own language.</param>
    /// <param name="sayable">What may be said where, for it and for each translation.</param>
    /// <param name="addresses">Where its pages live.</param>
    /// <param name="theme">How it looks: its sentences stand on every site.</param>
    /// <param name="photos">The photos that are published.</param>
    /// <param name="where">The pages of “Where am I?”.</param>
    /// <param name="copies">The copies of a sealed book, each of which has cards of its own.</param>
    public static AuditTable Build(
        Book source,
        ImmutableArray<MayBeSaid> sayable,
        Addresses addresses,
        Theme theme,
        ImmutableArray<BookPhoto> photos,
        Whereabouts where,
        ImmutableArray<CodedCopy> copies = default)
    {
        Book[] languages = [source, .. source.Translations];
        return new()
        {
            Secrets = [.. languages.SelectMany((each, i) => SecretsOf(each, sayable[i]))],
            Outside = Joined([.. sayable.Select(each => each.Outside)]),
            Pages = [.. languages.SelectMany((each, i) =>
                PagesOf(each, i == 0 ? "" : $"{each.Language.Value}/", addresses, sayable[i], where, may => Among(may, i, languages.Length)))],
            Pictures = PicturesOf(languages, photos, sayable),
            SaidEverywhere = [.. languages.SelectMany(each => theme.WordsIn(each.Language).Words.Entries.Values).Distinct(StringComparer.Ordinal)],
            Language = source.Language.Value,
            Address = addresses.Base is { } site ? CardList.Ascii(site) : null,
            PrintedCodes = CodesOfCards(source, addresses, copies.IsDefault ? [] : copies),
            PrintedPages = (copies.IsDefault ? [] : copies).Select(CardsOfCopies.SheetsOf).Append("cards.pdf")
                .ToImmutableDictionary(file => file, _ => int.MaxValue, StringComparer.Ordinal),
        };
    }

    /// <summary>The tables of the booklets that were printed with a book.</summary>
    /// <param name="source">The book in its own language.</param>
    /// <param name="sayable">What may be said where, for it and for each translation.</param>
    /// <param name="survey">Which stage opens which.</param>
    /// <param name="whereabouts">The pages of “Where am I?”.</param>
    /// <param name="booklets">The booklets.</param>
    public static ImmutableArray<AuditBooklet> OfBooklets(
        Book source, ImmutableArray<MayBeSaid> sayable, Survey survey, Whereabouts whereabouts, ImmutableArray<PrintedBooklet> booklets)
    {
        string[] languages = [source.Language.Value, .. source.Translations.Select(each => each.Language.Value)];
        return
        [
            .. from booklet in booklets
               let i = Array.IndexOf(languages, booklet.Language)
               select BookletTables.Of(
                   booklet, sayable[i], may => Among(may, i, languages.Length), survey, whereabouts, page => KnownTo(page, sayable[i])),
        ];
    }

    /// <summary>What the printed clues give to those who read them off the paper.</summary>
    public static ImmutableArray<AuditClue> OfClues(ImmutableArray<PrintedClue> clues) =>
    [
        .. from clue in clues
           where clue.Clue.Mask is not null || clue.Clue.Look == ClueLook.Lines || clue.Serial is not null
           let sheet = clue.Clue.Mask is { } mask
               ? new AuditClue(clue.File, clue.Clue.Answer, mask.Clockwise is null ? 1 : 4, mask.Clockwise == true)
               : new AuditClue(clue.File, clue.Clue.Look == ClueLook.Lines ? clue.Clue.Text : "", 0, false)
           select sheet with { Serial = clue.Serial is { } serial ? Letters.Printable(serial).Text : null },
    ];

    private static IEnumerable<AuditPage> PagesOf(
        Book book, string folder, Addresses addresses, MayBeSaid sayable, Whereabouts whereabouts, Func<BitArray, BitArray> among)
    {
        var outside = among(sayable.Outside);
        var everything = among(new BitArray(sayable.Secrets.Length, defaultValue: true));
        var untranslated = book.Untranslated;
        return
        [
            .. book.Stages.SelectMany(stage => PagesOf(folder, addresses.Names[stage.Id.Value], sayable.Stages.GetValueOrDefault(stage.Id.Value), among)
                .Select(page => page with { Language = (book.Source is { } source && untranslated.Contains(stage) ? source : book).Language.Value })),
            .. from name in (string[])["index.html", "care.html", .. addresses.Gone.Select(gone => gone + ".html")]
               select new AuditPage(folder + name, outside, Folds()) { Language = book.Language.Value },
            .. from page in whereabouts.Pages
               select new AuditPage(folder + page.File, among(KnownTo(page, sayable)), Folds()) { IsSignpost = true, Language = book.Language.Value },
            .. from name in (string[])["solution.html", "reset.html"]
               select new AuditPage(folder + name, outside, Folds(("*", everything))) { Language = book.Language.Value },
        ];
    }

    // What a page of “Where am I?” asks about is known to everybody who comes there.
    private static BitArray KnownTo(WhereaboutsPage page, MayBeSaid sayable)
    {
        var known = new BitArray(sayable.Outside);
        foreach (var secret in sayable.Secrets.Where(secret => secret.Kind == SecretKind.Name && page.Known.Contains(secret.Id)))
            known[secret.Number] = true;
        return known;
    }

    // The secrets of all languages stand one after the other. What is a name in one may be any word in another, so that on a
    // page of one language the secrets of the others are none.
    private static BitArray Among(BitArray may, int language, int languages) =>
        languages == 1 ? may : Joined([.. Enumerable.Range(0, languages).Select(i => i == language ? may : new BitArray(may.Length, defaultValue: true))]);

    private static BitArray Joined(BitArray[] parts)
    {
        if (parts is [var only])
            return only;
        var joined = new BitArray(parts.Sum(part => part.Length));
        var at = 0;
        foreach (var part in parts)
        {
            for (var i = 0; i < part.Length; i++)
                joined[at++] = part[i];
        }

        return joined;
    }

    // Behind the sheets of cards come the pages that tell the maker which card is which.
    // Every code as its own picture, and all of them on the sheets; those of a copy on sheets of its own too, where it is printed alone.
    private static ImmutableDictionary<string, ImmutableArray<string>> CodesOfCards(
        Book book, Addresses addresses, ImmutableArray<CodedCopy> copies)
    {
        if (addresses.Base is null)
            return ImmutableDictionary<string, ImmutableArray<string>>.Empty;
        var cards = CardList.Uncoded(book, addresses, copies).ToArray();
        return cards
            .SelectMany(card => ((string[])[$"qr/{card.File}.png", $"qr/{card.File}.svg"]).Select(file => (File: file, Says: ImmutableArray.Create(card.Says))))
            .Append((File: "cards.pdf", Says: [.. cards.Select(card => card.Says)]))
            .Concat(cards.GroupBy(card => card.Copy).Where(own => own.Key is not null)
                .Select(own => (File: CardsOfCopies.SheetsOf(own.Key!), Says: own.Select(card => card.Says).ToImmutableArray())))
            .ToImmutableDictionary(file => file.File, file => file.Says, StringComparer.Ordinal);
    }

    private static ImmutableArray<AuditSecret> SecretsOf(Book book, MayBeSaid sayable)
    {
        var spellings = sayable.Sought.ToLookup(looked => looked.Secret.Number, looked => SpellingOf(looked, book));
        var things = book.Box.Things.Select(thing => thing.Id.Value).ToImmutableHashSet(StringComparer.Ordinal);
        var sought = sayable.Sought.Select(looked => looked.Spelling).ToImmutableHashSet(StringComparer.Ordinal);
        return
        [
            .. sayable.Secrets.Select(secret => new AuditSecret(secret.Spellings[0], [.. spellings[secret.Number], .. MoreOf(secret, sought, things)])
            {
                Covers = secret.Kind != SecretKind.Title,
            }),
        ];
    }

    private static AuditSpelling SpellingOf(SoughtSpelling looked, Book book) => new(TextOf(looked), AsOf(looked), looked.Sureness == Sureness.Sure)
    {
        Language = (looked.IsUntranslated ? book.Source ?? book : book).Language.Value,
        IsExact = IsAnswer(looked.Secret),
    };

    private static SpelledAs AsOf(SoughtSpelling looked) => looked.As switch
    {
        SoughtAs.Symbols when IsTime(looked.Secret) => SpelledAs.Time,
        SoughtAs.Symbols => SpelledAs.Symbols,
        SoughtAs.Capitals => SpelledAs.Letters,
        _ => SpelledAs.Words,
    };

    private static string TextOf(SoughtSpelling looked) => AsOf(looked) == SpelledAs.Time ? looked.Secret.Spellings[0] : looked.Spelling;

    private static bool IsAnswer(Secret secret) => secret.Kind is SecretKind.Answer or SecretKind.CopyAnswer;

    private static bool IsTime(Secret secret) => Time().Match(secret.Spellings[0]) is { Success: true } time && time.Groups["sign"].Length > 0;

    // Four figures may be a clock's too. A thing with an everyday name is told where the word stands as an object.
    private static IEnumerable<AuditSpelling> MoreOf(Secret secret, ImmutableHashSet<string> sought, ImmutableHashSet<string> things)
    {
        if (IsAnswer(secret) && Time().Match(secret.Spellings[0]) is { Success: true } time && time.Groups["sign"].Length == 0)
            return [new($"{time.Groups["hour"].Value}:{time.Groups["minute"].Value}", SpelledAs.Time, Sure: false)];
        return secret is not { Kind: SecretKind.Name, Open: false } || !things.Contains(secret.Id)
            ? []
            : from spelling in secret.Spellings
              where !sought.Contains(spelling) && Thing().IsMatch(spelling)
              select new AuditSpelling(spelling, SpelledAs.Thing, Sure: false);
    }

    [GeneratedRegex("^(?<hour>[01]?[0-9]|2[0-4])(?<sign>[:.hH]?)(?<minute>[0-5][0-9])$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Time();

    // One word of three letters or more, an article before it; of Japanese any.
    [GeneratedRegex(@"^(\p{L}{1,3}[ ’'])?\p{L}{3,}$|^[\u3040-\u9FFF]+$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Thing();

    // A page keeps its older addresses. Nobody can come to a stage that can't be reached; its page may say no more than any other file.
    private static IEnumerable<AuditPage> PagesOf(string folder, ImmutableArray<string> names, MayBeSaidOfStage? may, Func<BitArray, BitArray> among)
    {
        if (may is null)
            return [];
        var (sign, answer) = (among(may.Sign), among(may.Answer));
        var folds = Folds(("sign", sign), ("nudge", sign), ("clue", among(may.Clue)), ("answer", answer), ("done", answer));
        var sure = may.Sure is null ? null : among(may.Sure);
        return names.Select(name => new AuditPage($"{folder}{name}.html", sign, folds) { Sure = sure });
    }

    private static ImmutableDictionary<string, BitArray> Folds(params (string Name, BitArray May)[] folds) =>
        folds.ToImmutableDictionary(fold => fold.Name, fold => fold.May, StringComparer.Ordinal);

    // A picture's name follows from the photo that it was made from.
    private static ImmutableDictionary<string, ImmutableArray<int>> PicturesOf(
        Book[] languages, ImmutableArray<BookPhoto> photos, ImmutableArray<MayBeSaid> sayable)
    {
        var shown = languages.SelectMany((book, i) => ShownIn(book, sayable[i], sayable.Take(i).Sum(each => each.Secrets.Length)))
            .ToLookup(each => each.File, each => each.Secret, StringComparer.Ordinal);
        return photos
            .Where(photo => shown.Contains(photo.File.File.Value))
            .GroupBy(photo => Path.GetFileName(photo.Plan.Key.PathOf(0)).Split('-')[0], StringComparer.Ordinal)
            .ToImmutableDictionary(
                same => same.Key,
                same => same.SelectMany(photo => shown[photo.File.File.Value]).Distinct().ToImmutableArray(),
                StringComparer.Ordinal);
    }

    // The secrets of a language stand behind those of the languages before it.
    private static IEnumerable<(string File, int Secret)> ShownIn(Book book, MayBeSaid sayable, int before)
    {
        var numbers = sayable.Secrets.Where(secret => secret.Kind != SecretKind.Title)
            .GroupBy(secret => secret.Id)
            // Of a code the picture shows what opens the lock.
            .ToDictionary(same => same.Key, same => same.OrderByDescending(secret => secret.Kind == SecretKind.Answer).First().Number);
        return book.AllPhotos
            .SelectMany(photo => photo.Shows.Select(shown => (File: photo.File.Value, Shown: shown.Value)))
            .Where(each => numbers.ContainsKey(each.Shown))
            .Select(each => (each.File, before + numbers[each.Shown]));
    }
}
