namespace HintBook.Browser.Tests.Reading;

/// <summary>A failure that names every complaint in full, not only the beginning of the first few.</summary>
internal static class Complaint
{
    public static void None(IReadOnlyCollection<string> complaints) => Assert.True(complaints.Count == 0, string.Join('\n', complaints));
}
