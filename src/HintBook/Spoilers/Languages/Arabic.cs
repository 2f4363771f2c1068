namespace HintBook.Spoilers.Languages;

/// <summary>Arabic. The alef in its forms is one letter already, and vowel signs aren't there.</summary>
internal static class Arabic
{
    private const string Article = "ال";

    public static SearchLanguage Language { get; } = new()
    {
        Code = "ar",
        Clock = ClockWords.Arabic,
        Pieces = PieceWords.Arabic,
        Objects = ObjectWords.Arabic,
        Reckoning = ReckonWords.Arabic,
        Variants =
            "مرآة/مراية/مرايا/مرايه/المراية "
            + "ذهب/ذهبي/ذهبية نحاس/نحاسي/نحاسية فضة/فضي/فضية خشب/خشبي/خشبية برونز/برونزي/برونزية حديد/حديدي/حديدية "
            + "أزرق/زرقاء/زرق أحمر/حمراء/حمر أخضر/خضراء/خضر أصفر/صفراء أبيض/بيضاء/بيض أسود/سوداء/سود جلد/جلدي/جلدية عظم/عظمي/عظمية",
        FormsOf = WordForms.Arabic,
        Determiners = "هذا هذه ذلك تلك هؤلاء كل بعض",
        Prepositions = "من في على عن إلى مع تحت فوق خلف أمام بين داخل قرب عند",
        Functions =
            "و أو ثم لكن بل إن أن إذا لو هو هي هم نحن أنت أنا التي الذي الذين ما ماذا متى أين كيف لماذا لا لم لن ليس ليست كان كانت يكون تكون "
            + "قد هنا هناك الآن أيضا جدا فقط قبل بعد حتى "
            + "انظر خذ ضع اسحب ادفع أدر افتح أغلق ابحث ارفع اقرأ اضغط يوجد توجد يفتح تفتح يجد تجد يقول تقول",
        InNumbers = "و ثم بعد",
        And = "و",
        Everyday =
            "صندوق علبة مفتاح غطاء باب درج دبوس ثقب عجلة زر بطاقة رسالة حرف رقم عدد كلمة رمز ورقة ورق خشب قفل مزلاج مقبض مفصلة لوح جانب أعلى "
            + "أسفل قاع ركن حافة جدار أرض سقف صينية شق خطاف خاتم حلقة قضيب سدادة عملة كرة سلسلة "
            + "خيط سلك نابض مغناطيس مرآة زجاج صورة نص سطر بيت لغز تلميح جواب إجابة علامة سهم لون شكل نجمة دائرة مربع أداة جزء قطعة شيء خريطة "
            + "كتاب صفحة طاولة مصباح شمعة مفتاح ساعة عقرب يد إصبع عين رأس جسم ذيل صغير صغيرة كبير كبيرة "
            + "طويل قصير مستدير قديم جديد يسار يمين أول ثان أخير أحمر أزرق أخضر أصفر أبيض أسود سر سري اسم وقت يوم سنة ترتيب مكان نهاية بداية "
            + "خطوة صوت وزن برغي مسمار إطار",
        Figures =
        [
            .. Counted("صفر واحد اثنان ثلاثة أربعة خمسة ستة سبعة ثمانية تسعة عشرة", 0, 1),
            .. Counted("واحدة اثنين ثلاث أربع خمس ست سبع ثماني تسع عشر", 1, 1),
            .. Counted("أحد اثنا", 1, 1),
            // What one sets or counts ends in -an: ضع واحدا ثم تسعا.
            .. Counted("صفرا واحدا", 0, 1),
            .. Counted("ثلاثا أربعا خمسا ستا سبعا ثمانيا تسعا عشرا", 3, 1),
            .. Counted("إحدى اثنتا", 1, 1),
            ("اثني", new(2, FigureKind.Small)),
            ("اثنتان", new(2, FigureKind.Small)),
            ("اثنتين", new(2, FigureKind.Small)),
            ("ثمان", new(8, FigureKind.Small)),
            .. Counted("عشرون ثلاثون أربعون خمسون ستون سبعون ثمانون تسعون", 20, 10),
            .. Counted("عشرين ثلاثين أربعين خمسين ستين سبعين ثمانين تسعين", 20, 10),
            ("مئة", new(100, FigureKind.Scale)),
            ("مائة", new(100, FigureKind.Scale)),
            ("مئتان", new(200, FigureKind.Small)),
            ("مائتان", new(200, FigureKind.Small)),
            ("مئتين", new(200, FigureKind.Small)),
            ("مائتين", new(200, FigureKind.Small)),
            .. Counted("ثلاثمائة أربعمائة خمسمائة ستمائة سبعمائة ثمانمائة تسعمائة", 300, 100),
            .. Counted("ثلاثمئة أربعمئة خمسمئة ستمئة سبعمئة ثمانمئة تسعمئة", 300, 100),
            ("ألف", new(1000, FigureKind.Scale)),
            ("آلاف", new(1000, FigureKind.Scale)),
            ("ألفا", new(1000, FigureKind.Scale)),
            ("ألفان", new(2000, FigureKind.Small)),
            ("ألفين", new(2000, FigureKind.Small)),
        ],
        Counting = new(UnitsFirst: true),
        Fold = Fold,
        Prefixes = "وب فب ول فل وك وبال فبال وكال وال فال بال كال ولل فلل لل و ف ب ك ل",
        HeadFirst = true,
    };

    private static IEnumerable<(string, Figure)> Counted(string words, int from, int step) =>
        words.Split(' ').Select((word, i) => (word, new Figure(from + (i * step), FigureKind.Small)));

    // The article is taken off, and letters that people write for each other become one; "نحلات" is "نحلة".
    private static int Fold(Span<char> word)
    {
        var length = word.Length;
        if (length > 4 && word.StartsWith(Article))
        {
            word[2..].CopyTo(word);
            length -= 2;
        }

        if (length > 4 && word[(length - 2)..length] is "ات")
            word[--length - 1] = 'ه';
        for (var i = 0; i < length; i++)
            word[i] = word[i] switch { 'ى' => 'ي', 'ة' => 'ه', _ => word[i] };
        return length;
    }
}
