using HintBook.Books;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>Dangers as templates get them: each with its sign, what the maker adds, and the usual words.</summary>
internal static class CautionView
{
    /// <summary>The dangers in their order; null for none.</summary>
    public static ScriptArray? List(IEnumerable<Caution> cautions, LanguageSite site)
    {
        var list = View.List(cautions.Select(caution => View.Of(
            ("kind", Cautions.NameOf(caution.Kind)),
            ("sign", CautionSigns.Of(caution.Kind)),
            ("name", site.Words.NameOf(caution.Kind)),
            ("text", site.Words.TextOf(caution.Kind, site.Age)),
            ("note", caution.Note),
            ("lang", site.LanguageOf(caution)))));
        return list.Count == 0 ? null : list;
    }
}
