using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using HintBook.Text;

namespace HintBook.Publishing.Unchanged;

/// <summary>Findings with the texts that they point into, each text once.</summary>
/// <param name="Files">The texts.</param>
/// <param name="All">The findings in their order.</param>
internal sealed record WrittenFindings(ImmutableArray<WrittenFile> Files, ImmutableArray<WrittenFinding> All);

/// <summary>A text.</summary>
internal sealed record WrittenFile(string Path, string Text, bool IsUnread);

/// <summary>A stretch of a text.</summary>
/// <param name="File">Which of the texts.</param>
/// <param name="Start">The first offset.</param>
/// <param name="End">The offset after the last one.</param>
internal sealed record WrittenPlace(int File, int Start, int End);

/// <summary>A second place.</summary>
internal sealed record WrittenRelated(WrittenPlace At, string Message);

/// <summary>A finding.</summary>
internal sealed record WrittenFinding(
    string Id, Severity Severity, string Title, WrittenPlace At, string Message, string? Help, ImmutableArray<WrittenRelated> Related);

/// <summary>Writes findings so that they can be printed again as they were, with the lines that they point to.</summary>
internal sealed class KeptFindings : JsonConverter<Findings>
{
    /// <inheritdoc/>
    public override Findings Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var written = JsonSerializer.Deserialize(ref reader, WrittenFindingsJson.Default.WrittenFindings) ?? throw new JsonException();
        SourceFile[] files = [.. written.Files.Select(file => file.IsUnread ? SourceFile.Unread(file.Path, file.Text) : new(file.Path, file.Text))];
        return new([.. written.All.Select(finding => new Finding
        {
            Code = new(finding.Id, finding.Severity, finding.Title),
            At = Place(finding.At),
            Message = finding.Message,
            Help = finding.Help,
            Related = [.. finding.Related.Select(related => new Related(Place(related.At), related.Message))],
        })]);

        Span Place(WrittenPlace place) => new(files[place.File], place.Start, place.End);
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Findings value, JsonSerializerOptions options)
    {
        var numbers = new Dictionary<SourceFile, int>(ReferenceEqualityComparer.Instance);
        ImmutableArray<WrittenFinding> all =
        [
            .. value.All.Select(finding => new WrittenFinding(
                finding.Code.Id,
                finding.Code.Severity,
                finding.Code.Title,
                Place(finding.At),
                finding.Message,
                finding.Help,
                [.. finding.Related.Select(related => new WrittenRelated(Place(related.At), related.Message))])),
        ];
        var files = numbers.OrderBy(file => file.Value).Select(file => new WrittenFile(file.Key.Path, file.Key.Text, file.Key.IsUnread));
        JsonSerializer.Serialize(writer, new([.. files], all), WrittenFindingsJson.Default.WrittenFindings);

        WrittenPlace Place(Span at)
        {
            if (!numbers.TryGetValue(at.File, out var number))
                numbers.Add(at.File, number = numbers.Count);
            return new(number, at.Start, at.End);
        }
    }
}

/// <summary>Reads and writes them by code that is made while the program is built.</summary>
[JsonSerializable(typeof(WrittenFindings))]
internal sealed partial class WrittenFindingsJson : JsonSerializerContext;
