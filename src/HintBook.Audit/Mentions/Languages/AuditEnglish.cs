namespace HintBook.Audit.Mentions.Languages;

/// <summary>English.</summary>
internal static class AuditEnglish
{
    private static readonly string[] Small =
        ("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen")
            .Split(' ');

    private static readonly string[] Tens = "- - twenty thirty forty fifty sixty seventy eighty ninety".Split(' ');

    public static AuditLanguage Language { get; } = new()
    {
        Code = "en",
        Determiners = "the a an this that these those my your his her its our their",
        Prepositions = "of under in inside on from with behind at to over beneath below above beside near for",
        Between = "and then next",
        Same = ["zero oh nought naught nil"],
        Forms = static (word, _) => EnglishNouns.Forms(word),
        Numbers = Numbers,
        Kinship = Kinship.English,
        Coordinators = "and or nor",
        Anaphora = "yours mine ours it its it’s itself them they they’re their one ones that that’s this these those thing things he his him she "
            + "her which who whose "
            + "there here inside same both",
        Negations = "no each not without never isn’t aren’t wasn’t don’t",
        Likenesses = "like as than",
        Setting = "spell spells spelling spelt spelled word words letter letters say says said write writes written writing type enter set sets "
            + "setting read reads reading ring rings dial "
            + "dials password answer code solution forming capitals punch shout shouts lock wheel wheels drum drums tumblers discs disks "
            + "lowercase uppercase stamp stamped",
        HasVerbsAlike = true,
        Times = TimesIn.English,
        Codes = CodesIn.English,
        Thousand = "thousand",
        Repeats = ["double", "triple treble"],
        LetterWords = "a i",
        Grammar =
            "is are was were be been being am isn aren isnt arent has have had having do does did doesn don dont will would can could cant cannot may "
            + "might must "
            + "shall should won wont not no nor or but if when while where who which what whose how why because so as than too also only just even still "
            + "yet again now here there up down out off away back together apart through into onto across along around between until by you we they "
            + "he she it "
            + "i me us them him one ones all both each every some any none first second third last before after once twice more less very quite almost "
            + "please let lets though although since without within against toward towards goes go comes come fits opens turns drops falls lies hangs slides "
            + "sits waits sticks pops needs wants makes works rests stands gets got look looks sure really slowly gently either neither instead perhaps "
            + "till whilst unless whether maybe never always soon later already himself herself itself yourself",
    };

    private static IEnumerable<(string, int)> Numbers()
    {
        for (var number = 0; number < 1000; number++)
        {
            var (hundreds, rest) = (number / 100, number % 100);
            var said = rest < 20 ? Small[rest] : rest % 10 == 0 ? Tens[rest / 10] : $"{Tens[rest / 10]} {Small[rest % 10]}";
            yield return (hundreds == 0 ? said : rest == 0 ? $"{Small[hundreds]} hundred" : $"{Small[hundreds]} hundred {said}", number);
        }
    }
}
