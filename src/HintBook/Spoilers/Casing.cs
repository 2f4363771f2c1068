namespace HintBook.Spoilers;

/// <summary>What the letters of a mention must look like.</summary>
internal enum Casing
{
    /// <summary>Large or small.</summary>
    Any,

    /// <summary>All large: the word is also an everyday one.</summary>
    Capitals,

    /// <summary>Large or small, letter by letter as declared.</summary>
    Exact,

    /// <summary>Large or small, letter by letter as declared, and where something is set or spelt.</summary>
    Spelled,

    /// <summary>Large or small, with no article behind it: <c>the key to happiness</c>.</summary>
    Open,

    /// <summary>Large or small: one word that may stand in figures of speech, and is sure only where a thing is handled.</summary>
    Alone,

    /// <summary>Large or small: an everyday word, which counts only where a thing is handled.</summary>
    Object,

    /// <summary>Large or small: the noun of a longer name, which counts only where a thing is handled or somebody's.</summary>
    Head,
}
