namespace HintBook.Tests.House;

/// <summary>The project's own folder, found from where the tests run.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string Example => Path.Combine(Root, "content-example");

    private static string Find()
    {
        for (var folder = AppContext.BaseDirectory; folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (File.Exists(Path.Combine(folder, "HintBook.sln")))
                return folder;
        }

        throw new InvalidOperationException("The tests must run inside a checkout of the project: no HintBook.sln above them.");
    }
}
