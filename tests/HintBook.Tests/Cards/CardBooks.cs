using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Pages;
using HintBook.Text;

namespace HintBook.Tests.Cards;

/// <summary>Books of our own invention, as far as cards need them.</summary>
internal static class CardBooks
{
    public const string Address = "https://alder-row.example/beekeeper/";

    private static readonly SourceFile File = new("book.yaml", "title: The Beekeeper's Cabinet\n");

    public static CardWords English { get; } = CardWords.Of(Theme.BuiltIn(Theme.Default).Theme.Words["en"]);

    public static Book Beekeeper { get; } = Of("The Beekeeper's Cabinet", Stages("The smoker", "Five frames", "The queen's clip")) with
    {
        Cautions =
        [
            Caution(CautionKind.Heavy, "The cabinet weighs 6 kg: over a table."),
            Caution(CautionKind.ButtonCell, null),
            Caution(CautionKind.Magnets, null),
        ],
    };

    public static Book Of(string title, ImmutableArray<Stage> stages, string? address = Address) => new()
    {
        File = File,
        Title = At(title),
        Maker = new(At("Alder Row Workshop"), null),
        Language = At("en"),
        Address = address is null ? null : At(address),
        Theme = At("parlour"),
        Goal = [],
        Patience = TimeSpan.FromMinutes(20),
        Cards = CardChoice.Both,
        Box = new Box(),
        Stages = stages,
    };

    public static Addresses AddressesOf(Book book) => new(
        book.Address?.Value,
        book.Stages.ToImmutableSortedDictionary(
            stage => stage.Id.Value,
            stage => ImmutableArray.Create(Addresses.Derive(book.Identity, stage.Id.Value))));

    public static (CardSet Set, Findings Findings) Print(Book book, Paper paper = Paper.A4) =>
        CardPrint.Print(book, AddressesOf(book), paper, CardBooks.English);

    public static byte[] Pdf(CardSet set) => Bytes(set, "cards.pdf");

    public static byte[] Bytes(CardSet set, string path) => set.Files.Single(file => file.Path == path).Content().ToArray();

    public static ImmutableArray<Stage> Stages(params string[] titles) => [.. titles.Select((title, i) => Stage($"stage-{i + 1}", title))];

    public static ImmutableArray<Stage> Stages(int count) => Stages([.. Enumerable.Range(1, count).Select(i => $"Drawer {i}")]);

    public static Caution Caution(CautionKind kind, string? note) => new(kind, note, File.Top);

    private static Stage Stage(string id, string title) => new()
    {
        File = File,
        Id = At(id),
        Title = At(title),
        Sign = At("A sign."),
        Moves = [],
        Nudge = new("Look.", File.Top),
        Clue = new("Look there.", File.Top),
        Answer = new("Turn it.", File.Top),
    };

    private static Located<string> At(string value) => new(value, File.Top);
}
