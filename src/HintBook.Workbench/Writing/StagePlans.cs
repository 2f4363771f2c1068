using System.Collections.Immutable;
using System.Globalization;
using HintBook.Reading;
using HintBook.Reading.Editing;
using HintBook.Starting;
using HintBook.Text;

namespace HintBook.Workbench.Writing;

/// <summary>
/// New stages, other names, another order: what it means for printed addresses, and which files change, before anything is done. Pure but for
/// <paramref name="texts"/>, which a plan changes; each plan needs texts of its own.
/// </summary>
/// <param name="texts">The stages and rehearsals.</param>
/// <param name="kept">The addresses that were ever published.</param>
internal sealed class StagePlans(BookTexts texts, AddressList kept)
{
    private const string Bench = "“Where am I?”";

    /// <summary>Plans what a maker wants.</summary>
    public StagePlan Of(StageWish wish)
    {
        if (wish.Do != "new" && !Stages().Any(stage => stage.Id == wish.Stage))
            return new StagePlan.Refused($"The book has no step “{wish.Stage}” any more.");
        return wish.Do switch
        {
            "new" => New(wish),
            "rename" => Rename(wish),
            "move" => Move(wish),
            "split" => Split(wish),
            "delete" => Delete(wish),
            _ => new StagePlan.Refused("Nothing is known by that name."),
        };
    }

    private IEnumerable<StageName> All() => texts.Names.Select(StageName.Of).OfType<StageName>();

    private StageName[] Stages() =>
        [.. All().Where(stage => stage.Language is null).OrderBy(stage => stage.Place).ThenBy(stage => stage.Path, StringComparer.Ordinal)];

    private StageName Named(string id) => Stages().First(stage => stage.Id == id);

    private StagePlan New(StageWish wish)
    {
        if (FreshId(wish.Title) is not { } id)
            return new StagePlan.Refused("Give the step a title with letters in it: its file is named after it.");
        var stages = Stages();
        var after = Array.FindIndex(stages, stage => stage.Id == wish.Stage) + 1;
        if (after == 0 && wish.Stage.Length > 0)
            return new StagePlan.Refused($"The book has no step “{wish.Stage}” any more.");
        var lineEnd = stages.Length > 0 && texts[stages[0].Path].Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var number = RoomAt(after);
        var name = new StageName(null, number, id, ".md");
        texts[name.Path] = With(name.Path, "---\ntitle:\nsign:\n---\n# Nudge\n\n# Clue\n\n# Answer\n", ["title"], new EntryValue.Text(wish.Title.Trim()))
            .ReplaceLineEndings(lineEnd);
        return Ready($"New step “{wish.Title.Trim()}”", name.Path,
            ["The new step gets an address of its own at the next publish. Every address that was printed stays, and leads where it did."]);
    }

    private StagePlan Rename(StageWish wish)
    {
        var (old, id) = (wish.Stage, wish.To.Trim());
        if (!StageName.IsId(id))
            return new StagePlan.Refused("A name of a step is made of letters, digits and hyphens, such as the-side-panel.");
        if (id == old)
            return new StagePlan.Refused("It has that name already.");
        if (Stages().Any(stage => stage.Id != old && string.Equals(stage.Id, id, StringComparison.OrdinalIgnoreCase)))
            return new StagePlan.Refused($"Another step is called “{id}” already.");
        if (Stages().FirstOrDefault(stage => stage.Id != old && WasOf(stage).Contains(id)) is { } claims)
            return new StagePlan.Refused($"“{claims.Id}” was called “{id}” before, and the printed address of that name leads there.");
        var renamed = Named(old) with { Id = id };
        texts.Rename(All().Where(stage => stage.Id == old).Select(stage => (stage.Path, (stage with { Id = id }).Path)));
        List<string> says = [];
        if (Published(old, renamed) is { } page)
        {
            var was = WasOf(renamed).Where(each => each != id).Append(old).Distinct();
            texts[renamed.Path] = With(renamed.Path, texts[renamed.Path], ["was"], ListOf(was));
            says.Add($"The printed address {page}.html stays and leads to this step: “was: [ {string.Join(", ", was)} ]” is written into its file for that.");
        }
        else
        {
            says.Add("This step was never published, so no printed address is touched: its address will be made of the new name.");
        }

        if (References(old, id) is { Length: > 0 } others)
            says.Add($"It is named in {string.Join(" and ", others)}, and renamed there too.");
        return Ready($"Rename “{old}” to “{id}”", renamed.Path, says);
    }

    private StagePlan Move(StageWish wish)
    {
        var stages = Stages().ToList();
        var stage = Named(wish.Stage);
        var from = stages.FindIndex(each => each.Id == stage.Id);
        var to = Math.Clamp(wish.Place, 1, stages.Count) - 1;
        if (from == to)
            return new StagePlan.Refused("It stands there already.");
        string[] numbers = [.. stages.Select(each => each.Number)];
        if (numbers.Select(number => int.Parse(number, CultureInfo.InvariantCulture)).Distinct().Count() < numbers.Length)
            numbers = [.. Enumerable.Range(1, numbers.Length).Select(number => number.ToString("D2", CultureInfo.InvariantCulture))];
        stages.RemoveAt(from);
        stages.Insert(to, stage);
        Renumber(stages.Select((each, index) => (each, numbers[index])));
        return Ready($"Move “{stage.Id}” to place {to + 1}", Named(stage.Id).Path,
            ["Addresses are made of a step's name, not of its number: every address that was printed stays, and leads where it did."]);
    }

    private StagePlan Split(StageWish wish)
    {
        if (FreshId(wish.Title) is not { } id)
            return new StagePlan.Refused("Give the second step a title with letters in it: its file is named after it.");
        var goes = (wish.Goes ?? []).ToHashSet(StringComparer.Ordinal);
        var stage = Named(wish.Stage);
        if (EntryEdit.At(FileOf(stage.Path), [])?.Value is not EntryValue.Keyed keys || SplitStage.Of(keys, goes) is not var (first, second))
            return new StagePlan.Refused("Choose what goes to the second step, and leave something for the first.");
        var number = RoomAt(Array.FindIndex(Stages(), each => each.Id == stage.Id) + 1);
        var (here, made) = (Named(stage.Id), new StageName(null, number, id, stage.Ending));
        texts[made.Path] = texts[here.Path];
        foreach (var (key, value) in first)
            texts[here.Path] = With(here.Path, texts[here.Path], [key], value);
        foreach (var (key, value) in second.Append(new("title", new EntryValue.Text(wish.Title.Trim()))).Append(new("after", ListOf([stage.Id]))))
            texts[made.Path] = With(made.Path, texts[made.Path], [key], value);
        var page = Published(stage.Id, here);
        return Ready($"Split “{stage.Id}”", made.Path,
        [
            page is null
                ? "The step was never published, so no printed address is touched."
                : $"The printed address {page}.html stays with the first of the two.",
            "The second gets an address of its own at the next publish, which no card carries yet.",
            "Both begin with the same help and the same needs. Take out of each what belongs to the other; what is told too early is found.",
        ]);
    }

    private StagePlan.Ready Delete(StageWish wish)
    {
        var stage = Named(wish.Stage);
        List<string> says =
        [
            Published(stage.Id, stage) is { } page
                ? $"The printed address {page}.html stays: whoever holds its card reads there that this step has changed, and is led to {Bench}."
                : "This step was never published, so no printed address leads to it.",
        ];
        foreach (var each in All().Where(each => each.Id == stage.Id).ToArray())
            texts.Remove(each.Path);
        if (References(stage.Id, null) is { Length: > 0 } others)
            says.Add($"It is named in {string.Join(" and ", others)}, and taken out there.");
        if (Rehearsed(stage.Id) is { Length: > 0 } rehearsals)
            says.Add($"It is played in {string.Join(" and ", rehearsals)}; those stay as they are, and the check will say so.");
        return Ready($"Take out “{stage.Id}”", null, says);
    }

    private StagePlan.Ready Ready(string says, string? opens, IEnumerable<string> sentences) => new([.. sentences], texts.Change(says), opens);

    // A number for a file that shall stand at an index; those behind make room where there is none.
    private string RoomAt(int index)
    {
        var stages = Stages();
        var width = stages.Length == 0 ? 2 : stages.Max(stage => stage.Number.Length);
        var number = (index == 0 ? 0 : stages[index - 1].Place) + 1;
        List<(StageName, string)> moved = [];
        for (var (next, free) = (index, number + 1); next < stages.Length && stages[next].Place < free; next++, free++)
            moved.Add((stages[next], Written(free)));
        Renumber(moved);
        return Written(number);

        string Written(int place) => place.ToString($"D{width}", CultureInfo.InvariantCulture);
    }

    // A translation that bears the same number goes along.
    private void Renumber(IEnumerable<(StageName Stage, string Number)> numbers)
    {
        var wanted = numbers.ToDictionary(pair => (pair.Stage.Id, pair.Stage.Number), pair => pair.Number);
        texts.Rename(from stage in All()
                     where wanted.ContainsKey((stage.Id, stage.Number))
                     select (stage.Path, (stage with { Number = wanted[(stage.Id, stage.Number)] }).Path));
    }

    // An id that no step has, had, or was ever published with.
    private string? FreshId(string title)
    {
        var id = TitleName.Of(title);
        if (!StageName.IsId(id))
            return null;
        var taken = Stages().SelectMany(stage => WasOf(stage).Append(stage.Id)).Concat(kept.Stages.Keys).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return Enumerable.Range(1, taken.Count + 1).Select(number => number == 1 ? id : $"{id}-{number}").First(each => !taken.Contains(each));
    }

    private string? Published(string id, StageName stage) =>
        WasOf(stage).Prepend(id).Select(each => kept.Stages.TryGetValue(each, out var names) ? names[0].Value : null).FirstOrDefault(name => name is not null);

    private string[] WasOf(StageName stage) => WordsIn(EntryEdit.At(FileOf(stage.Path), ["was"])?.Value);

    private SourceFile FileOf(string path) => new(path, texts[path]);

    // Renames a step wherever other files name it, or takes it out of what comes first; says in which.
    private string[] References(string old, string? id)
    {
        List<string> changed = [];
        foreach (var stage in All().ToArray())
        {
            if (EntryEdit.At(FileOf(stage.Path), ["after"])?.Value is not EntryValue.Many after || !WordsIn(after).Contains(old))
                continue;
            EntryValue[] items = [.. after.Items.Where(item => id is not null || EntryValue.WordOf(item) != old)
                .Select(item => EntryValue.WordOf(item) == old ? new EntryValue.Text(id ?? "") : item)];
            texts[stage.Path] = With(stage.Path, texts[stage.Path], ["after"], items.Length == 0 ? null : new EntryValue.Many([.. items]));
            changed.Add(stage.Path);
        }

        foreach (var name in id is null ? [] : Rehearsed(old))
        {
            if (EntryEdit.At(new(name, texts[name]), ["steps"])?.Value is not EntryValue.Many steps)
                continue;
            texts[name] = With(name, texts[name], ["steps"], new EntryValue.Many([.. steps.Items.Select(step => RenamedStep(step, old, id ?? old))]));
            changed.Add(name);
        }

        return [.. changed];
    }

    private string[] Rehearsed(string id) =>
    [
        .. from name in texts.Names
           where name.StartsWith($"{Rehearsals.Folder}/", StringComparison.Ordinal)
           where EntryEdit.At(new(name, texts[name]), ["steps"])?.Value is EntryValue.Many(var steps)
               && steps.Any(step => EntryValue.WordOf(step) == id || EntryValue.WordOf((step as EntryValue.Keyed)?["stage"]) == id)
           select name,
    ];

    private static EntryValue RenamedStep(EntryValue step, string old, string id) => step switch
    {
        EntryValue.Text(var word) when word == old => new EntryValue.Text(id),
        EntryValue.Keyed keyed when EntryValue.WordOf(keyed["stage"]) == old => new EntryValue.Keyed(
            [.. keyed.Entries.Select(entry => entry.Key == "stage" ? new("stage", new EntryValue.Text(id)) : entry)]),
        _ => step,
    };

    // What can't be changed without touching something else stays; the check then says what doesn't fit any more.
    private static string With(string path, string text, ImmutableArray<string> entry, EntryValue? value) =>
        EntryEdit.Set(new(path, text), entry, value) is EditedEntry.Done done ? done.Text : text;

    private static EntryValue.Many ListOf(IEnumerable<string> names) => new([.. names.Select(name => new EntryValue.Text(name))]);

    private static string[] WordsIn(EntryValue? value) => value switch
    {
        EntryValue.Many(var items) => [.. items.Select(EntryValue.WordOf).OfType<string>()],
        _ => EntryValue.WordOf(value) is { } word ? [word] : [],
    };
}
