using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Checking;
using HintBook.Pages;
using HintBook.Photos;
using HintBook.Print;
using HintBook.Print.Flow;

namespace HintBook.Bench;

/// <summary>The packing list on paper, with squares to tick.</summary>
public static class PackingSheet
{
    private const double PictureHeight = 42;
    private const double PictureWidth = 90;

    /// <summary>The list of a book as it was checked.</summary>
    /// <param name="book">The book.</param>
    /// <param name="copy">The copy that it is for; null for all.</param>
    public static PackingList List(Examined book, Copy? copy) => PackingList.Of(Paper(book, Cards.Paper.A4, copy, null));

    /// <summary>The file.</summary>
    /// <param name="book">The book as it was checked.</param>
    /// <param name="paper">The sheets.</param>
    /// <param name="copy">The copy that it is for; null for all.</param>
    public static byte[] Write(Examined book, Paper paper, Copy? copy)
    {
        var of = Paper(book, paper, copy, path => Developed(book, path));
        return BenchPaper.Write(of, of.Words["print_packing"], Layout(of, PackingList.Of(of)));
    }

    /// <summary>Its pages.</summary>
    internal static ImmutableArray<PaperPage> Layout(PaperBook paper, PackingList list)
    {
        var (style, words) = (BenchPaper.StyleOf(paper), paper.Words);
        Block[] blocks =
        [
            .. BenchPaper.Head(paper, words["print_packing"]),
            .. paper.CautionsOf(paper.Book.Cautions, style),
            TextBlock.Of(words.LocalRules, style.Quiet) with { Before = style.Gap * 0.6 },
            .. Part(words["print_packing_in"], [.. list.Contents.SelectMany(kind => Kind(paper, kind, style))]),
            TextBlock.Of(words.Say("print_packing_all", ("count", Number(list.Count))), style.Subheading) with { Before = style.Gap },
            .. Part(
                words["print_packing_stands"],
                [
                    .. list.Stands.SelectMany(stands => Standing(paper, stands, style)),
                    .. list.TurnedAway.Select(code => BenchPaper.Tick(TurnedAway(code, words), style)),
                ]),
            .. Ticked(words["print_fresh"], list.Fresh.Select(thing => thing.Name)),
            .. Part(words["print_packing_power"], [.. list.Power.Select(caution => BenchPaper.Tick(caution.Note ?? words.NameOf(caution.Kind), style))]),
            .. Ticked(words["print_packing_post"], list.ForThePost),
            .. Ticked(words["print_packing_papers"], list.Papers.Select(each => PaperName(paper, each))),
        ];
        return BenchPaper.Set(paper, words["print_packing"], blocks);

        IEnumerable<Block> Ticked(string heading, IEnumerable<string> lines) => Part(heading, [.. lines.Select(line => BenchPaper.Tick(Capital(line), style))]);

        IEnumerable<Block> Part(string heading, ImmutableArray<Block> lines) => lines.IsEmpty ? [] : [BenchPaper.Heading(heading, style), .. lines];
    }

    // From the book's own photo, as a publish develops it: upright, in sRGB, without a word of metadata.
    private static byte[]? Developed(Examined book, string path)
    {
        var planned = book.Media.Photos.FirstOrDefault(photo => IsOf(book.Site.Plan.Pictures.GetValueOrDefault(photo.File.File.Value), path));
        if (planned is null)
            return null;
        var bytes = book.Folder.ReadBytes(planned.File.File.Value, planned.File.File.At, PhotoSettings.Standard.MaxFileBytes, []);
        return bytes is null ? null : PhotoPipeline.ForPaper(bytes, planned.Plan, PictureWidth, PictureHeight, whole: true)?.Jpeg.ToArray();

        static bool IsOf(Picture? picture, string path) => picture is not null && picture.Files.Any(file => file.Path == path);
    }

    // The copies for which clues are made are those in use; without one that is asked for only what all have in common is listed.
    private static PaperBook Paper(Examined book, Paper paper, Copy? copy, Func<string, byte[]?>? picture)
    {
        var of = BenchPaper.Of(book, paper, copy, picture);
        return copy is null ? of : of with { Boxes = PaperCopy.In(book.Book, [], [copy.Serial.Value]) };
    }

    private static IEnumerable<Block> Kind(PaperBook paper, PackedKind kind, PaperStyle style) => kind.Things is [var one]
        ? [BenchPaper.Tick($"{Capital(one.Name)}{Of(paper, one)}", style)]
        :
        [
            TextBlock.Of($"{Number(kind.Things.Length)} × {kind.Name}", style.Subheading) with { Before = style.Gap, WithNext = true },
            .. kind.Things.Select(thing => BenchPaper.Tick($"{Capital(thing.Name)}{Of(paper, thing)}", style)),
        ];

    private static string Of(PaperBook paper, Thing thing) => thing.Place is { } place ? $": {place}"
        : thing.Starts == Thing.InHand ? $": {paper.Words["print_walk_in_hand"]}"
        : thing.Starts == Thing.Hidden ? $": {paper.Words["print_packing_no_place"]}"
        : $": {thing.Starts.Replace('-', ' ')}";

    private static IEnumerable<Block> Standing(PaperBook paper, StandingPart stands, PaperStyle style)
    {
        var where = stands.Part.Place is { } place ? $" ({place})" : "";
        var line = BenchPaper.Tick($"{Capital(stands.Part.Name)}: {stands.Part.Say(stands.Position)}{where}", style);
        if (stands.Part.Details.GetValueOrDefault(stands.Position)?.Photo is not { } photo)
            return [line];
        return PaperBook.WithPhotos([line], [.. paper.Photos([photo], photo.Place, PictureWidth, PictureHeight, style)]);
    }

    private static string TurnedAway(Code code, ThemeWords words) =>
        $"{Capital(code.Name)}: {words["print_packing_turned"]}{(code.Answer.Value.Length == 0 ? "" : $" ({code.Answer.Value})")}";

    private static string PaperName(PaperBook paper, PackedPaper packed) => packed.Kind switch
    {
        PaperKind.Cards => $"{paper.Words["print_paper_cards"]}: {Number(packed.Count)}",
        PaperKind.Booklet => paper.Words["print_booklet"],
        PaperKind.Leaflet => paper.Words["solution"],
        PaperKind.Reset => paper.Words["reset"],
        PaperKind.Label => paper.Words["print_paper_label"],
        _ => $"{paper.Words["print_paper_clues"]}: {string.Join(", ", packed.Codes.Select(code => code.Name))}",
    };

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
