namespace HintBook.Print.Clues;

/// <summary>Colours by their English names, as six hexadecimal figures. They stay apart on a common printer (chosen by eye, no source).</summary>
internal static class Inks
{
    /// <summary>A colour; white for a name that isn't known.</summary>
    public static string Of(string name) => name switch
    {
        "black" => "1a1a1a",
        "brown" => "7a4a21",
        "red" => "cc2222",
        "orange" => "f08a1d",
        "yellow" => "f5d90a",
        "green" => "2e8b3d",
        "blue" => "2456b0",
        "violet" => "7d3c98",
        "grey" => "8c8c8c",
        _ => "ffffff",
    };
}
