using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Reading.Shapes;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads the ways through the box that the author keeps.</summary>
public static class Rehearsals
{
    /// <summary>The folder that holds them.</summary>
    public const string Folder = "rehearsals";

    /// <summary>The ending of their files.</summary>
    public const string Ending = ".yaml";

    /// <summary>All of them, by file name.</summary>
    internal static ImmutableArray<KeptRehearsal> In(BookFolder folder, OwnWords own, List<Finding> findings) =>
    [
        .. from name in folder.FilesIn(Folder, findings) ?? []
           where name.EndsWith(Ending, StringComparison.Ordinal)
           let file = folder.ReadText($"{Folder}/{name}", findings)
           where file is not null
           let read = In(file, own, findings)
           where read is not null
           select read,
    ];

    /// <summary>The one in a text; null where the text can't be read.</summary>
    /// <param name="file">The text.</param>
    /// <param name="findings">Where findings go.</param>
    public static KeptRehearsal? In(SourceFile file, List<Finding> findings) => In(file, OwnWords.Unknown, findings);

    private static KeptRehearsal? In(SourceFile file, OwnWords own, List<Finding> findings)
    {
        if (YamlFile.Read(file.Whole, findings) is not { } node)
            return null;
        ShapeCheck.Fits(node, BookShapes.Rehearsal, "a rehearsal", own, findings);
        return node is not YamlMap keys ? null : new KeptRehearsal
        {
            File = file,
            Title = keys.Text("title")?.Value ?? Path.GetFileNameWithoutExtension(file.Path),
            Steps = [.. keys.Items("steps").Select(Step).OfType<PlayedStep>()],
            Then = Moves.Conditions(keys["then"]),
        };
    }

    // What doesn't fit has its finding already.
    private static PlayedStep? Step(YamlNode item) => item switch
    {
        YamlScalar { IsEmpty: false } stage => new PlayedStep.Made { At = stage.At, Stage = stage.Located },
        YamlMap map when map.Text("part") is { } part => map.Text("to") is { } to ? new PlayedStep.Moved(part, to) { At = part.At } : null,
        YamlMap map when (map.Text("move") ?? map.Text("stage")) is { } named => new PlayedStep.Made
        {
            At = named.At,
            Stage = map.Text("stage"),
            Move = map.Text("move"),
            Back = map["back"] is YamlMap back ? [.. Moves.ChangesIn(back)] : [],
        },
        _ => null,
    };
}
