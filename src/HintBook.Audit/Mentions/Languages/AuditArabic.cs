namespace HintBook.Audit.Mentions.Languages;

/// <summary>Arabic. The article, prepositions and conjunctions are written as one with the noun, so they count as its forms.</summary>
internal static class AuditArabic
{
    private static readonly string[] Before = ["", "ال", "و", "ف", "ب", "ك", "ل", "وال", "فال", "بال", "كال", "لل", "وبال", "ولل", "فلل", "وب", "ول"];
    private static readonly string[] Owners = ["ك", "ه", "ها", "هم", "نا", "كم"];
    private static readonly string[] Units = ["صفر", "واحد", "اثنان", "ثلاثة", "أربعة", "خمسة", "ستة", "سبعة", "ثمانية", "تسعة", "عشرة"];
    private static readonly string[] Tens = ["", "", "عشرون", "ثلاثون", "أربعون", "خمسون", "ستون", "سبعون", "ثمانون", "تسعون"];
    private static readonly string[] Joined = ["", "", "", "ثلاث", "أربع", "خمس", "ست", "سبع", "ثمان", "تسع"];

    public static AuditLanguage Language { get; } = new()
    {
        Code = "ar",
        Determiners = "هذا هذه ذلك تلك",
        Prepositions = "من في على عن إلى مع تحت فوق خلف",
        Between = "و ثم",
        Same =
        [
            "واحد واحدة أحد إحدى واحدا", "اثنان اثنين اثنا اثني اثنتان اثنتين اثنتا اثنتي",
            "ثلاثة ثلاث ثلاثا", "أربعة أربع أربعا", "خمسة خمس خمسا", "ستة ست ستا", "سبعة سبع سبعا", "ثمانية ثماني ثمان ثمانيا",
            "تسعة تسع تسعا", "عشرة عشر عشرا", "صفر صفرا",
            "عشرون عشرين", "ثلاثون ثلاثين", "أربعون أربعين", "خمسون خمسين", "ستون ستين", "سبعون سبعين", "ثمانون ثمانين", "تسعون تسعين",
            "مراه مرايه مرايا مراة مراية",
            "مئة مائة", "مئتان مائتان مئتين مائتين", "ألف آلاف ألفا", "ألفان ألفين",
        ],
        Forms = static (word, _) => Forms(word),
        Numbers = Numbers,
        Kinship = Kinship.Arabic,
        Coordinators = "و أو",
        Anaphora = "",
        Negations = "ليس ليست لا لم لن غير بلا بدون دون",
        Likenesses = "مثل كأنه كأنها كأن",
        Setting = "أدخل أدخلها أدخله "
            + "اضبطها اضبطه كلمتها اكتبه لكلمة بكلمة حلقة الحلقات القفل كلمة الكلمة حرف حروف الحروف اكتب اكتبها اضبط رتب كتابة هجاء تهجأ قل الجواب الرمز",
        Times = TimesIn.Arabic,
        Codes = CodesIn.Arabic,
        IsHourFirst = true,
        Thousand = "ألف",
        Grammar =
            "هو هي هم كان كانت يكون ليس لا لم لن قد إن أن إذا لو كما حيث حتى كل كلها هنا هناك الآن أو لكن بل بين منذ عند لدى أيضا فقط مرة يفتح ينفتح "
            + "تجد ستجد",
        BeforeNumbers = ["و", "ال", "وال", "بال", "لل", "ب", "ف", "ل", "ول", "وب"],
    };

    private static IEnumerable<string> Forms(string word)
    {
        var bare = word.Length > 4 && word.StartsWith("ال", StringComparison.Ordinal) ? word[2..] : word;
        string[] numbers = bare.Length > 3 && bare[^1] == 'ه' ? [bare, bare[..^1] + "ات"]
            : bare.Length > 4 && bare.EndsWith("ات", StringComparison.Ordinal) ? [bare, bare[..^2] + "ه"]
            : [bare];
        // قفازك and قفازه: yours and his.
        var bound = bare[^1] == 'ه' && bare.Length > 3 ? bare[..^1] + "ت" : bare;
        // "إبريقًا فضيًّا": what one finds or takes.
        if (bare.Length > 2 && !(bare[^1] is 'ه' or 'ا' or 'ى' or 'ء'))
            numbers = [.. numbers, bare + "ا"];
        string[] owned = bare.Length < 3 ? [] : [.. Owners.Select(owner => bound + owner)];
        return numbers.Concat(owned).SelectMany(form => Before.Select(before => before + form)).Prepend(word).Distinct();
    }

    private static IEnumerable<(string, int)> Numbers()
    {
        yield return ("ألفان", 2000);
        for (var number = 0; number < 1000; number++)
        {
            var rest = Below(number % 100);
            foreach (var hundreds in Hundreds(number / 100))
            {
                var said = string.Join(' ', ((string[])[hundreds, rest]).Where(part => part.Length > 0));
                yield return (said.Length == 0 ? Units[0] : said, number);
            }
        }
    }

    private static string[] Hundreds(int figure) => figure switch
    {
        0 => [""],
        1 => ["مئة"],
        2 => ["مئتان"],
        _ => [Units[figure] + " مئة", Joined[figure] + "مئة", Joined[figure] + "مائة"],
    };

    private static string Below(int number) => number switch
    {
        0 => "",
        <= 10 => Units[number],
        < 20 => Units[number - 10] + " عشرة",
        _ when number % 10 == 0 => Tens[number / 10],
        _ => Units[number % 10] + " " + Tens[number / 10],
    };
}
