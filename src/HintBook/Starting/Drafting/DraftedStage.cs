using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using HintBook.Books;
using HintBook.Reading.Yaml;

namespace HintBook.Starting.Drafting;

/// <summary>A stage to start from.</summary>
public sealed record DraftedStage
{
    /// <summary>Its file in the book, such as <c>stages/04-the-well.md</c>.</summary>
    public required string Path { get; init; }

    /// <summary>What the film shows.</summary>
    public required FilmStep Step { get; init; }

    /// <summary>The film in the folder <c>clips</c>; null where it isn't known.</summary>
    public string? Film { get; init; }

    /// <summary>Whether the film lives elsewhere, at the address that the book gives.</summary>
    public bool FilmIsElsewhere { get; init; }

    /// <summary>The stage that comes before it; null for the first.</summary>
    public string? After { get; init; }

    /// <summary>What is named in it that was named in an earlier step: perhaps it needs that.</summary>
    public ImmutableArray<NamedThing> Needs { get; init; } = [];

    /// <summary>What is named in it for the first time: perhaps it gives that, or moves it.</summary>
    public ImmutableArray<NamedThing> Gives { get; init; } = [];

    /// <summary>Keys that it has besides, each a line.</summary>
    public ImmutableArray<string> Keys { get; init; } = [];

    /// <summary>The file's text.</summary>
    public string Text()
    {
        var text = new StringBuilder("---\n# yaml-language-server: $schema=../schemas/stage.schema.json\n");
        text.Append($"title: {(Step.Title.Length > 0 ? Quoting.Escaped(Step.Title) : Draft.Open)}\n");
        text.Append("# How does an owner see, by looking at the box, that they have come this far?\n");
        text.Append($"sign: {Draft.Open}\n");
        if (After is { } before)
            text.Append($"after: [ {Quoting.Escaped(before)} ]      # until its needs say it\n");
        if (!Needs.IsEmpty)
            text.Append($"# Named here, and in an earlier step: perhaps\n# needs: [ {string.Join(", ", Needs.Select(thing => thing.Id))} ]\n");
        if (!Gives.IsEmpty)
            text.Append($"# Named here for the first time: perhaps\n# gives: [ {string.Join(", ", Gives.Select(thing => thing.Id))} ]\n");
        foreach (var key in Keys)
            text.Append(key).Append('\n');
        text.Append(Clip());
        text.Append($"---\n# Nudge\n\n{Draft.Open}\n\n# Clue\n\n{Draft.Open}\n\n# Answer\n\n");
        if (!Step.Said.IsEmpty)
            text.Append($"<!-- What is said in the film. Nobody but you reads this.\n\n{Spoken()}\n-->\n\n");
        return text.Append(Draft.Open).Append('\n').ToString();
    }

    /// <summary>A moment as it stands in a stage's file: <c>2:16</c>, or <c>1:02:16</c>.</summary>
    public static string Moment(TimeSpan at) => at.TotalHours >= 1
        ? at.ToString(@"h\:mm\:ss", CultureInfo.InvariantCulture)
        : at.ToString(@"m\:ss", CultureInfo.InvariantCulture);

    private string Clip()
    {
        var parts = $"from: {Moment(Step.From)}" + (Step.To is { } to && Moment(to) != Moment(Step.From) ? $", to: {Moment(to)}" : "");
        return (Film, FilmIsElsewhere) switch
        {
            ({ } film, _) => $"clip: {{ file: {Quoting.Escaped(film)}, {parts} }}\n",
            (null, true) => $"clip: {{ {parts} }}\n",
            _ => $"# With the film in the folder “clips”:\n# clip: {{ file: film.mp4, {parts} }}\n",
        };
    }

    // What would end the remark stands in it with a blank.
    private string Spoken() =>
        string.Join('\n', Step.Said.Select(said => $"{Moment(said.From)}  {said.Text.Replace("-->", "-- >", StringComparison.Ordinal)}"));
}
