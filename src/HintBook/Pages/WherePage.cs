using System.Collections;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Text;
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

    private const int FewTaps = 3;

    public static SitePage Build(LanguageSite site) => new($"{site.Folder}where.html", "where.html", "where", () => Names(site));

    /// <summary>What a reader is led through: the stages shown after each answer to the first question.</summary>
    /// <param name="plan">The site.</param>
    public static ImmutableArray<WhereAnswer> AnswersOf(SitePlan plan)
    {
        var stages = plan.Book.Stages;
        var certain = CertainBefore(plan);
        var landmarks = Landmarks(plan.Book, certain);
        return
        [
            .. Enumerable.Range(0, stages.Length)
                .GroupBy(stage => string.Join(' ', Behind(stage).Select(landmark => landmark.Part.Id.Value)))
                .Select(alike => (Behind: Behind(alike.First()), Stages: alike))
                .OrderBy(answer => answer.Behind.Length == 0)
                .Select(answer => new WhereAnswer(
                    [.. Latest(answer.Behind).Select(landmark => landmark.Part.Id.Value)], Levels(Known(answer.Behind), answer.Stages))),
        ];

        Landmark[] Behind(int stage) => [.. landmarks.Where(landmark => Overlap(landmark.Movers, certain[stage]))];

        // Those of which no other makes more certain: the rest goes without saying.
        static IEnumerable<Landmark> Latest(Landmark[] behind) =>
            behind.Where(landmark => !Array.Exists(behind, other => IsWithin(landmark.Certain, other.Certain) && !IsWithin(other.Certain, landmark.Certain)));

        BitArray Known(Landmark[] behind) => behind.Aggregate(new BitArray(stages.Length), (known, landmark) => known.Or(landmark.Certain));

        ImmutableArray<ImmutableArray<string>> Levels(BitArray known, IEnumerable<int> shown)
        {
            // What must be done before them and isn't certain yet has to be asked for as well.
            var wanted = new BitArray(stages.Length);
            foreach (var stage in shown)
            {
                wanted[stage] = true;
                wanted.Or(certain[stage]);
            }

            wanted.And(new BitArray(known).Not());
            var levels = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
            while (levels.Count < MostLevels)
            {
                int[] level = [.. Enumerable.Range(0, stages.Length).Where(stage => wanted[stage] && IsWithin(certain[stage], known))];
                if (level.Length == 0)
                    break;
                levels.Add([.. level.Select(stage => stages[stage].Id.Value)]);
                foreach (var stage in level)
                {
                    wanted[stage] = false;
                    known[stage] |= !stages[stage].Optional && !stages[stage].RedHerring;
                }
            }

            return levels.ToImmutable();
        }
    }

    /// <summary>The stages that a reader finds only by many taps: one for the answer, one for each “I’m past all of these”, one for the sign.</summary>
    /// <param name="book">The book.</param>
    /// <param name="answers">Where the questions lead.</param>
    public static IEnumerable<Finding> FarAway(Book book, ImmutableArray<WhereAnswer> answers) =>
        from answer in answers
        from level in answer.Levels.Index()
        from found in level.Item
        group level.Index + 2 by found into taps
        where taps.Min() > FewTaps
        select PageFindings.FarAway(book.Stages.First(stage => stage.Id.Value == taps.Key), taps.Min());

    private static ScriptObject Names(LanguageSite site)
    {
        var parts = site.Book.Box.Parts.DistinctBy(part => part.Id.Value).ToDictionary(part => part.Id.Value, part => Moved(site.Book, part));
        return site.Page(
            PageHead.Build(site, "where", "where.html"),
            ("answers", View.List(site.Where.Where(answer => !answer.Parts.IsEmpty).Select(answer => View.Of(
                ("name", string.Join(site.Words["where_and"], answer.Parts.Select(part => parts[part].Says))),
                ("photos", View.List(answer.Parts.SelectMany(part => parts[part].Photos)
                    .Select(photo => PhotoView.Build(photo, site)).Where(photo => photo is not null))),
                ("levels", Levels(site, answer.Levels)))))),
            ("nothing", View.List(site.Where.Where(answer => answer.Parts.IsEmpty).SelectMany(answer => Levels(site, answer.Levels)))));
    }

    // What a part is called once it was moved: with the words for where it is then, and the photos of it there, as far as that shows on the closed box.
    private static (string Says, ImmutableArray<Photo> Photos) Moved(Book book, Part part)
    {
        var left = Left(book, part);
        var shown = left.Where(part.ShowsAt).Select(position => part.Details.GetValueOrDefault(position)).OfType<PositionDetails>().ToArray();
        string[] words = [.. shown.Select(details => details.Says?.Value).OfType<string>()];
        var says = words.Length > 0 && words.Length == left.Length ? $"{part.Name} ({string.Join(" / ", words)})" : part.Name;
        return (says, [.. shown.Select(details => details.Photo).OfType<Photo>()]);
    }

    // Where stages bring a part that shows on the closed box.
    private static ImmutableArray<string> Left(Book book, Part part) => part is not { Seen: true, Free: false } ? [] :
    [
        .. book.Stages.SelectMany(stage => stage.Moves).SelectMany(move => move.Changes)
            .Where(change => change.Name.Value == part.Id.Value)
            .Select(change => change.Position.Value)
            .Where(position => position != part.Positions[0])
            .Distinct(),
    ];

    /// <summary>Photos of positions that neither this page shows nor the reset page.</summary>
    /// <param name="plan">The site.</param>
    public static IEnumerable<Finding> ShownNowhere(SitePlan plan)
    {
        var putBack = plan.Survey.WayBack.Plan.SelectMany(step => step.Leaves).ToHashSet();
        foreach (var part in plan.Book.Box.Parts)
        {
            var left = Left(plan.Book, part);
            foreach (var position in part.Positions.Where(position => !putBack.Contains(new Placed(part.Id.Value, position))))
            {
                if (!(left.Contains(position) && part.ShowsAt(position)) && part.Details.GetValueOrDefault(position)?.Photo is { } photo)
                    yield return PageFindings.PhotoNowhere(part, position, photo);
            }
        }
    }

    private static ScriptArray Levels(LanguageSite site, ImmutableArray<ImmutableArray<string>> levels) =>
        View.List(levels.Select(level => View.List(level.Select(stage => StageLink.Of(site, stage)))));

    private static BitArray[] CertainBefore(SitePlan plan)
    {
        var places = plan.Book.Stages
            .Select((stage, place) => (stage.Id.Value, place))
            .ToDictionary(each => each.Value, each => each.place, StringComparer.Ordinal);
        return [.. plan.Book.Stages.Select(stage =>
        {
            var certain = new BitArray(plan.Book.Stages.Length);
            foreach (var before in plan.Survey.Stages[stage.Id.Value].CertainBefore)
                certain[places[before]] = true;
            return certain;
        })];
    }

    // The parts that show on the closed box and that some stage moves for good, with what is certain once one of those stages is done.
    private static ImmutableArray<Landmark> Landmarks(Book book, BitArray[] certain)
    {
        var seen = book.Box.Parts
            .Where(part => part.Seen && !part.Free)
            .ToDictionary(
                part => part.Id.Value,
                part => new Landmark(part, Movers: new(certain.Length), Certain: new(certain.Length, defaultValue: true)));
        foreach (var (place, stage) in book.Stages.Index())
        {
            var changes = stage.Moves.SelectMany(move => move.Changes);
            var moved = changes.Select(change => seen.GetValueOrDefault(change.Name.Value)).OfType<Landmark>().Distinct();
            foreach (var landmark in moved)
            {
                landmark.Movers[place] = true;
                var done = new BitArray(certain[place]);
                done[place] = true;
                landmark.Certain.And(done);
            }
        }

        return [.. book.Box.Parts.Select(part => seen.GetValueOrDefault(part.Id.Value)).OfType<Landmark>().Where(landmark => landmark.Movers.HasAnySet())];
    }

    private static bool Overlap(BitArray one, BitArray other) => new BitArray(one).And(other).HasAnySet();

    private static bool IsWithin(BitArray part, BitArray whole) => !new BitArray(whole).Not().And(part).HasAnySet();

    private sealed record Landmark(Part Part, BitArray Movers, BitArray Certain);
}
