namespace HintBook.Audit.Mentions.Languages;

/// <summary>What stands around a Japanese noun that is meant, as letters; phrases are parted by commas. From memory.</summary>
internal static class NounsInRuns
{
    /// <summary>Letters that are a noun by themselves, and of which every box has several or every text has many.</summary>
    public const string Fixtures = "箱紙板木石水火手目口蓋戸棚本鍵錠札字数絵穴底横上下中人子日月年時所物事方回線点面図色形角端裏表心音声名道家店車力気間前後右左内外部";

    /// <summary>Ends of words that describe the noun behind them.</summary>
    public const string Describing = "いたなだる";

    /// <summary>A letter with which only verbs and compounds begin: 引き出し.</summary>
    public const string Verbal = "引";

    /// <summary>Points at the noun behind it: いま取り出した籠.</summary>
    public static string[] Pointing { get; } = ["その", "出した", "出た", "にある", "のは"];

    /// <summary>Letters behind a noun that is pointed at.</summary>
    public const string BehindPointed = "、のはが";

    /// <summary>Says that it is one.</summary>
    public static string[] Being { get; } = ["です", "なん", "でし"];

    /// <summary>Letters behind the noun with which a clause begins: 火縄は.</summary>
    public const string BehindFirst = "はとも";

    /// <summary>Letters that make other words of these: はど, とみ.</summary>
    public const string NotBehindThose = "どみいす";

    /// <summary>Letters before a noun that something is said to be: つまり扇でした.</summary>
    public const string BeforeSaid = "りはが";

    /// <summary>Says that something was one.</summary>
    public static string[] Said { get; } = ["です", "でし"];

    /// <summary>The letter of what is acted on, and places of a noun of one letter.</summary>
    public static string[] BehindOne { get; } = ["を", "の中", "の裏", "の底", "のふち", "の縁", "のへり", "の柄", "の取っ手", "の刃"];

    /// <summary>Behind a noun that is all that is said: 中身は巾着ひとつ.</summary>
    public static string[] BehindAll { get; } = ["。", "？", "！", "\n", "です", "ひとつ", "一つ", "でし"];

    /// <summary>Behind any other noun that is meant.</summary>
    public static string[] Behind { get; } = ["を", "が", "だ", "の中", "の裏", "の下", "の底", "のふた", "のふち", "の縁", "のへり", "の柄", "の取っ手", "の刃", "だけ", "にも", "」"];
}
