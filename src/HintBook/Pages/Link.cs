namespace HintBook.Pages;

/// <summary>Where links in an author's texts may lead.</summary>
internal static class Link
{
    /// <summary>Whether a link may lead to an address: <c>http</c>, <c>https</c>, <c>mailto</c>, or a place on the same page.</summary>
    public static bool Leads(string address) => address.StartsWith('#') || LeadsOut(address)
        || address.StartsWith("mailto:", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether an address leads to another site.</summary>
    public static bool LeadsOut(string address) =>
        address.StartsWith("https://", StringComparison.OrdinalIgnoreCase) || address.StartsWith("http://", StringComparison.OrdinalIgnoreCase);
}
