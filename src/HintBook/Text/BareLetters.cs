namespace HintBook.Text;

/// <summary>
/// Letters without their accents, in small letters: the compatibility decomposition and the full case folding of the Unicode Character
/// Database 15.0 (UnicodeData.txt, CaseFolding.txt) without its combining marks; strokes and hooks, which Unicode doesn't take apart, are
/// left out as well. Written out, since <c>string.Normalize</c> leaves such letters alone under invariant globalization.
/// </summary>
internal static class BareLetters
{
    private const int LatinFrom = 0x00C0;

    private const string Latin =
        "aaaaaaÆceeeeiiiidnooooo\u00D7ouuuuyÞßaaaaaaæceeeeiiiidnooooo\u00F7ouuuuyþy" +
        "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiiiĲĳjjkkkllllllĿ" +
        "ŀllnnnnnnŉnnooooooŒœrrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs" +
        "bbbbƅƅɔccddddƍǝəɛffgɣƕɩikklƛɯnnoooƣƣppʀƨƨʃƪttttuuʊvyyzzʒƹƹƺƻƽƽƾƿ" +
        "ǀǁǂǃǄǅǆǇǈǉǊǋǌaaiioouuuuuuuuuuǝaaaaǢǣggggkkooooʒʒjǱǲǳggƕƿnnaaǼǽoo" +
        "aaaaeeeeiiiioooorrrruuuussttȝȝhhnȡȣȣzzaaeeooooooooyyȴȵȶȷȸȹaccltȿ" +
        "ɀɂɂbuʌeejjqqrryy";

    private const int GreekFrom = 0x0370;

    private const string Greek =
        "ͱͱͳͳʹ\u0375ͷͷ\u0378\u0379ͺͻͼͽ\u037Eϳ\u0380\u0381\u0382\u0383\u0384\u0385α\u0387εηι\u038Bο\u038Dυωιαβγδεζηθικλμνξοπρ\u03A2στυφχψωιυαεηι" +
        "υαβγδεζηθικλμνξοπρσστυφχψωιυουωϗβθυυυφπϗϙϙϛϛϝϝϟϟϡϡϣϣϥϥϧϧϩϩϫϫϭϭϯϯ" +
        "κρσϳθε\u03F6ϸϸσϻϻϼͻͼͽ";

    private const int CyrillicFrom = 0x0400;

    private const string Cyrillic =
        "ееђгєѕііјљњћкиуџабвгдежзииклмнопрстуфхцчшщъыьэюяабвгдежзииклмноп" +
        "рстуфхцчшщъыьэюяееђгєѕііјљњћкиуџ";

    private const int FurtherFrom = 0x1E00;

    private const string Further =
        "aabbbbbbccddddddddddeeeeeeeeeeffgghhhhhhhhhhiiiikkkkkkllllllllmm" +
        "mmmmnnnnnnnnoooooooopppprrrrrrrrssssssssssttttttttuuuuuuuuuuvvvv" +
        "wwwwwwwwwwxxxxyyzzzzzzhtwyẚsẜẝẞẟaaaaaaaaaaaaaaaaaaaaaaaaeeeeeeee" +
        "eeeeeeeeiiiioooooooooooooooooooooooouuuuuuuuuuuuuuyyyyyyyyỻỻỽỽỿỿ" +
        "ααααααααααααααααεεεεεε\u1F16\u1F17εεεεεε\u1F1E\u1F1Fηηηηηηηηηηηηηηηηιιιιιιιιιιιιιιιι" +
        "οοοοοο\u1F46\u1F47οοοοοο\u1F4E\u1F4Fυυυυυυυυ\u1F58υ\u1F5Aυ\u1F5Cυ\u1F5Eυωωωωωωωωωωωωωωωωααεεηηιιοουυωω\u1F7E\u1F7F" +
        "ᾀᾁᾂᾃᾄᾅᾆᾇᾈᾉᾊᾋᾌᾍᾎᾏᾐᾑᾒᾓᾔᾕᾖᾗᾘᾙᾚᾛᾜᾝᾞᾟᾠᾡᾢᾣᾤᾥᾦᾧᾨᾩᾪᾫᾬᾭᾮᾯααᾲᾳᾴ\u1FB5αᾷααααᾼ\u1FBDι\u1FBF" +
        "\u1FC0\u1FC1ῂῃῄ\u1FC5ηῇεεηηῌ\u1FCD\u1FCE\u1FCFιιιι\u1FD4\u1FD5ιιιιιι\u1FDC\u1FDD\u1FDE\u1FDF" +
        "υυυυρρυυυυυυρ\u1FED\u1FEE\u1FEF\u1FF0\u1FF1ῲῳῴ\u1FF5ωῷοοωωῼ\u1FFD\u1FFE\u1FFF";

    /// <summary>Letters that become two or three.</summary>
    private static readonly Dictionary<int, string> Several = new()
    {
        [0x00C6] = "ae",
        [0x00DE] = "th",
        [0x00DF] = "ss",
        [0x00E6] = "ae",
        [0x00FE] = "th",
        [0x0132] = "ij",
        [0x0133] = "ij",
        [0x0149] = "n",
        [0x0152] = "oe",
        [0x0153] = "oe",
        [0x01C4] = "dz",
        [0x01C5] = "dz",
        [0x01C6] = "dz",
        [0x01C7] = "lj",
        [0x01C8] = "lj",
        [0x01C9] = "lj",
        [0x01CA] = "nj",
        [0x01CB] = "nj",
        [0x01CC] = "nj",
        [0x01E2] = "ae",
        [0x01E3] = "ae",
        [0x01F1] = "dz",
        [0x01F2] = "dz",
        [0x01F3] = "dz",
        [0x01FC] = "ae",
        [0x01FD] = "ae",
        [0x0587] = "եւ",
        [0x1E9A] = "aʾ",
        [0x1E9E] = "ss",
        [0x1F80] = "αι",
        [0x1F81] = "αι",
        [0x1F82] = "αι",
        [0x1F83] = "αι",
        [0x1F84] = "αι",
        [0x1F85] = "αι",
        [0x1F86] = "αι",
        [0x1F87] = "αι",
        [0x1F88] = "αι",
        [0x1F89] = "αι",
        [0x1F8A] = "αι",
        [0x1F8B] = "αι",
        [0x1F8C] = "αι",
        [0x1F8D] = "αι",
        [0x1F8E] = "αι",
        [0x1F8F] = "αι",
        [0x1F90] = "ηι",
        [0x1F91] = "ηι",
        [0x1F92] = "ηι",
        [0x1F93] = "ηι",
        [0x1F94] = "ηι",
        [0x1F95] = "ηι",
        [0x1F96] = "ηι",
        [0x1F97] = "ηι",
        [0x1F98] = "ηι",
        [0x1F99] = "ηι",
        [0x1F9A] = "ηι",
        [0x1F9B] = "ηι",
        [0x1F9C] = "ηι",
        [0x1F9D] = "ηι",
        [0x1F9E] = "ηι",
        [0x1F9F] = "ηι",
        [0x1FA0] = "ωι",
        [0x1FA1] = "ωι",
        [0x1FA2] = "ωι",
        [0x1FA3] = "ωι",
        [0x1FA4] = "ωι",
        [0x1FA5] = "ωι",
        [0x1FA6] = "ωι",
        [0x1FA7] = "ωι",
        [0x1FA8] = "ωι",
        [0x1FA9] = "ωι",
        [0x1FAA] = "ωι",
        [0x1FAB] = "ωι",
        [0x1FAC] = "ωι",
        [0x1FAD] = "ωι",
        [0x1FAE] = "ωι",
        [0x1FAF] = "ωι",
        [0x1FB2] = "αι",
        [0x1FB3] = "αι",
        [0x1FB4] = "αι",
        [0x1FB7] = "αι",
        [0x1FBC] = "αι",
        [0x1FC2] = "ηι",
        [0x1FC3] = "ηι",
        [0x1FC4] = "ηι",
        [0x1FC7] = "ηι",
        [0x1FCC] = "ηι",
        [0x1FF2] = "ωι",
        [0x1FF3] = "ωι",
        [0x1FF4] = "ωι",
        [0x1FF7] = "ωι",
        [0x1FFC] = "ωι",
        [0xFB00] = "ff",
        [0xFB01] = "fi",
        [0xFB02] = "fl",
        [0xFB03] = "ffi",
        [0xFB04] = "ffl",
        [0xFB05] = "st",
        [0xFB06] = "st",
        [0xFB13] = "մն",
        [0xFB14] = "մե",
        [0xFB15] = "մի",
        [0xFB16] = "վն",
        [0xFB17] = "մխ",
    };

    /// <summary>The letters that a code point stands for, or null where it is a letter of its own.</summary>
    public static string? SeveralOf(int point) => Several.GetValueOrDefault(point);

    /// <summary>The bare small letter of a code point beyond ASCII; the point itself where there is no other.</summary>
    public static int Of(int point) => point switch
    {
        >= LatinFrom and < LatinFrom + 0x190 => Latin[point - LatinFrom],
        >= GreekFrom and < GreekFrom + 0x90 => Greek[point - GreekFrom],
        >= CyrillicFrom and < CyrillicFrom + 0x60 => Cyrillic[point - CyrillicFrom],
        >= FurtherFrom and < FurtherFrom + 0x200 => Further[point - FurtherFrom],

        // Full width, letters in circles, and the letters and figures of mathematics: runs in the order of the alphabet.
        >= 0xFF01 and <= 0xFF5E => char.ToLowerInvariant((char)(point - 0xFEE0)),
        >= 0x24B6 and <= 0x24E9 => 'a' + ((point - 0x24B6) % 26),
        >= 0x1D400 and <= 0x1D6A3 => 'a' + ((point - 0x1D400) % 26),
        >= 0x1D7CE and <= 0x1D7FF => '0' + ((point - 0x1D7CE) % 10),
        >= 0x1F130 and <= 0x1F149 => 'a' + (point - 0x1F130),
        0x0345 => 0x03B9,
        _ => ComposedLetters.Of(point),
    };
}
