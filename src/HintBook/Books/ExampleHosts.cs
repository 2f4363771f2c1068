namespace HintBook.Books;

/// <summary>
/// Hosts that are reserved for examples and tests: no site can ever stand there, so no card that carries one can be in use
/// (RFC 2606, sections 2 and 3).
/// </summary>
public static class ExampleHosts
{
    private static readonly string[] TopLevel = ["test", "example", "invalid", "localhost"];
    private static readonly string[] SecondLevel = ["example.com", "example.net", "example.org"];

    /// <summary>Whether an address lies on one of them; false for null and for what is no address.</summary>
    public static bool IsExample(string? address)
    {
        if (!Uri.TryCreate(address, UriKind.Absolute, out var uri))
            return false;
        var host = uri.IdnHost.TrimEnd('.').ToLowerInvariant();
        return TopLevel.Contains(host.Split('.')[^1]) || SecondLevel.Any(name => host == name || host.EndsWith("." + name, StringComparison.Ordinal));
    }
}
