using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>Tells hours at which somebody is there from the hour of a clock that is to be set. Words chosen by hand: common practice, no source.</summary>
internal sealed class OpeningHours(SearchLanguage language)
{
    private const int Around = 90;
    private static readonly char[] Ends = ['!', '?', '\n', '。', '؟'];
    private readonly (string[] Words, string[] Days) said = Of(language.Code);

    /// <summary>Whether the sentence around a place speaks of opening hours: of opening, or of two days of the week.</summary>
    public bool Has(string source, int at)
    {
        if (said.Words.Length == 0)
            return false;
        var start = Math.Max(source.LastIndexOfAny(Ends, at) + 1, at - Around);
        var end = source.IndexOfAny(Ends, at);
        var sentence = source.AsSpan(start, Math.Min(end < 0 ? source.Length : end, at + Around) - start);
        foreach (var word in said.Words)
        {
            if (sentence.Contains(word, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        var days = 0;
        foreach (var day in said.Days)
            days += sentence.Contains(day, StringComparison.Ordinal) ? 1 : 0;
        return days > 1;
    }

    private static (string[], string[]) Of(string code) => code switch
    {
        "en" => (
            ["opening hours", "opening times", "is open from", "are open from", "we open", "office hours", "by appointment", "visiting hours"],
            ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"]),
        "de" => (
            ["öffnungszeit", "geöffnet", "sprechzeit", "sprechstunde", "nach vereinbarung", "erreichbar", "besuchszeit"],
            ["Mo ", "Di ", "Mi ", "Do ", "Fr ", "Sa ", "Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag", "Samstag", "Sonntag"]),
        "fr" => (
            ["heures d'ouverture", "heures d’ouverture", "horaires", "ouvert de", "ouverte de", "ouvert du", "ouverte du", "est ouvert", "sur rendez-vous"],
            ["lundi", "mardi", "mercredi", "jeudi", "vendredi", "samedi", "dimanche"]),
        "es" => (
            ["horario", "abierto de", "abierta de", "abre de", "abrimos", "cita previa", "atendemos"],
            ["lunes", "martes", "miércoles", "jueves", "viernes", "sábado", "domingo"]),
        "ja" => (["営業", "開館", "定休", "受付", "開店"], ["月曜", "火曜", "水曜", "木曜", "金曜", "土曜", "日曜"]),
        "ar" => (["ساعات العمل", "مفتوح من", "أوقات الدوام", "يفتح من", "نفتح"], ["الأحد", "الاثنين", "الثلاثاء", "الأربعاء", "الخميس", "الجمعة", "السبت"]),
        _ => ([], []),
    };
}
