using HintBook.Books;
using HintBook.Tests.Mechanism;

namespace HintBook.Tests.Pages.Walking;

/// <summary>
/// Goes through the finished pages as every reader would: from every state of the box before the goal, and each answer that is true there. A sign is taken
/// for true by those for whom its stage is next.
/// </summary>
internal sealed class Walker
{
    private readonly Book book;
    private readonly PlacePages pages;
    private readonly Sentences sentences;
    private readonly List<Breach> breaches = [];
    private readonly Dictionary<int, int> taps = [];
    private readonly Dictionary<int, int> words = [];
    private readonly Dictionary<(int State, string Stage), int?> tapsToWanted = [];
    private readonly HashSet<int> lost = [];

    private Walker(MadeSite site, NaiveExplorer naive)
    {
        book = site.Book;
        Standings = new(book, naive.Rests(), site.Survey.Stages, site.Everyday);
        (pages, sentences) = (new(site.Pages, site.Addresses), new(book));
        ToldApart = site.ToldApart;
        LookAtPages();
        foreach (var state in Standings.Live)
        {
            Walk(state);
            if (Standings.SoughtAt(state).Count < 2)
                continue;
            foreach (var stage in Standings.SoughtAt(state))
                WalkTo(state, stage);
        }
    }

    /// <summary>Goes through the pages of a site; null where its box has too many states, or reactions that don't settle.</summary>
    /// <param name="site">The site.</param>
    /// <param name="most">How many states are too many.</param>
    public static Walker? Of(MadeSite site, int most = 100_000)
    {
        var naive = new NaiveExplorer(site.Book, most, toTheGoal: true);
        return naive.GaveUp || naive.Unrest ? null : new(site, naive);
    }

    /// <summary>What is known of each state.</summary>
    public Standings Standings { get; }

    /// <summary>How many pages there are.</summary>
    public int Pages => pages.Pages.Count;

    /// <summary>Whether nothing says that places can't be told apart.</summary>
    public bool ToldApart { get; }

    /// <summary>The laws that are broken.</summary>
    public IReadOnlyList<Breach> Breaches => breaches;

    /// <summary>Links followed from the first page to a stage's page, for each state from which somebody arrives.</summary>
    public IReadOnlyDictionary<int, int> Taps => taps;

    /// <summary>Words on the pages of questions that are read until then, for the same states.</summary>
    public IReadOnlyDictionary<int, int> Words => words;

    /// <summary>Links followed from the first page to the stage that is wanted, for each state with several that are next; null where it isn't found.</summary>
    public IReadOnlyDictionary<(int State, string Stage), int?> TapsToWanted => tapsToWanted;

    /// <summary>The states in which a stage is next, and the pages end elsewhere.</summary>
    public IReadOnlySet<int> Lost => lost;

    // Where only handling is left, no stage is next: such a reader can't arrive, and is told nothing early either.
    private void Walk(int state)
    {
        var at = PlacePages.First;
        var read = 0;
        var visited = new HashSet<string>();
        for (var steps = 1; ; steps++)
        {
            if (!visited.Add(at))
                return;
            var page = pages.Pages[at];
            LookAt(page, state);
            read += page.Words;
            var sought = Standings.SoughtAt(state);
            var recognised = page.Signs.Select(sign => sign.Stage).Where(sought.Contains).ToList();
            foreach (var stage in recognised)
                Arrive(state, stage, steps, read);
            if (recognised.Count > 0)
                return;
            if ((page.Lines.Where(line => IsTrue(line.Says, state)).Select(line => line.To).FirstOrDefault() ?? page.None) is not { } to)
            {
                Lose(state, $"ends on {at}, without an answer that is true");
                return;
            }

            if (to == PlacePages.Front)
            {
                Lose(state, "is sent to the front page");
                return;
            }

            if (pages.StageOf(to) is { } end)
            {
                Arrive(state, end, steps, read);
                return;
            }

            at = to;
        }
    }

    // Who wants one of several stages that are next: a sign of another, or a line that leads to another, is true and not what is wanted.
    private void WalkTo(int state, string wanted)
    {
        var (at, sought, visited) = (PlacePages.First, Standings.SoughtAt(state), new HashSet<string>());
        tapsToWanted[(state, wanted)] = null;
        for (var steps = 1; visited.Add(at); steps++)
        {
            var page = pages.Pages[at];
            LookAt(page, state);
            var to = page.Signs.Where(sign => sign.Stage == wanted).Select(_ => pages.AddressOf(wanted)).FirstOrDefault()
                ?? (page.Signs.Any(sign => sought.Contains(sign.Stage))
                    ? page.Other
                    : page.Lines.Where(line => IsTrue(line.Says, state)).Select(line => line.To).FirstOrDefault() ?? page.None);
            if (to is not null && pages.StageOf(to) is { } other && other != wanted && sought.Contains(other))
                (to, steps) = (page.Other, steps + 1);
            if (to is null or PlacePages.Front)
                break;
            if (pages.StageOf(to) is { } end)
            {
                EndAt(state, end);
                if (end == wanted)
                    tapsToWanted[(state, wanted)] = steps;
                break;
            }

            at = to;
        }
    }

    private void Arrive(int state, string stage, int steps, int read)
    {
        if (Standings.SoughtAt(state).Contains(stage))
            _ = taps.TryAdd(state, steps) && words.TryAdd(state, read);
        else
            Lose(state, $"ends at {stage}");
        EndAt(state, stage);
    }

    private void EndAt(int state, string stage)
    {
        var told = book.Stages.First(each => each.Id.Value == stage);
        foreach (var name in Standings.ToldTooEarly(state, told.Title.Value).Concat(Standings.ToldTooEarly(state, told.Sign.Value)))
            Broken(Law.EndsWithoutTelling, $"{Reader(state)} ends at {stage}, whose title or sign names {name}.");
    }

    private void Lose(int state, string how)
    {
        if (Standings.NextAt(state).Count == 0)
            return;
        lost.Add(state);
        if (ToldApart)
            Broken(Law.Arrives, $"{Reader(state)} {how}; next is {string.Join(" or ", Standings.SoughtAt(state))}.");
    }

    private void LookAt(PlacePage page, int state)
    {
        foreach (var (_, stage) in page.Signs.Where(sign => !Standings.KnowsAllBefore(state, sign.Stage)))
            Broken(Law.ShowsSignsInTime, $"{Reader(state)} comes to {page.Path}, which shows the sign of {stage}.");
        foreach (var name in Standings.ToldTooEarly(state, page.Text))
            Broken(Law.NamesNothingEarly, $"{Reader(state)} comes to {page.Path}, which names {name}.");
        foreach (var (says, _) in page.Lines)
        {
            foreach (var question in sentences.Meant(says).Where(each =>
                each is { Of: Part part, Position: { } position } && !Standings.MayName(state, part, position)))
                Broken(Law.NamesNothingEarly, $"{Reader(state)} comes to {page.Path}, where “{says}” names {question.Of.Id.Value}={question.Position}.");
        }
    }

    private bool IsTrue(string line, int state) => sentences.Meant(line).Any(asked => asked.IsTrue(Standings.Rests[state].At));

    private void LookAtPages()
    {
        foreach (var page in pages.Pages.Values)
        {
            if (!page.LeadsBack && page.Path != PlacePages.First)
                Broken(Law.LeadsBack, $"{page.Path} has no link to {PlacePages.First}.");
            if (LeadsRound(page.Path))
                Broken(Law.HasNoLoop, $"The answers of {page.Path} lead back to it.");
            foreach (var stage in book.Stages.Where(stage => IsHiddenIn(page, stage)))
                Broken(Law.HidesTheOtherSigns, $"{page.Path} holds the sign of {stage.Id.Value}, which it doesn't show.");
            foreach (var (says, _) in page.Lines.Where(line => sentences.Meant(line.Says).ToList() is not [{ Of: var asked }] || !Shows(asked)))
                Broken(Law.AsksWhatShows, $"{page.Path} asks “{says}”.");
        }
    }

    private static bool Shows(Named asked) => asked is Thing or Part { Seen: true, Free: false, Turns: false } or Part { ShowsWhen.IsEmpty: false };

    private bool IsHiddenIn(PlacePage page, Stage stage) =>
        page.Signs.All(sign => sign.Stage != stage.Id.Value && !sign.Sign.Contains(stage.Sign.Value, StringComparison.Ordinal))
        && page.Source.Contains(stage.Sign.Value, StringComparison.Ordinal);

    private bool LeadsRound(string path)
    {
        var seen = new HashSet<string>();
        var open = new Stack<string>(pages.Pages[path].Onward);
        while (open.TryPop(out var to))
        {
            if (to == path)
                return true;
            if (to != PlacePages.Front && pages.StageOf(to) is null && seen.Add(to))
                pages.Pages[to].Onward.ToList().ForEach(open.Push);
        }

        return false;
    }

    private string Reader(int state) => $"Who has the box so ({Standings.Say(state)})";

    private void Broken(Law law, string says) => breaches.Add(new(law, says));
}
