namespace HintBook.Audit.Mentions.Languages;

/// <summary>The languages that the audit knows.</summary>
internal static class AuditLanguages
{
    private static readonly AuditLanguage[] Known =
    [
        AuditEnglish.Language, AuditGerman.Language, AuditFrench.Language, AuditSpanish.Language, AuditJapanese.Language, AuditArabic.Language,
    ];

    /// <summary>The language of a tag such as <c>fr-CH</c>; <see cref="AuditLanguage.Unknown"/> for any other.</summary>
    public static AuditLanguage For(string tag)
    {
        var code = tag.Split('-')[0];
        return Array.Find(Known, language => string.Equals(language.Code, code, StringComparison.OrdinalIgnoreCase)) ?? AuditLanguage.Unknown;
    }
}
