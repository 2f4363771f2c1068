namespace HintBook.Benchmarks.Whole;

/// <summary>The checkout of the project that this program was built in.</summary>
internal static class Checkout
{
    /// <summary>Its top folder.</summary>
    public static string Root { get; } = Find();

    private static string Find()
    {
        for (var folder = AppContext.BaseDirectory; folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (File.Exists(Path.Combine(folder, "HintBook.sln")))
                return folder;
        }

        throw new InvalidOperationException("Run the benchmarks inside a checkout of the project.");
    }
}
