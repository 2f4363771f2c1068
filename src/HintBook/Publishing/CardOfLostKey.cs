using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Sealing;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>
/// A publish with a card in place of the key that was lost: what the card opens of the published site is enough to seal corrected texts, and the tables of the
/// copies are carried over. Whatever would need the key is told, and nothing is published.
/// </summary>
internal static partial class CardOfLostKey
{
    private const string Untouched = "What was published before is untouched.";

    /// <summary>Opens the published site.</summary>
    /// <param name="book">The book's folder.</param>
    /// <param name="output">The output folder.</param>
    /// <param name="card">The card.</param>
    /// <exception cref="MachineFailure">The key isn't lost, there is no sealed site, or the card doesn't open it.</exception>
    public static OpenedBox Open(string book, string output, TypedCard card)
    {
        if (File.Exists(Path.Combine(book, KeyFile.FileName)))
        {
            throw Refused(
                $"The book has its key: {KeyFile.FileName} is there.",
                $"Publish without --with-card, which is for a book whose key is lost. If {KeyFile.FileName} is of another book, move it away first.");
        }

        var code = card.Read() switch
        {
            ReadCode read => read.Code,
            OtherLength other => throw Refused(
                $"That has {Words.Count(other.Letters, "letter")}, and a card has {CardCode.Letters}.", "Compare it with the card, group by group."),
            OtherVersion => throw Refused("That card was printed by a later version of HintBook.", "Publish with that version."),
            _ => throw Refused("A letter of that card isn't right.", "Compare it with the card, group by group."),
        };
        if (code.Kind != CardKind.WholeBox)
        {
            throw Refused(
                "That is the card of one stage: it opens one page, and a publish seals them all.",
                "Take a card for the whole box, from any box that was sold.");
        }

        var site = Path.Combine(output, "site");
        if (SignsIn(site) is not { } signs)
            throw Refused($"There is no sealed site in {site}.", "Download what you uploaded last into that folder, or name another output folder with --out.");
        return Opened(site, signs.Tag, signs.Epoch, code)
            ?? throw Refused(
                $"That card doesn't open the site in {site}. It is of another book, or was replaced or retired before the site was published.",
                "Take the card of another box, and the site that was published last.");
    }

    /// <summary>What of a book would need the key that is lost, and so can't be published with a card; null where nothing does.</summary>
    public static MachineFailure? WhyNot(Examined book, OpenedBox box)
    {
        string[] wanted = [.. Wanted(book, box)];
        return wanted.Length == 0
            ? null
            : Refused(
                $"With a card texts can be corrected, and what is sealed with the lost key stays as it is. {string.Join(' ', wanted)}",
                $"Take that back, or take {KeyFile.FileName} from a backup or from paper: “hintbook copies BOOK --restore LETTERS”.");
    }

    private static IEnumerable<string> Wanted(Examined book, OpenedBox box)
    {
        var kept = book.Sealing?.Kept.Copies.ToDictionary(copy => copy.Serial, StringComparer.Ordinal) ?? [];
        foreach (var copy in book.Book.Copies)
        {
            var serial = copy.Serial.Value;
            if (kept.Count > 0 && !kept.ContainsKey(serial) && !copy.Retired)
                yield return $"Copy {serial} in copies.yaml is new, and no copy can be added.";
            if (copy.Retired && kept.TryGetValue(serial, out var known) && !known.Retired)
                yield return $"Copy {serial} in copies.yaml is to be retired, and no copy can be: its card goes on opening the help.";
        }

        // Cards of single stages are printed for pages that have a table; for a page that is new none can be made.
        foreach (var stage in book.Book.Stages.Where(_ => book.Book.Cards != CardChoice.Box))
        {
            if (!book.Addresses.Names[stage.Id.Value].Any(name => box.Tables.ContainsKey($"k/{name}-0.js")))
                yield return $"The stage “{stage.Title.Value}” ({stage.File.Path}) is new, and no card of it can be made; “cards: box” wants none.";
        }

        foreach (var stage in book.Book.Stages.Where(stage => stage.Gate is not null))
        {
            yield return $"The stage “{stage.Title.Value}” ({stage.File.Path}) has a gate, and what lies behind a gate is sealed with the lost key; "
                + "without “gate:” its help opens with the card alone.";
        }

        if (kept.Values.FirstOrDefault(copy => copy.Number == box.Card.Number) is { } own && !IsAsPublished(book, own.Serial, box))
            yield return $"What copy {own.Serial} has of its own in copies.yaml isn't what was published, and no copy's own values can be changed.";
    }

    // The values of other copies lie in slots that this card doesn't open.
    private static bool IsAsPublished(Examined book, string serial, OpenedBox box) =>
        !book.Book.Copies.Any(copy => copy.Serial.Value == serial)
        || new OwnOfCopies(book).Of(serial, null).Order().SequenceEqual(OwnValue.Read(box.Own).Where(own => !SealedGates.IsRecord(own.Name)).Order());

    private static OpenedBox? Opened(string site, byte[] tag, byte[] epoch, CardCode code)
    {
        var tables = Directory.Exists(Path.Combine(site, "k"))
            ? Directory.EnumerateFiles(Path.Combine(site, "k"), "*.js")
                .ToImmutableSortedDictionary(file => $"k/{Path.GetFileName(file)}", File.ReadAllBytes, StringComparer.Ordinal)
            : ImmutableSortedDictionary<string, byte[]>.Empty;
        var name = string.Create(CultureInfo.InvariantCulture, $"k/box-{code.Number / Slots.InAFile}.js");
        var said = Table().Match(tables.TryGetValue(name, out var file) ? Encoding.ASCII.GetString(file) : "");
        if (!said.Success)
            return null;
        var size = int.Parse(said.Groups["size"].Value, CultureInfo.InvariantCulture);
        var (bytes, at) = (new byte[said.Groups["bytes"].Length], code.Number % Slots.InAFile * size);
        if (!Convert.TryFromBase64String(said.Groups["bytes"].Value, bytes, out var length) || at + size > length)
            return null;
        var context = Slots.ContextOf(EpochKeys.OfBox(tag, epoch, []), "", code.Number);
        return Seal.Open(code.Key, context, bytes.AsSpan(at, size)) is not { } slot
            ? null
            : new(code, EpochKeys.OfBox(tag, epoch, slot[..BookKeys.KeyLength]), slot[BookKeys.KeyLength..], tables);
    }

    private static (byte[] Tag, byte[] Epoch)? SignsIn(string site)
    {
        var front = Path.Combine(site, "index.html");
        return File.Exists(front) && Signs().Match(File.ReadAllText(front)) is { Success: true } signs
            ? (Convert.FromHexString(signs.Groups["tag"].Value), Convert.FromHexString(signs.Groups["epoch"].Value))
            : null;
    }

    private static MachineFailure Refused(string message, string help) => new(FailureKind.Usage, message, $"{help} {Untouched}");

    [GeneratedRegex("<html[^>]* data-tag=\"(?<tag>[0-9a-f]{16})\" data-epoch=\"(?<epoch>[0-9a-f]{16})\"", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Signs();

    [GeneratedRegex(
        "^hintbook\\.take\\(\"[^\"]*\",\"[0-9a-f]{16}\",(?<size>[0-9]{1,5}),\"(?<bytes>[A-Za-z0-9+/=]+)\"\\)", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Table();
}
