namespace HintBook.Audit;

/// <summary>
/// Reads a finished site as a stranger would, from its files alone, and says what is wrong. It shares no code with what
/// wrote them: a mistake there is not repeated here.
/// </summary>
public static class SiteAudit
{
    /// <summary>Audits a folder. The same folder gives the same report; nothing in a file makes it throw.</summary>
    /// <param name="folder">The site: what would be uploaded.</param>
    /// <param name="table">Words that must not be seen where, or null to check the rest alone.</param>
    public static AuditReport Run(string folder, AuditTable? table) => new SiteReading(folder, table).End();
}
