namespace HintBook.Tests.House;

/// <summary>A README whose end is written from the code: a test holds it to what the code says, or writes it again.</summary>
internal static class WrittenFromTheCode
{
    private const string Marker = "<!-- written from the code; HINTBOOK_ACCEPT=1 writes it again -->\n";

    /// <summary>Compares what stands below the marker in a file; with <c>HINTBOOK_ACCEPT=1</c> in the environment it is written first.</summary>
    public static void EndsWith(string end, params string[] path)
    {
        var file = Path.Combine([Repository.Root, .. path]);
        var written = File.ReadAllText(file).ReplaceLineEndings("\n");
        var start = written.IndexOf(Marker, StringComparison.Ordinal) + Marker.Length;
        Assert.True(start >= Marker.Length, $"{file} lacks the line {Marker}");
        if (Environment.GetEnvironmentVariable("HINTBOOK_ACCEPT") == "1")
            File.WriteAllText(file, written[..start] + end);

        Assert.Equal(end, File.ReadAllText(file).ReplaceLineEndings("\n")[start..]);
    }
}
