using HintBook.Spoilers;

namespace HintBook.Tests.Spoilers;

/// <summary>Codes told as the turns of a combination lock.</summary>
public class LockTurnsTests
{
    [Theory]
    [InlineData("en", "308", "Right to 3, left past it to 0, right again to 8, and then the handle.")]
    [InlineData("en", "2846", "Turn the knob three times right to 28, then left to 46.")]
    [InlineData("en", "282846", "Clockwise to 28; anticlockwise to 28; clockwise to 46.")]
    [InlineData("en", "372", "Three to the right, seven to the left, two to the right.")]
    [InlineData("en", "372", "Right to three. Then left, to seven. Right to two.")]
    [InlineData("de", "308", "Erst rechts auf 3, links auf 0, rechts auf 8.")]
    [InlineData("de", "2846", "Am Tresor rechts herum auf 28, dann links auf 46.")]
    [InlineData("de", "372", "Drei nach rechts, sieben nach links, zwei nach rechts.")]
    [InlineData("fr", "308", "À droite jusqu'au 3, à gauche 0, à droite 8.")]
    [InlineData("fr", "2846", "Au coffre : à droite jusqu'au 28, à gauche jusqu'au 46.")]
    [InlineData("fr", "416", "Quatre à droite, un à gauche, six à droite.")]
    [InlineData("es", "308", "A la derecha hasta el 3, a la izquierda hasta el 0 y otra vez a la derecha hasta el 8.")]
    [InlineData("es", "2846", "La caja fuerte: derecha hasta el 28, izquierda hasta el 46.")]
    [InlineData("es", "416", "Cuatro a la derecha, uno a la izquierda, seis a la derecha.")]
    [InlineData("ja", "416", "金庫は右に四、左に一、もう一度右に六。")]
    [InlineData("ja", "2846", "ダイヤルを右へ28、左へ46。")]
    [InlineData("ja", "308", "右に三、左に〇、また右に八。")]
    [InlineData("ar", "308", "أدر القرص يمينا حتى ثلاثة ثم يسارا حتى صفر ثم يمينا حتى ثمانية.")]
    [InlineData("ar", "2846", "الخزنة: لليمين إلى ٢٨ ثم لليسار إلى ٤٦.")]
    public void A_number_for_each_side_to_turn_to_is_a_mention(string language, string code, string text) => Assert.NotEmpty(Found(language, code, text));

    [Theory]
    [InlineData("en", "308", "Third street right, past 3, left to the corner, then right to number 8.")]
    [InlineData("en", "528", "Take the second left, then right to number 28, on platform 5.")]
    [InlineData("en", "328", "Left to 2, right to 3, left to 8.")]
    [InlineData("en", "528", "On the left 5 screws, on the right 28.")]
    [InlineData("de", "328", "Die dritte Straße links bis Haus 3, dann rechts bis 2, links bis 8.")]
    [InlineData("de", "328", "Rechts auf 2, links auf 3, rechts auf 8.")]
    [InlineData("fr", "328", "À droite 2, à gauche 3, à droite 8.")]
    [InlineData("es", "328", "Derecha 2, izquierda 3, derecha 8.")]
    [InlineData("ja", "328", "右に二、左に三、右に八。")]
    [InlineData("ar", "328", "يمينا إلى 2 ثم يسارا إلى 3 ثم يمينا إلى 8.")]
    public void Another_order_or_a_way_through_the_town_is_none(string language, string code, string text) => Assert.Empty(Found(language, code, text));

    private static IReadOnlyList<Mention> Found(string language, string code, string text) =>
        new Finder(Hidden.Of((code, SecretKind.Answer, [code])), language).In(text);
}
