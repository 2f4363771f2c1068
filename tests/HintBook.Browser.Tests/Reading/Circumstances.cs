using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests.Reading;

/// <summary>How a reader comes to the site.</summary>
/// <param name="Script">Whether the browser runs script.</param>
/// <param name="Phone">A phone, 390 × 844, or else a desk, 1280 × 800.</param>
/// <param name="Dark">Whether the reader likes it dark.</param>
/// <param name="Source">Where the site is read from.</param>
/// <param name="Theme">The theme that the book asks for.</param>
/// <param name="Language">The language that the book is in.</param>
/// <param name="Locale">The browser's language.</param>
/// <param name="Proxy">The port on this machine that answers for every other host; null for none.</param>
public sealed record Circumstances(
    bool Script = true,
    bool Phone = true,
    bool Dark = false,
    Source Source = Source.Http,
    string Theme = Pages.Theme.Default,
    string Language = "en",
    string Locale = "en-GB",
    int? Proxy = null)
{
    /// <summary>Six in which each two choices meet in all their ways (a covering array of strength two).</summary>
    public static TheoryData<Circumstances> Pairs => Rows(InPairs);

    /// <summary>The same for the small book, and two opposite ones for each other book: for what has to look at every page.</summary>
    public static TheoryData<string, Circumstances> SweepsOfEachBook =>
    [
        .. from book in Shelf.Names
           from one in book == SmallBook.Title ? InPairs : [new(true, false, false, Source.Http), new(false, true, true, Source.File)]
           select new TheoryDataRow<string, Circumstances>(book, one),
    ];

    /// <summary>With script, in each theme, from a web host and from a memory stick.</summary>
    public static TheoryData<Circumstances> WithScript => Rows(
    [
        new(Phone: true),
        new(Phone: false, Source: Source.File, Theme: "workshop"),
        new(Phone: true, Dark: true, Source: Source.File, Theme: "plain"),
    ]);

    /// <summary>With script from a web host, without it from a memory stick.</summary>
    public static TheoryData<string, Circumstances> WithAndWithoutScriptForEachBook =>
    [
        .. from book in Shelf.Names
           from one in new Circumstances[] { new(Script: true), new(Script: false, Source: Source.File) }
           select new TheoryDataRow<string, Circumstances>(book, one),
    ];

    /// <summary>A phone in light and a desk in dark: each book, the small one in each theme, and once from right to left.</summary>
    public static TheoryData<string, Circumstances> Looks =>
    [
        .. from book in Shelf.Names
           from theme in book == SmallBook.Title ? Themes : [Pages.Theme.Default]
           from look in LooksIn(theme)
           select new TheoryDataRow<string, Circumstances>(book, look),
        new TheoryDataRow<string, Circumstances>(SmallBook.Title, FromTheRight),
    ];

    /// <summary>The themes that come with the tool.</summary>
    public static IReadOnlyList<string> Themes => Pages.Theme.BuiltInNames;

    /// <summary>A book in a language that is written from right to left.</summary>
    public static Circumstances FromTheRight => new(Theme: "workshop", Language: "ar");

    /// <summary>Whether the theme asks once more before it shows an answer.</summary>
    public bool AsksOnceMore => Theme != "plain";

    internal static Circumstances[] InPairs =>
    [
        new(false, false, false, Source.Http, "parlour"),
        new(true, true, true, Source.File, "parlour"),
        new(false, false, true, Source.File, "plain"),
        new(true, true, false, Source.Http, "plain"),
        new(false, true, false, Source.File, "workshop"),
        new(true, false, true, Source.Http, "workshop"),
    ];

    /// <summary>A phone in light and a desk in dark.</summary>
    public static Circumstances[] LooksIn(string theme) => [new(Phone: true, Dark: false, Theme: theme), new(Phone: false, Dark: true, Theme: theme)];

    public override string ToString() =>
        $"{Theme}, {Language}, script {(Script ? "on" : "off")}, {(Phone ? "phone" : "desk")}, "
        + $"{(Dark ? "dark" : "light")}, {(Source == Source.Http ? "http" : "file")}";

    private static TheoryData<Circumstances> Rows(IEnumerable<Circumstances> circumstances) => [.. circumstances];
}
