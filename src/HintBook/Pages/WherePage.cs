using System.Collections.Immutable;
using HintBook.Books;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>
/// “Where am I?”: a reader in the middle of the box finds their stage by what they see. The first question names only parts
/// that anyone sees on the closed box; each answer makes something certain, and only signs of stages that need nothing more
/// are shown then. “I’m past all of these” makes the next ones certain, and so on.
/// </summary>
internal static class WherePage
{
    // A longer row of questions is slower than going on from the last stage that is shown.
    private const int MostLevels = 6;

    public static SitePage Of(Edition edition) => new($"{edition.Folder}where.html", "where.html", "where", () => Names(edition));

    /// <summary>What a reader is led through: the stages shown after each answer to the first question.</summary>
    /// <param name="plan">The site.</param>
    public static ImmutableArray<WhereAnswer> AnswersOf(SitePlan plan)
    {
        var certain = plan.Book.Stages.ToDictionary(
            stage => stage.Id.Value,
            stage => plan.Survey.Stages[stage.Id.Value].CertainBefore.ToImmutableHashSet(StringComparer.Ordinal));
        var landmarks = Landmarks(plan.Book, certain);
        return
        [
            .. plan.Book.Stages
                .Select(stage => landmarks.Where(landmark => landmark.IsBehind(certain[stage.Id.Value])).ToArray())
                .DistinctBy(behind => string.Join(' ', behind.Select(landmark => landmark.Part.Id.Value)))
                .OrderBy(behind => behind.Length == 0)
                .Select(behind => new WhereAnswer(
                    [.. Latest(behind).Select(landmark => landmark.Part)],
                    Levels(
                        [.. behind.SelectMany(landmark => landmark.Certain)],
                        stage => landmarks.All(landmark => landmark.IsBehind(certain[stage]) == behind.Contains(landmark))))),
        ];

        // Those of which no other makes more certain: the rest goes without saying.
        static IEnumerable<Landmark> Latest(Landmark[] behind) =>
            behind.Where(landmark => !Array.Exists(behind, other => other.Certain.IsProperSupersetOf(landmark.Certain)));

        ImmutableArray<ImmutableArray<Stage>> Levels(ImmutableHashSet<string> known, Func<string, bool> isWanted)
        {
            var wanted = plan.Book.Stages.Where(stage => isWanted(stage.Id.Value)).Select(stage => stage.Id.Value).ToHashSet(StringComparer.Ordinal);
            // What must be done before them and isn't certain yet has to be asked for as well.
            wanted.UnionWith([.. wanted.SelectMany(stage => certain[stage])]);
            wanted.ExceptWith(known);
            var levels = ImmutableArray.CreateBuilder<ImmutableArray<Stage>>();
            while (levels.Count < MostLevels)
            {
                var level = plan.Book.Stages.Where(stage => wanted.Contains(stage.Id.Value) && known.IsSupersetOf(certain[stage.Id.Value])).ToImmutableArray();
                if (level.IsEmpty)
                    break;
                levels.Add(level);
                wanted.ExceptWith(level.Select(stage => stage.Id.Value));
                known = known.Union(level.Where(stage => !stage.Optional && !stage.RedHerring).Select(stage => stage.Id.Value));
            }

            return levels.ToImmutable();
        }
    }

    private static ScriptObject Names(Edition edition)
    {
        var answers = AnswersOf(edition.Plan);
        return edition.Page(
            PageHead.Of(edition, "where", "where.html"),
            ("answers", View.List(answers.Where(answer => !answer.Parts.IsEmpty).Select(answer => View.Of(
                ("name", string.Join(edition.Words["where_and"], answer.Parts.Select(part => part.Name))),
                ("levels", Levels(edition, answer.Levels)))))),
            ("nothing", View.List(answers.Where(answer => answer.Parts.IsEmpty).SelectMany(answer => Levels(edition, answer.Levels)))));
    }

    private static ScriptArray Levels(Edition edition, ImmutableArray<ImmutableArray<Stage>> levels) =>
        View.List(levels.Select(level => View.List(level.Select(stage => StageLink.Of(edition, stage.Id.Value)))));

    // The parts that show on the closed box and that some stage moves for good, with what is certain once one of those stages is done.
    private static ImmutableArray<Landmark> Landmarks(Book book, Dictionary<string, ImmutableHashSet<string>> certain) =>
    [
        .. from part in book.Box.Parts
           where part.Seen && !part.Free
           let movers = book.Stages.Where(stage => stage.Moves.Any(move => move.Changes.Any(change => change.Name.Value == part.Id.Value)))
               .Select(stage => stage.Id.Value)
               .ToImmutableHashSet(StringComparer.Ordinal)
           where !movers.IsEmpty
           select new Landmark(part, movers, movers.Select(mover => certain[mover].Add(mover)).Aggregate((one, other) => one.Intersect(other))),
    ];

    private sealed record Landmark(Part Part, ImmutableHashSet<string> Movers, ImmutableHashSet<string> Certain)
    {
        public bool IsBehind(ImmutableHashSet<string> done) => Movers.Overlaps(done);
    }
}

/// <summary>One answer to the first question, and where it leads.</summary>
/// <param name="Parts">What the reader moved last of all that shows on the closed box; nothing yet where there are none.</param>
/// <param name="Levels">The stages whose signs are shown, those of the next level once the reader is past all of one.</param>
internal sealed record WhereAnswer(ImmutableArray<Part> Parts, ImmutableArray<ImmutableArray<Stage>> Levels);
