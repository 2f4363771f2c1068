using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Ciphers.Making;

namespace HintBook.Starting.Edition;

/// <summary>What came of drawing copies.</summary>
public abstract record Drawing
{
    private Drawing()
    {
    }

    /// <summary>They are drawn, and every clue of theirs is proved.</summary>
    /// <param name="Copies">The new copies, in the order of their serials.</param>
    public sealed record Drawn(ImmutableArray<NewCopy> Copies) : Drawing;

    /// <summary>Nothing was drawn.</summary>
    /// <param name="Why">Why not, and what would help, in sentences.</param>
    public sealed record Refused(string Why) : Drawing;
}

/// <summary>A copy that isn't written yet.</summary>
/// <param name="Serial">Its serial.</param>
/// <param name="Own">Its codes and clues, by the names that the book gives them.</param>
public sealed record NewCopy(string Serial, ImmutableArray<(string Name, string Value)> Own);

/// <summary>
/// Draws codes for new copies: settings that the lock can show, that no other copy has, and that nobody tries first. Where the clue differs by copy as well,
/// it is made, and each is read back.
/// </summary>
public static class FreshCopies
{
    /// <summary>The most copies that are drawn at once.</summary>
    public const int Most = 10_000;

    // Up to so many settings are listed and drawn from; of larger locks one setting after the other is drawn until one will do.
    private const int MostListed = 100_000;
    private const int MostDraws = 1_000;

    // A drawn code may lead to a clue that can also be read otherwise; then another one is drawn.
    private const int MostClues = 40;
    private const int Variants = 1_000;

    /// <summary>Draws copies.</summary>
    /// <param name="book">The book with the copies that it has.</param>
    /// <param name="count">How many, 1 to <see cref="Most"/>.</param>
    /// <param name="below">Gives a random number from 0, below the number it is given.</param>
    public static Drawing Draw(Book book, int count, Func<int, int> below)
    {
        var codes = book.Box.Codes.Where(code => code.AnswerByCopy is not null || code.ClueByCopy is not null).ToArray();
        if (Array.Find(codes, code => code.AnswerByCopy is null) is { } fixedAnswer)
            return new Drawing.Refused($"The clue of “{fixedAnswer.Id.Value}” differs by copy and its answer doesn't: write the clues of new copies by hand.");
        if (Array.Find(codes, code => code.Lock is null) is { } lockless)
        {
            return new Drawing.Refused(
                $"“{lockless.Id.Value}” has no lock, so it isn't known what could be set. Give it one, or write the codes of new copies by hand.");
        }

        var serials = SerialsAfter(book.Copies).Take(count).ToArray();
        var drawn = ImmutableArray.CreateBuilder<NewCopy>(count);
        var taken = codes.Select(code => code.AnswerByCopy!.Value.Value).Distinct(StringComparer.Ordinal)
            .ToDictionary(name => name, name => book.Copies.Select(copy => copy[name]?.Value).OfType<string>().ToHashSet(StringComparer.OrdinalIgnoreCase));
        foreach (var serial in serials)
        {
            switch (One(book, serial, codes, taken, below))
            {
                case Drawing.Drawn { Copies: [var copy] }:
                    drawn.Add(copy);
                    break;
                case Drawing.Refused refused:
                    return refused;
            }
        }

        return new Drawing.Drawn(drawn.ToImmutable());
    }

    // A clue from which a solver may set something else as well is drawn anew, as long as there are others.
    private static Drawing One(Book book, string serial, Code[] codes, Dictionary<string, HashSet<string>> taken, Func<int, int> below)
    {
        for (var attempt = 1; ; attempt++)
        {
            var (drawing, isClear) = Once(book, serial, codes, taken, below);
            if (isClear || attempt == MostClues || drawing is not Drawing.Drawn { Copies: [var unclear] })
                return drawing;
            foreach (var (name, value) in unclear.Own)
                taken.GetValueOrDefault(name)?.Remove(value);
        }
    }

    private static (Drawing Drawing, bool IsClear) Once(
        Book book, string serial, Code[] codes, Dictionary<string, HashSet<string>> taken, Func<int, int> below)
    {
        var own = new List<(string Name, string Value)>();
        foreach (var code in codes)
        {
            var name = code.AnswerByCopy!.Value.Value;
            if (own.Exists(one => one.Name == name))
                continue;
            switch (Settled(book, code, taken[name], below))
            {
                case Drawing.Drawn { Copies: [var settled] }:
                    own.AddRange(settled.Own);
                    taken[name].Add(settled.Own[0].Value);
                    break;
                case Drawing.Refused refused:
                    return (refused, true);
            }
        }

        return Proved(book, new NewCopy(serial, [.. own]));
    }

    // The code's setting, and its clue where that differs as well.
    private static Drawing Settled(Book book, Code code, HashSet<string> taken, Func<int, int> below)
    {
        var why = "";
        for (var attempt = 0; attempt < MostClues; attempt++)
        {
            if (SettingOf(code.Lock!, taken, below) is not { } setting)
            {
                return new Drawing.Refused(
                    $"No setting is left for “{code.Id.Value}” that no copy has and that isn't easy ({EasySettings.Rules}). A lock with more wheels has more.");
            }

            if (code.OnPaper is not null && CluesOnPaper.RefusedFor(code, setting, book.Language.Value) is { } unmade)
            {
                why = unmade;
                continue;
            }

            if (code.ClueByCopy is not { } clueName)
                return new Drawing.Drawn([new("", [(code.AnswerByCopy!.Value.Value, setting)])]);
            if (code.Reads is not [var step] || Clues.Ways.All(way => way.Name != step.Way.Value))
            {
                return new Drawing.Refused(
                    $"The clue of “{code.Id.Value}” differs by copy, and a clue that is read like that can't be made. Write the clues of new copies by hand; "
                    + "“hintbook clue --ways” lists what can be made.");
            }

            var language = Clues.IsWorded(step.Way.Value) ? book.Language.Value : Clues.Languages[0];
            switch (Clues.For(setting, step.Way.Value, [.. step.With.Select(told => told.Value)], below(Variants), language))
            {
                case Attempt.Made made:
                    return new Drawing.Drawn([new("", [(code.AnswerByCopy!.Value.Value, setting), (clueName.Value, made.Clue.Text)])]);
                case Attempt.Refused refused:
                    why = refused.Why;
                    break;
            }
        }

        return new Drawing.Refused($"No clue could be made for “{code.Id.Value}”: {why}");
    }

    private static (Drawing Drawing, bool IsClear) Proved(Book book, NewCopy copy)
    {
        var place = book.File.Top;
        var with = new Copy(new(copy.Serial, place), [.. copy.Own.Select(one => new CopyValue(new(one.Name, place), new(one.Value, place)))]);
        var proofs = Proofs.Prove(book with { Copies = [with] });
        var refuted =
            from proof in proofs.Codes
            where proof.Says is Verdict.ByCopy
            from own in ((Verdict.ByCopy)proof.Says).Copies
            where own.Proof.Says is Verdict.Refuted
            select $"“{proof.Code.Id.Value}”: {((Verdict.Refuted)own.Proof.Says).Finding.Message}";
        return refuted.FirstOrDefault() is { } why
            ? (new Drawing.Refused($"A copy of its own code would have a clue that doesn't lead to it. {why}"), true)
            : (new Drawing.Drawn([copy]), proofs.Findings.All(finding => finding.Code != CipherFindings.LikelyOtherCode));
    }

    private static string? SettingOf(Books.Lock of, HashSet<string> taken, Func<int, int> below)
    {
        if (of is DialLock { Dial.Positions: var positions })
        {
            // The first one is how the box leaves the maker.
            var free = positions.Skip(1).Where(position => !taken.Contains(position)).ToArray();
            return free.Length == 0 ? null : free[below(free.Length)];
        }

        var wheels = (WheelLock)of;
        if (wheels.Settings <= MostListed)
        {
            var free = Enumerable.Range(0, (int)wheels.Settings).Select(number => Written(number, wheels)).Where(Fits).ToArray();
            return free.Length == 0 ? null : free[below(free.Length)];
        }

        for (var draw = 0; draw < MostDraws; draw++)
        {
            var setting = string.Concat(Enumerable.Range(0, wheels.Wheels).Select(_ => wheels.Symbols[below(wheels.Symbols.Length)]));
            if (Fits(setting))
                return setting;
        }

        return null;

        bool Fits(string setting) => !taken.Contains(setting) && !EasySettings.Holds(setting, wheels.Symbols);
    }

    private static string Written(BigInteger number, WheelLock wheels)
    {
        var symbols = new char[wheels.Wheels];
        for (var i = symbols.Length - 1; i >= 0; i--)
        {
            symbols[i] = wheels.Symbols[(int)(number % wheels.Symbols.Length)];
            number /= wheels.Symbols.Length;
        }

        return new(symbols);
    }

    // 001, 002 and so on, after the largest number that a copy has, and as wide.
    private static IEnumerable<string> SerialsAfter(ImmutableArray<Copy> copies)
    {
        var numbered = copies.Select(copy => copy.Serial.Value).Where(serial => serial.Length < 9 && serial.All(char.IsAsciiDigit)).ToArray();
        var last = numbered.Select(serial => int.Parse(serial, CultureInfo.InvariantCulture)).DefaultIfEmpty(0).Max();
        var width = numbered.Select(serial => serial.Length).DefaultIfEmpty(3).Max();
        for (var next = last + 1; ; next++)
            yield return next.ToString(CultureInfo.InvariantCulture).PadLeft(width, '0');
    }
}
