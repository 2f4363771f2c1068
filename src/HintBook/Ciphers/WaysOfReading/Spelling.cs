namespace HintBook.Ciphers.WaysOfReading;

/// <summary>The words of the radio spelling alphabet. The signal flags have the same names.</summary>
internal static class Spelling
{
    private const string Table =
        "alfa A, alpha A, bravo B, charlie C, delta D, echo E, foxtrot F, golf G, hotel H, india I, juliett J, juliet J, kilo K, lima L, mike M, "
        + "november N, oscar O, papa P, quebec Q, romeo R, sierra S, tango T, uniform U, victor V, whiskey W, whisky W, x-ray X, xray X, yankee Y, zulu Z";

    private static readonly Lookup Words = Lookup.Parse(Table);

    /// <summary>The first word in the table for a letter A to Z: <c>Alfa</c>.</summary>
    public static string WordFor(char letter)
    {
        var word = Array.Find(Table.Split(", "), row => row[^1] == letter)![..^2];
        return char.ToUpperInvariant(word[0]) + word[1..];
    }

    public static Way Alphabet { get; } = Way.Bare(
        "spelling-alphabet",
        "Alfa, Bravo, Charlie and so on, as letters.",
        "SERA.14020 of the European rules of the air, table S14-2; the spellings alpha, juliet, whisky and xray are taken too.",
        text => Words.Read(text, $"no word of the spelling alphabet stands in {TextPieces.Quoted(text)}"));

    public static Way Flags { get; } = Way.Bare(
        "signal-flags",
        "Signal flags by their names (Alfa, Bravo, …), as letters.",
        "The flags of the International Code of Signals have the names of the spelling alphabet; from memory.",
        text => Words.Read(text, $"no name of a signal flag stands in {TextPieces.Quoted(text)}")) with
    {
        // It gives what the spelling alphabet gives, so a solver would name that one.
        StandsAlone = false,
    };
}
