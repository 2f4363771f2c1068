using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Maps;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Text;

namespace HintBook.Tests.Maps;

/// <summary>Books, surveys and maps with no more in them than a map needs.</summary>
internal static class MapBooks
{
    private static readonly SourceFile File = new("book.yaml", "");

    public static MapWords English { get; } = MapWords.Of(Theme.BuiltIn(Theme.Default).Theme.Words["en"].Entries);

    public static Located<string> At(string text) => new(text, File.Top);

    public static Stage Stage(string id, params Change[] changes) => new()
    {
        File = File,
        Id = At(id),
        Title = At($"Title of {id}"),
        Sign = At(""),
        Moves = [new() { Name = At(id), Changes = [.. changes] }],
        Nudge = new("", File.Top),
        Clue = new("", File.Top),
        Answer = new("", File.Top),
    };

    public static Change Change(string name, string position) => new(At(name), At(position));

    public static Condition Needs(string name, params string[] positions) =>
        new InPosition { Name = At(name), Positions = [.. positions.Select(At)], At = File.Top };

    public static Book Book(Condition goal, params Stage[] stages) => new()
    {
        File = File,
        Title = At("The Beekeeper's Cabinet"),
        Language = At("en"),
        Theme = At("parlour"),
        Goal = [goal],
        Patience = TimeSpan.FromMinutes(20),
        Cards = CardChoice.Both,
        Box = new(),
        Stages = [.. stages],
    };

    public static Survey Survey(params (string Id, string[][] OpensAfter)[] stages) => new()
    {
        Opens = new Claim.Proved([]),
        WayBack = ResetPlan.None("nobody looked"),
        First = [],
        Stages = stages.ToImmutableDictionary(stage => stage.Id, stage => new StageSurvey
        {
            Reachable = !stage.Id.StartsWith("lost", StringComparison.Ordinal),
            OpensAfter = [.. stage.OpensAfter.Select(group => group.ToImmutableArray())],
            CertainBefore = [],
            Layer = 0,
        }),
    };

    /// <summary>One stage of each kind, with titles that every language of the three has trouble with.</summary>
    public static StageMap Awkward { get; } = new(
        "The \"Cabinet\" <of> & \\ bees]]>",
        [
            new(1, "quoted \"so\" and 'so'", StageKind.Ordinary),
            new(2, "<b>brass</b> & #amp; &amp;", StageKind.Optional),
            new(3, "[[{(|)}]] %% end", StageKind.RedHerring),
            new(4, "back\\slash\\n \\", StageKind.Unreachable),
            new(5, "`tick` *comb* _wax_ #35;\nline", StageKind.Goal),
            new(6, "蜂蜜 🐝 café", StageKind.Ordinary),
        ],
        [new(1, 2, false), new(1, 3, false), new(4, 4, false), new(2, 5, true), new(3, 5, true), new(5, 6, false)]);

    /// <summary>Every word of <see cref="Awkward"/> that nobody but its author would write.</summary>
    public static string[] AwkwardWords { get; } =
        ["Cabinet", "bees", "quoted", "brass", "slash", "tick", "comb", "wax", "蜂蜜", "🐝", "café", "herring", "goal", "reached"];
}
