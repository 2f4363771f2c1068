namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// What makes another thing of a noun beside it: a lantern parade, a <c>défilé aux lanternes</c>. From memory; nothing is shared with the check of the source.
/// </summary>
internal sealed record CompoundsIn
{
    private static readonly CompoundsIn Nothing = new();

    private static readonly CompoundsIn English = new()
    {
        Behind = "parade parades procession processions festival festivals fair fairs march season night maker makers seller sellers shop shops museum museums "
            + "factory collection collections collector collectors street industry trade dance song club",
    };

    private static readonly CompoundsIn French = new()
    {
        Before = "défilé défilés retraite procession processions cortège marche fête fêtes foire festival nuit soirée musée musées marchand marchands "
            + "fabricant fabricants boutique magasin collection collections collectionneur atelier fabrique rue",
    };

    private static readonly CompoundsIn Spanish = new()
    {
        Before = "desfile desfiles procesión procesiones cortejo marcha fiesta fiestas feria ferias festival noche velada museo museos vendedor vendedores "
            + "fabricante fabricantes tienda tiendas colección colecciones coleccionista taller fábrica calle",
    };

    private static readonly CompoundsIn Arabic = new() { Before = "موكب مواكب مسيرة مهرجان عيد ليلة سوق متحف معرض بائع صانع دكان متجر مجموعة مصنع" };

    /// <summary>Words right behind the noun.</summary>
    public string Behind { get; private init; } = "";

    /// <summary>Words before it, with none but words of grammar between.</summary>
    public string Before { get; private init; } = "";

    /// <summary>What is known of a language.</summary>
    public static CompoundsIn Of(string code) => code switch
    {
        "en" => English,
        "fr" => French,
        "es" => Spanish,
        "ar" => Arabic,
        _ => Nothing,
    };
}
