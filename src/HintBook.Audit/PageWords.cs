using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace HintBook.Audit;

/// <summary>
/// What the names of elements and attributes mean to a reader (HTML Living Standard, its indices of elements and attributes; SVG 2, its
/// attribute index).
/// </summary>
internal static partial class PageWords
{
    /// <summary>
    /// Elements that begin a line of their own (HTML Living Standard, 15.3, and those that hold no text of the page); all others stand in a line
    /// of text: what is before and after them is one word. Of SVG those that are read as texts of their own.
    /// </summary>
    public static readonly FrozenSet<string> Blocks = Set(
        "address article aside blockquote body caption center col colgroup dd details desc dialog dir div dl dt fieldset figcaption figure footer "
        + "foreignObject form g h1 h2 h3 h4 h5 h6 head header hgroup hr html iframe legend li listing main menu metadata nav noscript object ol "
        + "optgroup option p "
        + "plaintext pre script search section select style summary svg symbol table tbody td template text textarea tfoot th thead title tr ul video xmp");

    /// <summary>Whether an element stands in a line of text.</summary>
    public static bool IsInLine(string element) => !Blocks.Contains(element);

    /// <summary>Attributes that are shown or read aloud.</summary>
    public static readonly FrozenSet<string> Spoken = Set(
        "alt title aria-label aria-description aria-valuetext aria-roledescription aria-placeholder placeholder label summary abbr");

    private const string Addresses = "href src srcset imagesrcset poster data action formaction xlink:href cite ping";

    private const string OfHtml =
        "accept accept-charset allow as async autocapitalize autocomplete autofocus autoplay border cellpadding cellspacing "
        + "charset checked color cols colspan contenteditable controls coords crossorigin datetime decoding default defer dir "
        + "dirname disabled draggable enctype enterkeyhint fetchpriority for form formenctype formmethod formnovalidate formtarget "
        + "headers height hidden high hreflang http-equiv imagesizes inert inputmode integrity is ismap kind lang list loading loop "
        + "low max maxlength media method min minlength multiple muted nomodule nonce novalidate open optimum pattern playsinline "
        + "popover popovertarget popovertargetaction preload property readonly referrerpolicy rel required reversed role rows "
        + "rowspan sandbox scope selected shape size sizes slot span spellcheck srclang start step tabindex target translate type "
        + "usemap valign width wrap";

    private const string OfAria =
        "aria-atomic aria-busy aria-checked aria-colcount aria-colindex aria-controls aria-current aria-describedby aria-details "
        + "aria-disabled aria-expanded aria-haspopup aria-hidden aria-invalid aria-labelledby aria-level aria-live aria-modal "
        + "aria-owns aria-posinset aria-pressed aria-readonly aria-relevant aria-required aria-selected aria-setsize aria-sort "
        + "aria-valuemax aria-valuemin aria-valuenow";

    private const string OfDrawings =
        "xmlns xmlns:xlink xml:lang xml:space version baseprofile focusable viewbox preserveaspectratio d points x y x1 x2 y1 y2 "
        + "cx cy r rx ry dx dy fx fy rotate transform gradienttransform gradientunits offset fill fill-opacity fill-rule stroke "
        + "stroke-width stroke-linecap stroke-linejoin stroke-dasharray stroke-dashoffset stroke-opacity stop-color stop-opacity "
        + "opacity clip-path clip-rule mask filter font-family font-size font-style font-weight text-anchor text-rendering "
        + "dominant-baseline alignment-baseline letter-spacing vector-effect markerwidth markerheight refx refy orient markerunits "
        + "marker-start marker-mid marker-end pathlength shape-rendering style";

    /// <summary>Attributes that hold numbers, words of the standards, or addresses, which are read elsewhere.</summary>
    public static readonly FrozenSet<string> Keywords = Set($"{Addresses} {OfHtml} {OfAria} {OfDrawings}");

    /// <summary><c>meta</c> elements that speak to the browser alone.</summary>
    public static readonly FrozenSet<string> KeywordMeta = Set(
        "viewport robots referrer color-scheme theme-color format-detection twitter:card og:type og:locale");

    /// <summary>A text or an address without times: <c>2:16</c>, <c>#t=136,183</c>. Digits that nobody wrote are no codes.</summary>
    public static string WithoutTimes(string text) => Time().Replace(text, " ");

    /// <summary>A pattern in which each letter may be large or small, as the word that it means: <c>[Mm][Ii]</c>.</summary>
    public static string WithoutChoices(string pattern) => Choice().Replace(pattern, static match =>
        char.ToUpperInvariant(match.Value[1]) == char.ToUpperInvariant(match.Value[2]) ? match.Value[1..2] : match.Value);

    /// <summary>A duration of ISO 8601 in hours and minutes as a time: <c>PT7H25M</c> is 7:25.</summary>
    public static string WithoutDuration(string time) => Duration().Replace(time, "${hour}:${minute}");

    [GeneratedRegex("^PT(?<hour>[0-9]{1,2})H(?<minute>[0-5][0-9])M", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Duration();

    [GeneratedRegex(@"\[[A-Za-z]{2}\]", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Choice();

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    [GeneratedRegex(@"#t=[0-9.,:]+$|\b[0-9]+(:[0-5][0-9])+(\.[0-9]+)?\b", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Time();
}
