using System.Collections.Frozen;

namespace HintBook.Cli.Usage;

/// <summary>A command to begin with, for each verb.</summary>
internal static class Examples
{
    private static readonly FrozenDictionary<string, string> ByVerb = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["begin"] = "hintbook begin my-box --title \"The Tea Caddy\" --maker \"Oak Street Boxes\" --language en",
        ["draft"] = "hintbook draft my-box --from my-box/clips/solution.en.vtt --chapters chapters.txt",
        ["check"] = "hintbook check my-box --notes",
        ["publish"] = "hintbook publish my-box --out my-site",
        ["cards"] = "hintbook cards my-box --paper letter",
        ["print"] = "hintbook print my-box booklet reset",
        ["map"] = "hintbook map my-box --out map.svg --spoiler-free",
        ["solve"] = "hintbook solve my-box --time 60",
        ["reset"] = "hintbook reset my-box",
        ["prove"] = "hintbook prove my-box --notes",
        ["clue"] = "hintbook clue 0420 --as number-words",
        ["sittings"] = "hintbook sittings my-box",
        ["letter"] = "hintbook letter my-box 83wf3vhk --step clue --copy 007",
        ["listing"] = "hintbook listing my-box --out for-the-shop",
        ["testwalk"] = "hintbook testwalk my-box --out walk.pdf",
        ["packing"] = "hintbook packing my-box --copy 007 --out packing.pdf",
        ["schema"] = "hintbook schema --out my-box/schemas --replace",
        ["theme"] = "hintbook theme my-box parlour",
        ["audit"] = "hintbook audit my-box/published --book my-box",
        ["visit"] = "hintbook visit my-box",
        ["copies"] = "hintbook copies my-box --add 20",
        ["workbench"] = "hintbook workbench my-box",
        ["guide"] = "hintbook guide HB2101",
        ["completions"] = "hintbook completions bash > ~/.local/share/bash-completion/completions/hintbook",
        ["man"] = "hintbook man > hintbook.1",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The example of a verb.</summary>
    /// <param name="verb">Its name.</param>
    /// <exception cref="KeyNotFoundException">It has none.</exception>
    public static string Of(string verb) => ByVerb[verb];
}
