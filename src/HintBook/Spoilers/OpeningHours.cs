using System.Text.RegularExpressions;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>Tells hours at which somebody is there from the hour of a clock that is to be set. Words chosen by hand: common practice, no source.</summary>
internal sealed partial class OpeningHours(SearchLanguage language)
{
    private const int Around = 90;
    private static readonly char[] Ends = ['!', '?', '\n', '。', '؟'];
    private readonly (string[] Words, string[] Days) said = Of(language.Code);
    private readonly string[] timetable = TimetableOf(language.Code);

    /// <summary>Whether the sentence around a place speaks of opening hours: of opening, or of two days of the week.</summary>
    public bool Has(string source, int at)
    {
        if (said.Words.Length == 0)
            return false;
        var (start, end) = Sentence(source, at);
        var sentence = source.AsSpan(start, end - start);
        foreach (var word in said.Words)
        {
            if (sentence.Contains(word, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        if (IsOfTwo(source, start, end) && HasTimetable(sentence))
            return true;
        var days = 0;
        foreach (var day in said.Days)
            days += sentence.Contains(day, StringComparison.Ordinal) ? 1 : 0;
        return days > 1;
    }

    /// <summary>Whether a place stands in a timetable: beside another time of the day in its sentence, as one end of a span, or beside words of trains,
    /// shops and meals.</summary>
    public bool IsTimetable(string source, in Mention mention)
    {
        var (start, end) = Sentence(source, mention.Start);
        var sentence = source.AsSpan(start, end - start);
        var told = source.AsSpan(mention.Start, mention.End - mention.Start);
        foreach (var match in Clock().EnumerateMatches(sentence))
        {
            var (from, to) = (start + match.Index, start + match.Index + match.Length);
            if ((to <= mention.Start || from >= mention.End) && !told.SequenceEqual(sentence.Slice(match.Index, match.Length)))
                return true;
        }

        foreach (var match in Span().EnumerateMatches(sentence))
        {
            if (mention.Start >= start + match.Index && mention.Start <= start + match.Index + match.Length)
                return true;
        }

        return HasTimetable(sentence);
    }

    private bool HasTimetable(ReadOnlySpan<char> sentence)
    {
        foreach (var word in timetable)
        {
            if (sentence.Contains(word, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }

    // Two times of the day in a sentence.
    private static bool IsOfTwo(string source, int start, int end)
    {
        var count = 0;
        foreach (var _ in Clock().EnumerateMatches(source.AsSpan(start, end - start)))
            count++;
        return count > 1;
    }

    private static (int Start, int End) Sentence(string source, int at)
    {
        var start = Math.Max(source.LastIndexOfAny(Ends, at) + 1, at - Around);
        var end = source.IndexOfAny(Ends, at);
        return (start, Math.Min(end < 0 ? source.Length : end, at + Around));
    }

    [GeneratedRegex(
        @"(?<![\d:.])(\d|1\d|2[0-4]|[٠-٩]{1,2})\s?([:.h]|時|uhr\s|:)\s?([0-5]\d|[٠-٥][٠-٩])(?![\d:])",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        10_000)]
    private static partial Regex Clock();

    // From one hour to another: a clock that is to be set seldom has two.
    [GeneratedRegex(
        @"\b(from|between|von|zwischen|desde|entre)\s[^.!?,;\n]{1,25}\s(to|till|until|and|bis|und|hasta|y|et)\s|\bde\s[^.!?,;\n]{1,25}\sheures?\sà\s"
        + @"|\bمن\s[^.،\n]{1,25}\s(حتى|إلى)\s|時[^。]{0,4}から",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        10_000)]
    private static partial Regex Span();

    private static string[] TimetableOf(string code) => code switch
    {
        "en" =>
            [
                "train leaves", "trains leave", "bus leaves", "ferry leaves", "departs", "arrives at", "every day at", "daily at", "workshop opens",
                "workshop closes", "shop opens", "shop closes", "museum opens", "museum closes", "lunch at", "tour begins", "tours begin", "post goes at",
            ],
        "de" =>
            [
                "zug fährt", "züge fahren", "bus fährt", "fähre", "abfahrt", "ankunft", "täglich um", "werkstatt öffnet", "werkstatt schließt",
                "laden öffnet", "laden schließt", "führung", "kasse schließt", "mittagspause",
            ],
        "fr" =>
            [
                "train part", "trains partent", "bus part", "départ", "arrivée", "tous les jours à", "atelier ouvre", "atelier ferme", "boutique ouvre",
                "boutique ferme", "visite guidée", "visites",
            ],
        "es" =>
            [
                "tren sale", "trenes salen", "autobús sale", "salida a las", "llegada", "todos los días a", "taller abre", "taller cierra", "tienda abre",
                "tienda cierra", "visita guiada", "visitas",
            ],
        "ja" => ["列車", "電車", "バスは", "発車", "到着", "毎日", "閉館", "昼休み", "見学"],
        "ar" => ["القطار", "القطارات", "الحافلة", "يوميا", "كل يوم", "تغلق الورشة", "الجولة"],
        _ => [],
    };

    private static (string[], string[]) Of(string code) => code switch
    {
        "en" => (
            [
                "opening hours", "opening times", "is open from", "are open from", "we open", "we close", "office hours", "by appointment", "visiting hours",
                "on mondays", "on tuesdays", "on wednesdays", "on thursdays", "on fridays", "on saturdays", "on sundays",
            ],
            ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"]),
        "de" => (
            [
                "öffnungszeit", "geöffnet", "sprechzeit", "sprechstunde", "nach vereinbarung", "erreichbar", "besuchszeit", "wir öffnen", "wir schließen",
                "montags", "dienstags", "mittwochs", "donnerstags", "freitags", "samstags", "sonntags",
            ],
            ["Mo ", "Di ", "Mi ", "Do ", "Fr ", "Sa ", "Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag", "Samstag", "Sonntag"]),
        "fr" => (
            [
                "heures d'ouverture", "heures d’ouverture", "horaires", "ouvert de", "ouverte de", "ouvert du", "ouverte du", "est ouvert",
                "sur rendez-vous", "tournée",
            ],
            ["lundi", "mardi", "mercredi", "jeudi", "vendredi", "samedi", "dimanche"]),
        "es" => (
            [
                "horario", "abierto de", "abierta de", "abre de", "abrimos", "cita previa", "atendemos", "cerramos",
                "los lunes", "los martes", "los miércoles", "los jueves", "los viernes", "los sábados", "los domingos",
            ],
            ["lunes", "martes", "miércoles", "jueves", "viernes", "sábado", "domingo"]),
        "ja" => (["営業", "開館", "定休", "受付", "開店", "まで開い", "閉まり", "閉店"], ["月曜", "火曜", "水曜", "木曜", "金曜", "土曜", "日曜"]),
        "ar" => (
            ["ساعات العمل", "أوقات استقبال", "مواعيد", "مفتوح من", "مفتوحة من", "تفتح من", "أوقات الدوام", "يفتح من", " نفتح", " نغلق"],
            ["الأحد", "الاثنين", "الثلاثاء", "الأربعاء", "الخميس", "الجمعة", "السبت"]),
        _ => ([], []),
    };
}
