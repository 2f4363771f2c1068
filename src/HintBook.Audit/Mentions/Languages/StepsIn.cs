namespace HintBook.Audit.Mentions.Languages;

/// <summary>Words of a language for a step of a box, as parts lists give it behind a thing: "sponge (stage 2)". From memory, parted by spaces.</summary>
/// <param name="Words">What a step is called.</param>
/// <param name="Before">Words that may lead from a thing to what it is made of; empty where a quality stands behind its noun.</param>
/// <param name="Short">What "number" is cut to before one.</param>
internal sealed record StepsIn(string Words, string Before, string Short)
{
    /// <summary>Those of a language.</summary>
    public static StepsIn Of(string language) => language switch
    {
        "en" => new("stage stages step steps level", "of in with made for", "no"),
        "de" => new("stufe stufen schritt schritts etappe station", "aus mit in für von", "nr"),
        "fr" => new("étape étapes phase niveau", "", "n no"),
        "es" => new("paso pasos etapa etapas fase nivel", "", "n no"),
        "ar" => new("المرحلة مرحلة للمرحلة الخطوة خطوة للخطوة", "", ""),
        "ja" => new("段 段階 手順 工程 ステップ", "", ""),
        _ => new("", "", ""),
    };
}
