using System.Collections.Immutable;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions.Languages;

/// <summary>The words in which times are said. From memory.</summary>
internal static class TimesIn
{
    public static ImmutableArray<Meaning> English { get; } =
    [
        new(Sign.Fraction, "quarter, quarter of an hour", 15),
        new(Sign.Fraction, "half, half an hour, half hour", 30),
        new(Sign.Fraction, "three quarters, three quarters of an hour", 45),
        new(Sign.Fraction | Sign.To, "quarter of", 15),
        new(Sign.To, "to, before, till, until, shy of, short of, away from, ahead of, from, minutes of, minutes from, minutes short of, minutes shy "
            + "of, less, minus"),
        new(Sign.Past, "past, after, gone, beyond"),
        new(Sign.Hour, "o’clock, h"),
        new(Sign.Minute, "minute, minutes, min, mins"),
        new(Sign.Length, "hour, hours, second, seconds, hr, hrs"),
        new(Sign.Number, "noon, midday, midnight", 12),
        new(Sign.PartOf, "half", 30),
        new(Sign.Remaining, "in, another, only"),
        new(Sign.Hand, "hand, hands"),
        new(Sign.Long, "long, longer, large, larger, big, bigger, tall"),
        new(Sign.Long | Sign.Hand, "minute hand"),
        new(Sign.Short, "short, shorter, small, smaller, little, stubby"),
        new(Sign.Short | Sign.Hand, "hour hand"),
        new(Sign.Before, "before, just before, almost, nearly, not quite, short of, shy of, approaching, close to, most of the way to, about to reach"),
        new(Sign.Between, "between"),
        new(Sign.Clock, "clock, clocks, watch, dial, hands, hand, time, face, hour, o’clock, chimes, strikes, am, pm, a.m, p.m, set, turn"),
    ];

    public static ImmutableArray<Meaning> German { get; } =
    [
        new(Sign.Fraction | Sign.PartOf, "viertel", 15),
        new(Sign.Fraction, "viertelstunde", 15),
        new(Sign.Fraction, "halbe stunde, halben stunde", 30),
        new(Sign.Fraction, "dreiviertelstunde", 45),
        new(Sign.PartOf, "halb", 30),
        new(Sign.PartOf, "dreiviertel, drei viertel", 45),
        new(Sign.To, "vor, bis"),
        new(Sign.Past, "nach, und"),
        new(Sign.Hour, "uhr, h"),
        new(Sign.Minute, "minute, minuten, min"),
        new(Sign.Length, "stunde, stunden, sekunde, sekunden"),
        new(Sign.Number, "mittag, mitternacht", 12),
        new(Sign.Remaining, "in, noch, fehlen"),
        new(Sign.Hand, "zeiger, zeigers, zeigern"),
        new(Sign.Long, "große, großer, großen, lange, langer, langen, längere, größere"),
        new(Sign.Long | Sign.Hand, "minutenzeiger, minutenzeigers"),
        new(Sign.Short, "kleine, kleiner, kleinen, kurze, kurzer, kurzen, kürzere, kleinere"),
        new(Sign.Short | Sign.Hand, "stundenzeiger, stundenzeigers"),
        new(Sign.Before, "vor, kurz vor, knapp vor, fast, beinahe, nahezu"),
        new(Sign.Between, "zwischen"),
        new(Sign.Clock, "uhr, uhren, zeiger, zifferblatt, uhrzeit, zeit, wecker"),
    ];

    public static ImmutableArray<Meaning> French { get; } =
    [
        new(Sign.Fraction, "quart, quart d’heure", 15),
        new(Sign.Fraction, "demie, demi, demi-heure", 30),
        new(Sign.Fraction, "trois quarts", 45),
        new(Sign.To, "moins, avant"),
        new(Sign.Past, "et, passé, passées, passés, après"),
        new(Sign.Hour, "heure, heures, h"),
        new(Sign.Minute, "minute, minutes, mn, min"),
        new(Sign.Number, "midi, minuit", 12),
        new(Sign.Remaining, "dans, encore, manque, reste"),
        new(Sign.Hand, "aiguille, aiguilles"),
        new(Sign.Long, "grande, longue"),
        new(Sign.Long | Sign.Hand, "aiguille des minutes"),
        new(Sign.Short, "petite, courte"),
        new(Sign.Short | Sign.Hand, "aiguille des heures"),
        new(Sign.Before, "avant, presque, juste avant, peu avant, pas tout à fait"),
        new(Sign.Between, "entre"),
        new(Sign.Clock, "horloge, horloges, pendule, montre, cadran, aiguille, aiguilles, réveil, heure"),
    ];

    public static ImmutableArray<Meaning> Spanish { get; } =
    [
        // Also the fourth.
        new(Sign.Fraction | Sign.Ordinal, "cuarto", 15),
        new(Sign.Fraction, "cuarto de hora", 15),
        new(Sign.Fraction, "media, media hora", 30),
        new(Sign.Fraction, "tres cuartos", 45),
        new(Sign.To, "menos, para, antes de"),
        new(Sign.Past, "y, pasadas, con, después de"),
        new(Sign.Hour, "hora, horas, h, en punto"),
        new(Sign.Minute, "minuto, minutos, min"),
        new(Sign.Number, "mediodía, medianoche", 12),
        new(Sign.Remaining, "faltan, falta, quedan, queda, en, dentro de"),
        new(Sign.Hand, "manecilla, manecillas, aguja, agujas"),
        new(Sign.Long, "grande, larga, mayor"),
        new(Sign.Long | Sign.Hand, "minutero, aguja de los minutos, manecilla de los minutos"),
        new(Sign.Short, "pequeña, corta, chica, menor"),
        new(Sign.Short | Sign.Hand, "horario, aguja de las horas, manecilla de las horas, horaria"),
        new(Sign.Before, "casi, antes de, poco antes de, cerca de, a punto de"),
        new(Sign.Between, "entre"),
        new(Sign.Clock, "reloj, relojes, manecilla, manecillas, aguja, agujas, esfera, hora"),
    ];

    public static ImmutableArray<Meaning> Japanese { get; } =
    [
        new(Sign.Fraction, "半", 30),
        new(Sign.To, "前, で, まえ"),
        new(Sign.Past, "過ぎ, すぎ, 過"),
        new(Sign.Hour, "時, じ"),
        new(Sign.Minute, "分, 分で, 分の"),
        new(Sign.Length, "時間, 分間, 秒"),
        new(Sign.Number, "正午, 零時", 12),
        new(Sign.Remaining, "あと, 後"),
        new(Sign.Hand, "針"),
        new(Sign.Long | Sign.Hand, "長い針, 長針, 大きい針, 大きな針, 分針"),
        new(Sign.Short | Sign.Hand, "短い針, 短針, 小さい針, 小さな針, 時針"),
        new(Sign.Before, "手前, 少し手前, の少し手前, のすぐ手前, の手前, の前, ちょっと前"),
        new(Sign.Between, "間, あいだ"),
        new(Sign.Clock, "時計, 針, 文字盤, 時刻"),
    ];

    public static ImmutableArray<Meaning> Arabic { get; } =
    [
        new(Sign.Fraction, "ربع, ربعا, ربع ساعة", 15),
        new(Sign.Fraction, "ثلث, ثلثا, ثلث ساعة", 20),
        new(Sign.Fraction, "نصف, نصفا, نصف ساعة", 30),
        new(Sign.To, "إلا, قبل, على, حتى"),
        new(Sign.Past, "بعد"),
        new(Sign.Hour, "ساعة"),
        new(Sign.Minute, "دقيقة, دقائق"),
        new(Sign.Number, "منتصف الليل, منتصف النهار", 12),
        new(Sign.Remaining, "بقي, بقيت, يبقى, تبقى, باق, بعد"),
        new(Sign.Hand, "عقرب, عقارب, عقربا, عقربين"),
        new(Sign.Long, "طويل, كبير, أطول, أكبر, الدقائق"),
        new(Sign.Short, "قصير, صغير, أقصر, أصغر, الساعات"),
        new(Sign.Before, "قبل, قبيل, يكاد, تكاد, قرب, قريب, تقريبا"),
        new(Sign.Between, "بين"),
        new(Sign.Clock, "ساعة, عقرب, عقارب, منبه"),
        new(Sign.Number, "واحدة", 1),
        .. "أولى ثانية ثالثة رابعة خامسة سادسة سابعة ثامنة تاسعة عاشرة".Split(' ').Select((hour, i) => new Meaning(Sign.Number | Sign.Ordinal, hour, i + 1)),
        new(Sign.Number | Sign.Ordinal, "حادية عشرة", 11),
        new(Sign.Number | Sign.Ordinal, "ثانية عشرة", 12),
    ];
}
