using HintBook.Publishing;
using HintBook.Reading;

namespace HintBook.Starting;

/// <summary>The example, The Beekeeper's Cabinet, to begin from: a whole book about one box, with its photos.</summary>
public static class ExampleBook
{
    /// <summary>What it is called where a maker asks for it.</summary>
    public const string Name = "beekeeper";

    private const string Folder = "example/";

    /// <summary>Writes a copy into a folder that doesn't exist yet or is empty. Its list of printed addresses stays behind: this is a new book.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="words">What the maker says of it.</param>
    public static void In(string folder, BookWords words)
    {
        foreach (var (path, resource) in Embedded.In(Folder))
        {
            if (path == "book.yaml")
                SingleFile.Write(Path.Combine(folder, path), words.In(Embedded.Text(resource)));
            else
                SingleFile.Write(Path.Combine(folder, path), Embedded.Bytes(resource));
        }

        foreach (var schema in Schemas.All)
            SingleFile.Write(Path.Combine(folder, "schemas", schema.Name), schema.Text);
    }
}
