using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism.Graph;

/// <summary>What can be wrong with the way in which the stages of a box depend on each other.</summary>
internal static class GraphFindings
{
    public static readonly FindingCode TrailCode = new("HB2203", Severity.Error, "a stage stands before one that it needs");
    public static readonly FindingCode NothingGivesCode = new("HB2204", Severity.Error, "something needed that nothing gives");
    public static readonly FindingCode UnneededCode = new("HB2205", Severity.Warning, "a thing that nobody needs");

    public static Finding Trail(Stage stage, string lacks, Stage? giver) => TrailCode.At(
        stage.Title.At,
        giver is null
            ? $"“{stage.Title.Value}” stands too early in the trail: it waits for {lacks}."
            : $"“{stage.Title.Value}” stands before “{giver.Title.Value}”, but waits for {lacks}, which comes from there.",
        giver is null
            ? "Give its file a higher number."
            : $"Give {stage.File.Path} a higher number than {giver.File.Path}, or correct its “needs”.",
        giver is null ? [] : [new Related(giver.Title.At, "This stage has to come first.")]);

    public static Finding TrailByWays(Stage stage, Stage needed) => TrailCode.At(
        stage.Title.At,
        $"“{stage.Title.Value}” stands before “{needed.Title.Value}”, which is done before it on every way.",
        $"Give {stage.File.Path} a higher number than {needed.File.Path}, or correct its “needs”.",
        new Related(needed.Title.At, "This stage has to come first."));

    public static Finding NothingGives(ImmutableArray<Span> asked, string described, string change) => NothingGivesCode.At(
        asked[0],
        $"This needs {described}, and nothing gives that.",
        $"Write “{change}” in a stage or a move, or take it out of the needs.",
        [.. asked[1..].Select(at => new Related(at, "It is needed here as well."))]);

    public static Finding Unneeded(Named named) => UnneededCode.At(
        named.Id.At,
        $"Nothing needs “{named.Id.Value}”.",
        named is Code
            ? "Put it into the “needs” of the stage where it is set, or take it out."
            : "Put it into the “needs” of what it is for. If it leads nowhere on purpose, write “red-herring: true”.");
}
