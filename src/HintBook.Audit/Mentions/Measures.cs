using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace HintBook.Audit.Mentions;

/// <summary>What a number in a text may be besides a code.</summary>
internal enum NumberRole
{
    /// <summary>Nothing speaks against a code.</summary>
    Code,

    /// <summary>It may be an ordinary number.</summary>
    Doubtful,

    /// <summary>It is a measurement, a date, a price, a page, a version, or part of a longer number.</summary>
    Ordinary,
}

/// <summary>Tells ordinary numbers from codes by what stands beside them. Asked only where the figures of a code were found.</summary>
internal static partial class Measures
{
    private static readonly char[] SentenceEnds = ['!', '?', '\n', '。', '؟'];
    private const string Signs = "%‰°€$£¥₤″′²³㎝㎜㎏";

    // Units, currencies, months and what pages and years are called; from memory.
    private static readonly FrozenSet<string> Behind = Set(
        "mm cm dm m km µm inch inches ft foot feet yd yard yards mile miles g gr kg mg t lb lbs oz ounce ounces pound pounds l ml cl dl litre litres liter "
        + "liters pint pints gallon gallons millimeter millimeters millimetre millimetres centimeter centimeters centimetre centimetres meter meters metre "
        + "metres kilometer kilometers gram grams gramm kilo kilos kilogram kilograms kilogramm percent percents degree degrees euro euros eur usd gbp chf "
        + "dollar dollars cents penny pence franken franc francs peseta pesetas peso pesos page pages year years month months week weeks day days hour "
        + "hours minute minutes min mins seconds sec mph px em rem pt dpi january february march april june july august september october "
        + "november december bc ad seite seiten jahr jahre jahren monat monate tag tage tagen stunde stunden minuten sekunden sekunde minuto "
        + "minutos segundo segundos seconde secondes prozent grad pfund zoll "
        + "januar februar märz mai juni juli oktober dezember pouce pouces pied pieds mètre mètres centimètre centimètres millimètre millimètres gramme "
        + "grammes litres livre livres ans année années mois jour jours heure heures semaine degré degrés pourcent janvier février mars avril juin "
        + "juillet août septembre octobre novembre décembre metro metros centímetro centímetros milímetro milímetros gramo gramos litro litros libra "
        + "libras página páginas año años meses día días hora horas grado grados enero febrero marzo abril mayo junio julio agosto septiembre octubre "
        + "noviembre diciembre غراما غرامات كيلوغراما مترا أمتار كيلومتر كيلومترا كم لتر لترا لترات ملم مليمترا رطل رطلا أرطال دولارا "
        + "سم مم كغ كيلو غرام متر سنتيمتر سنتيمترا مليمتر دينار درهم دينارا درهما ريال ريالا ليرة جنيه جنيها سنة عاما صفحة يوما "
        + "ساعة دقيقة "
        // What shops and clubs count.
        + "copies orders preorders boxes sets kits parcels customers visitors guests people persons members backers subscribers readers reviews emails "
        + "inhabitants employees bestellungen vorbestellungen kästen schachteln exemplare kunden besucher gäste leute personen mitglieder "
        + "unterstützer leser bewertungen mails einwohner mitarbeiter commandes précommandes coffrets boîtes exemplaires clients visiteurs personnes "
        + "membres lecteurs habitants pedidos reservas cajas ejemplares clientes visitantes personas socios lectores reseñas habitantes "
        + "علب علبة صندوقا صندوقاً نسخة طلبا طلب زبونا زائرا شخصا");

    private static readonly string[] BehindUnspaced =
        ["センチ", "ミリ", "メートル", "キロ", "グラム", "円", "ページ", "頁", "年", "月", "日", "歳", "度", "パーセント", "時間", "秒", "箱", "冊", "ヶ月", "か月", "週"];

    private static readonly FrozenSet<string> Before = Set(
        "model modell modèle modelo typ page pages p pp pg seite seiten página páginas pág fig chapter volume vol form invoice serial version v isbn "
            + "rechnung kapitel seriennummer "
        + "version facture chapitre página factura capítulo صفحة الصفحة صفحات usd eur gbp");

    private static readonly FrozenSet<string> BeforeYears = Set(
        "in since from until till of around about circa ca anno year by im seit von bis um jahr jahre jahres en de depuis dès vers année desde hacia año "
        + "del hasta after before nach vor après avant سنة عام منذ في بعد قبل حتى copyright");

    /// <summary>Whether a unit or the like follows a place in a text.</summary>
    public static bool Follow(string source, int end)
    {
        var rest = source.AsSpan(end).TrimStart(" \u00A0\u202F-");
        if (rest.IsEmpty)
            return false;
        if (Signs.Contains(rest[0], StringComparison.Ordinal))
            return true;
        foreach (var unit in BehindUnspaced)
        {
            if (rest.StartsWith(unit))
                return true;
        }

        // In small letters it is what soldiers do.
        return WordOf(rest) is { Length: > 0 } word && Behind.Contains(word) && !(word == "march" && rest[0] == 'm');
    }

    /// <summary>What the figures in a range of a text may be.</summary>
    public static NumberRole RoleOf(string source, int start, int end)
    {
        if (IsBefore(source, start) || NumberOf().IsMatch(source.AsSpan(end)) || IsPartOfNumber(source, start, end))
            return NumberRole.Ordinary;
        var isMeasure = Follow(source, end);
        if (isMeasure && !IsShown(source, start, end))
            return NumberRole.Ordinary;
        foreach (var match in Groups().EnumerateMatches(source))
        {
            if (match.Index <= start && match.Index + match.Length >= end && match.Length > end - start)
                return NumberRole.Ordinary;
        }

        foreach (var match in Dates().EnumerateMatches(source))
        {
            if (match.Index < end && match.Index + match.Length > start)
                return NumberRole.Ordinary;
        }

        if (isMeasure)
            return NumberRole.Doubtful;
        var range = source.AsSpan(start, end - start);
        if (Decimal().IsMatch(range) && Price().IsMatch(source))
            return NumberRole.Ordinary;
        if (Decimal().IsMatch(range) || (Year().IsMatch(range)
            && (BeforeYears.Contains(WordBefore(source, start)) || Span().IsMatch(source.AsSpan(0, start)) || SpanBehind().IsMatch(source.AsSpan(end)))))
            return NumberRole.Doubtful;
        return NumberRole.Code;
    }

    // "The scale must read 729 grams": what a lock that measures has to show.
    private static bool IsShown(string source, int start, int end)
    {
        var from = start == 0 ? 0 : source.LastIndexOfAny(SentenceEnds, start - 1) + 1;
        var to = source.IndexOfAny(SentenceEnds, end);
        var sentence = source.AsSpan(from, (to < 0 ? source.Length : to) - from);
        return Instrument().IsMatch(sentence) && Shown().IsMatch(sentence);
    }

    private static bool IsBefore(string source, int start)
    {
        var before = source.AsSpan(0, start).TrimEnd(" \u00A0\u202F.-");
        return !before.IsEmpty && ("$€£¥§".Contains(before[^1], StringComparison.Ordinal) || Before.Contains(WordBefore(source, start)));
    }

    // "3.974" and "1,608,354" hold 974 and 608.
    private static bool IsPartOfNumber(string source, int start, int end) =>
        char.IsAsciiDigit(source[start])
        && !source.AsSpan(start, end - start).ContainsAnyExceptInRange('0', '9')
        && end - start > 1
        && ((start > 1 && source[start - 1] is '.' or ',' && char.IsAsciiDigit(source[start - 2]))
            || (end + 1 < source.Length && source[end] is '.' or ',' && char.IsAsciiDigit(source[end + 1])));

    private static string WordBefore(string source, int start)
    {
        var before = source.AsSpan(0, start).TrimEnd(" \u00A0\u202F.-°");
        var from = before.Length;
        while (from > 0 && char.IsLetter(before[from - 1]))
            from--;
        return before[from..].ToString().ToLowerInvariant();
    }

    private static string WordOf(ReadOnlySpan<char> rest)
    {
        var end = 0;
        while (end < rest.Length && char.IsLetter(rest[end]))
            end++;
        return rest[..end].ToString().ToLowerInvariant();
    }

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);

    // Dates, sizes, "7 1/4", versions: with a group of several figures in them.
    [GeneratedRegex(
        @"(?<![0-9.,])[0-9][0-9.,]*( [0-9]{3})*\s(out of|of|von|sur|de|من)\s(?=[0-9][0-9., ]*[0-9])[0-9]([0-9.,]*[0-9])?( [0-9]{3})*(?![0-9%])"
        + @"|(?<=\b(am|vom|le|du|el|del|on)\s)([1-9]|[0-2][0-9]|3[01])[./](0?[1-9]|1[0-2])(?![0-9])"
        + @"|(?<![0-9])([0-9]{4}(?<a>[-./])[0-9]{1,2}\k<a>[0-9]{1,2}|[0-9]{1,2}(?<b>[-./])[0-9]{1,2}\k<b>[0-9]{4}|[0-9]{2}(?<c>[./])[0-9]{2}\k<c>[0-9]{2}"
        + @"|[0-9]+([.,][0-9]+)?\s*[×✕*x]\s*[0-9]+([.,][0-9]+)?|[0-9]+\s[0-9]+/[0-9]+|v?[0-9]+\.[0-9]{2,}\.[0-9]+|v?[0-9]+\.[0-9]+\.[0-9]{2,})(?![0-9])",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Dates();

    // "978-1-7429-5083-6", "+49 7429 5083": long numbers in groups, such as those of books and telephones.
    [GeneratedRegex(
        @"(?<![0-9-])(?=[0-9-]*[0-9]{2})[0-9]{1,7}(-[0-9]{1,7}){3,6}(?![0-9-])|\+[0-9]{1,3}([ -][0-9]{2,7}){2,5}",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Groups();

    // "We made 264 of these."
    [GeneratedRegex(
        @"^\s(of (these|those|the|our|them|my)|dieser|unserer|solcher|de (ces|nos|ceux)|de (estos|estas|nuestros|nuestras|esos|esas)|من (هذه|هذا|تلك))\b",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        matchTimeoutMilliseconds: 10_000)]
    private static partial Regex NumberOf();

    [GeneratedRegex(@"^[0-9]+[.,][0-9]+$(?<![.,][0-9]{3})", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Decimal();

    // What costs something: "postage is 30.71".
    [GeneratedRegex(
        @"\b(prices?|costs?|postage|cheques?|pay|paid|fee|bill|invoice|deposit|preis|kostet|kosten|versand|porto|zahlen|überweisen|prix|coûtent|coûte"
        + @"|payer|payez|réglez|facture|precio|cuestan?|envío|pague|pagar)\b|送料|料金|代金|ثمن|سعر|أجرة|دفع|يكلف",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Price();

    // What measures, and what is said of it where it is a lock. From memory.
    [GeneratedRegex(
        @"\b(scales?|balance|gauge|meter|counter|pan|dial|pointer|needle|ruler|weights?|slider|\w*waage|zähler|zählwerk|zeiger|schale|gewicht|laufgewicht"
        + @"|skala|scheibe|lineal|anzeige|angezeigt|manometer|compteur|aiguille|plateau|poids|curseur|cadran|jauge|règle|bascule|affichent|balanza|contador"
        + @"|aguja|plato|pesa|cursor|esfera|regla|báscula|medidor|romana|indicador|vean)\b|秤|はかり|目盛|針|皿|おもり|メーター|つまみ|天秤"
        + "|ميزان|عد[\u0651]?اد|مؤشر|كف[\u0651]?ة|الثقل|قرص|مسطرة|حتى يظهر",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Instrument();

    [GeneratedRegex(
        @"\b(must|has to|have to|should|needs? to|reads?|says?|shows?|shown|opens?|releases|until|set|turn|slide|load|wind|push|exactly|clicks?"
        + @"|muss|soll|sollen|zeigen|zeigt|anzeigt|angezeigt|öffnet|stell\w*|dreh\w*|schieb\w*|kurbel\w*|gehör\w*|bis|leg\w*|klickt|steht|stehen"
        + @"|doit|doivent|marque\w*|affich\w*|s['’]ouvre|jusqu\w*|tournez|posez|poussez|glisser|montez|réglez|clique|arrêter"
        + @"|debe|tiene que|marca\w*|hasta|se abre|gire|suba|empuje|corra|ponga|clic|quedarse)\b"
        + "|指|合わせ|開|回|のせ|載せ|まで|止め|動か|鳴|يجب|ينبغي|يشير|حتى|ينفتح|أدر|ضع|ارفع|حر[\u0651]?ك|ادفع|يظهر|يقف|نقرة",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Shown();

    // "From 1894 to 1923".
    [GeneratedRegex(
        @"(from|von|de|من)\s+\d{4}\s+(to|until|till|bis|à|a|إلى)\s+$",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Span();

    [GeneratedRegex(
        @"^\s+(to|until|till|bis|à|a|إلى)\s+\d{4}(?!\d)",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        matchTimeoutMilliseconds: 10_000)]
    private static partial Regex SpanBehind();

    [GeneratedRegex("^([1١][4-9٤-٩]|[2٢][0٠])[0-9٠-٩]{2}$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Year();
}
