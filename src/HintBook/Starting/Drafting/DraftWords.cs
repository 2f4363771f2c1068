using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace HintBook.Starting.Drafting;

/// <summary>
/// What a language gives to find steps and things in what is said: words that begin a step, and how things are named. Common words, no source.
/// </summary>
/// <param name="Begins">Beginnings of a sentence with which a new step begins, in small letters.</param>
/// <param name="Named">Finds where a thing may be named: the group <c>name</c> is its name, perhaps with words behind it.</param>
/// <param name="NoThings">Words that are no things of a box, though they are named like things.</param>
internal sealed record DraftWords(ImmutableArray<string> Begins, Regex Named, ImmutableHashSet<string> NoThings)
{
    /// <summary>Whether the noun of a name is its first word, as in “clé de bois”, and not its last.</summary>
    public bool NounIsFirst { get; init; }

    private const string EnglishEnd =
        "is|was|are|were|be|has|have|had|can|could|will|would|goes|go|comes|come|opens|closes|fits|lets|needs|does|do|turns|slides|moves|falls|and|or|but|in|"
        + "on|of|to|at|by|with|without|from|into|onto|over|under|behind|between|through|that|which|who|where|when|while|if|as|so|then|than|"
        + "here|there|now|up|down|out|off|back|away|again|all|it|we|you|i|they|he|she|like|just|also|until|because|for|about|around|"
        + "the|a|an|this|my|your|our|another|take|look|see";

    /// <summary>Those of a language; of English for one that isn't known.</summary>
    /// <param name="language">A BCP 47 tag.</param>
    public static DraftWords Of(string language) => language.Split('-')[0].ToLowerInvariant() switch
    {
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        "ja" => Japanese,
        "ar" => Arabic,
        _ => English,
    };

    private static DraftWords English { get; } = new(
        ["next", "now", "then", "after that", "first", "second", "third", "finally", "step", "so now", "okay", "moving on", "the next", "lastly", "once that"],
        In($@"\b(the|a|an|this|that|my|your|our|another)\s+(?<name>(?:(?!(?:{EnglishEnd})\b)[a-z][a-z'-]*)"
            + $@"(?:\s+(?!(?:{EnglishEnd})\b)[a-z][a-z'-]*){{0,2}})"),
        Words("thing things way box bit side top bottom time hand hands moment step one part end back front left right middle place piece lot little rest "
            + "first next last same other whole first second third video film camera couple few kind point second minute idea"));

    private static DraftWords German { get; } = new(
        ["als nächstes", "jetzt", "nun", "dann", "danach", "zuerst", "zunächst",
            "schließlich", "zuletzt", "schritt", "weiter geht", "im nächsten", "okay", "so,"],
        new(@"(?<![.!?:]\s|^)\b(?<name>\p{Lu}\p{Ll}{2,})\b", RegexOptions.CultureInvariant),
        Words("kasten box schachtel seite zeit hand hände moment schritt stück teil ende mitte platz weise art video film kamera mal anfang sie ihnen ihre"));

    private static DraftWords French { get; } = new(
        ["ensuite", "maintenant", "puis", "après", "d'abord", "d’abord", "enfin", "étape", "on passe", "la suite", "pour finir", "premièrement"],
        In(@"\b(?:le|la|les|un|une|des|ce|cet|cette|mon|ma|votre|notre)\s+(?<name>\p{Ll}{3,}(?:\s+(?:de|en|à)\s+\p{Ll}{3,})?)"
            + @"|\bl['’](?<name>\p{Ll}{3,}(?:\s+(?:de|en|à)\s+\p{Ll}{3,})?)"),
        Words("boîte côté temps main mains moment étape fois partie fin milieu place façon vidéo film caméra chose choses haut bas suite peu"))
    {
        NounIsFirst = true,
    };

    private static DraftWords Spanish { get; } = new(
        ["ahora", "luego", "después", "a continuación", "primero", "por último", "finalmente", "paso", "el siguiente", "seguimos", "entonces"],
        In(@"\b(?:el|la|los|las|un|una|este|esta|mi|su|nuestra|nuestro)\s+(?<name>\p{Ll}{3,}(?:\s+de\s+\p{Ll}{3,})?)"),
        Words("caja lado tiempo mano manos momento paso vez parte final medio lugar manera vídeo video cámara cosa cosas siguiente fin"))
    {
        NounIsFirst = true,
    };

    private static DraftWords Japanese { get; } = new(
        ["次に", "次は", "まず", "それから", "今度は", "最後に", "では", "さて", "そして"],
        new(@"(?<name>[\p{IsCJKUnifiedIdeographs}]{1,6}|[\p{IsKatakana}]{2,12})(?=[をがはにでの])", RegexOptions.CultureInvariant),
        Words("箱 今 次 上 下 中 横 前 後 時 手 方 所 事 物 最初 最後 部分 動画 一番 全部 全体"));

    private static DraftWords Arabic { get; } = new(
        ["الآن", "ثم", "بعد ذلك", "أولا", "أولاً", "أخيرا", "أخيراً", "الخطوة", "التالي", "بعدها", "والآن"],
        new(@"\b[وفبكل]?(?<name>ال\p{L}{3,})\b", RegexOptions.CultureInvariant),
        Words("الصندوق الآن الخطوة اليد الجانب الوقت النهاية الجزء المكان الطريقة الفيديو الكاميرا التالي التالية الأول الأولى الثاني"));

    private static Regex In(string pattern) => new(pattern, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static ImmutableHashSet<string> Words(string list) => [.. list.Split(' ')];
}
