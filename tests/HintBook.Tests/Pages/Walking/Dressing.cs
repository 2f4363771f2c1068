using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Tests.Mechanism;
using HintBook.Text;

namespace HintBook.Tests.Pages.Walking;

/// <summary>Gives a box of the tests what its pages need: names, what is seen, words for positions, titles, signs.</summary>
internal static class Dressing
{
    // Too many to look at for the sake of a few signs.
    private const int MostStates = 3000;

    private static readonly string[] Names =
    [
        .. ("anvil bellows bobbin caliper cymbal doublet ferrule gusset gimlet halyard inkwell jasper kettle lantern mallet napkin oculus pulley quiver "
            + "sextant tassel trellis urn valance wicket xylophone yoke zither acorn bramble clover dahlia eyelet falcon garnet hazel iris juniper")
            .Split(' '),
    ];

    /// <summary>A book with names and signs by chance. A sign names only what is certain when its stage is open, as a maker's must.</summary>
    public static Book Dressed(Book book, Pick pick)
    {
        var names = new Queue<string>(Names);
        var lids = book.Box.Parts.Where(part => !part.Turns).ToArray();
        var called = book with
        {
            Box = book.Box with
            {
                Parts = [.. book.Box.Parts.Select(part => Dressed(part, names.Dequeue(), lids, pick))],
                Things = [.. book.Box.Things.Select(thing => thing with { Name = names.Dequeue(), Seen = pick.OneIn(8) })],
            },
            Stages = [.. book.Stages.Select((stage, at) => stage with { Title = Text($"Step {at + 1}"), Sign = Text($"Sign {at + 1}.") })],
        };
        var certain = CertainWhereOpen(called);
        return called with { Stages = [.. called.Stages.Select(stage => stage with { Sign = Text(Sign(stage, certain[stage.Id.Value], pick)) })] };
    }

    /// <summary>A text that stands nowhere.</summary>
    public static Located<string> Text(string text) => new(text, new SourceFile("book.yaml", text).Top);

    private static Part Dressed(Part part, string name, Part[] lids, Pick pick)
    {
        var seen = pick.OneIn(2);
        var words = (part.Turns && part.Round) || !pick.OneIn(3) ? [] : part.Positions.Select((position, at) => KeyValuePair.Create(position,
            new PositionDetails
            {
                Seen = seen ? !pick.OneIn(4) : pick.OneIn(6),
                Says = pick.OneIn(4) ? null : Text($"stands as number {at + 1}"),
            }));
        var lid = lids.Length > 0 && !seen && pick.OneIn(4) ? lids[pick.Of(0, lids.Length - 1)] : null;
        return part with
        {
            Name = name,
            Seen = seen,
            Details = words.ToImmutableDictionary(),
            ShowsWhen = lid is null || lid.Id == part.Id ? [] : [new InPosition { At = lid.Id.At, Name = lid.Id, Positions = [lid.Written[^1]] }],
        };
    }

    private static string Sign(Stage stage, Named[] certain, Pick pick)
    {
        var said = certain.Length == 0
            ? []
            : Enumerable.Range(0, pick.Of(0, 2)).Select(_ => pick.From([.. certain.Select(named => named.Name)])).Distinct().ToArray();
        return string.Concat([stage.Sign.Value, .. said.Select(name => $" Look at the {name}.")]);
    }

    private static Dictionary<string, Named[]> CertainWhereOpen(Book book)
    {
        var naive = new NaiveExplorer(book, MostStates, toTheGoal: true);
        if (naive.GaveUp || naive.Unrest)
            return book.Stages.ToDictionary(stage => stage.Id.Value, _ => Array.Empty<Named>());
        var rests = naive.Rests();
        var standings = new Standings(book, rests, ImmutableDictionary<string, HintBook.Mechanism.StageSurvey>.Empty);
        return book.Stages.ToDictionary(stage => stage.Id.Value, stage =>
        {
            int[] open = [.. Enumerable.Range(0, rests.Count).Where(state => rests[state].Acts.Any(arrow => arrow.Stage == stage.Id.Value))];
            return book.Box.Parts.Concat<Named>(book.Box.Things).Where(named => open.All(state => standings.MayName(state, named))).ToArray();
        });
    }
}
