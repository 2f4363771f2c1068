using System.Collections.Immutable;
using System.Text;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Codes;
using HintBook.Checking;
using HintBook.Ciphers.Making;
using HintBook.Maps;
using HintBook.Pages;
using HintBook.Print.Clues;
using HintBook.Starting;

namespace HintBook.Handbook;

/// <summary>
/// What the handbook shows, made as a maker would have it made: the small book that “begin” writes is checked, its map drawn, its site built, and a
/// clue for its lock and a sheet of cards are set.
/// </summary>
internal static class HandbookPictures
{
    /// <summary>The folder of the finished pages of the small book.</summary>
    public const string Site = "my-first-box";

    // The one of the chapter on addresses.
    private const string Address = "https://boxes.my-workshop.example/first-box/";

    private const string Cards = "cards.pdf";
    private const double Module = 1;

    /// <summary>Every picture, by its path in the handbook.</summary>
    /// <param name="scratch">A folder that isn't there yet; the book is written into it and taken away again.</param>
    public static ImmutableArray<MadeFile> Make(string scratch)
    {
        try
        {
            NewBook.In(scratch);
            return Of(Check.Run(scratch) is Sound sound ? sound.Examined : throw new InvalidOperationException("The small book has errors."));
        }
        finally
        {
            if (Directory.Exists(scratch))
                Directory.Delete(scratch, recursive: true);
        }
    }

    private static ImmutableArray<MadeFile> Of(Examined examined)
    {
        var map = StageMap.Build(examined.Book, examined.Survey);
        var words = MapWords.Of(examined.Theme.WordsIn(examined.Book.Language).Words.Entries);
        var code = QrMatrix.Encode(Address) ?? throw new InvalidOperationException("The address fits into no code.");
        return
        [
            Text("map.svg", SvgMap.Write(map, words)),
            Text("map-without-spoilers.svg", SvgMap.Write(map, words, spoilerFree: true)),
            Whole("code-to-scan.svg", QrImages.Svg(code, "A code to scan", Module)),
            Whole("clue-on-paper.svg", Clue()),
            Whole(Cards, CardsOf(examined)),
            .. examined.Site.Files.Select(file => Whole($"{Site}/{file.Path}", file.Content())),
        ];
    }

    private static ReadOnlyMemory<byte> Clue() => Clues.For("4253", "dice", []) is Attempt.Made made
        ? CluePrint.Make(made.Clue, "clue.svg", Paper.A4).Files[0].Content()
        : throw new InvalidOperationException("No clue of dice can be made for 4253.");

    // The address is one for examples, so each card says that it is a proof.
    private static ReadOnlyMemory<byte> CardsOf(Examined examined)
    {
        var (words, _) = examined.Theme.WordsIn(examined.Book.Language);
        var (set, _) = CardPrint.Print(
            examined.Book,
            examined.Addresses with { Base = Address },
            Paper.A4,
            CardWords.Of(words, examined.Theme.InEnglish, Theme.ToolsEnglish),
            look: CardLook.Of(examined.Theme).Look);
        return set.Files.Single(file => file.Path == Cards).Content();
    }

    private static MadeFile Text(string path, string text) => Whole(path, Encoding.UTF8.GetBytes(text));

    private static MadeFile Whole(string path, ReadOnlyMemory<byte> bytes) => new(path, () => bytes);
}
