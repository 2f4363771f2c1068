namespace HintBook.Spoilers.Languages;

/// <summary>
/// Words that make another thing of the noun behind them, where a language puts two nouns together with a small word: a <c>desfile de faroles</c> is no
/// <c>farol</c>. Languages that write them as one word, or side by side, need none. Chosen by hand: common practice, no source.
/// </summary>
internal static class CompoundNouns
{
    private const string French =
        "défilé retraite procession cortège marche fête foire festival nuit soirée musée marchand marchande fabricant fabricante boutique magasin collection "
        + "collectionneur atelier fabrique rue";

    private const string Spanish =
        "desfile procesión cortejo marcha fiesta feria festival noche velada museo vendedor vendedora fabricante tienda colección coleccionista taller fábrica "
        + "calle";

    private const string Arabic = "موكب مسيرة مهرجان عيد ليلة سوق متحف معرض بائع صانع دكان متجر مجموعة مصنع";

    /// <summary>Those of a language, parted by spaces.</summary>
    public static string Of(string language) => language switch
    {
        "fr" => French,
        "es" => Spanish,
        "ar" => Arabic,
        _ => "",
    };
}
