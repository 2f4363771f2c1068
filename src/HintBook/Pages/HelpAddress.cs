namespace HintBook.Pages;

/// <summary>Where a reader who is still stuck writes to. A mail comes with what the maker must know, and with no word of what is inside.</summary>
internal static class HelpAddress
{
    private const string Mail = "mailto:";

    /// <summary>The address behind the link on one page, or null where the book has none.</summary>
    /// <param name="site">The site.</param>
    /// <param name="page">The page's name: the maker's sheet says which stage it is.</param>
    public static string? Write(LanguageSite site, string page) => site.Book.Maker?.Help?.Value switch
    {
        { } help when help.StartsWith(Mail, StringComparison.OrdinalIgnoreCase) => WithLetter(help, site, page),
        { } help when Link.Leads(help) => help,
        _ => null,
    };

    // RFC 6068, section 2: fields are joined by &, and lines of the body end in CR LF.
    private static string WithLetter(string help, LanguageSite site, string page)
    {
        (string, string)[] known = [("book", site.Book.Title.Value), ("page", page)];
        var subject = Field("subject", site.Words.Say("mail_subject", known));
        var body = Field("body", site.Words.Say("mail_body", known).ReplaceLineEndings("\r\n"));
        return $"{help}{(help.Contains('?', StringComparison.Ordinal) ? '&' : '?')}{subject}&{body}";
    }

    private static string Field(string name, string text) => $"{name}={Uri.EscapeDataString(text)}";
}
