using System.Collections.Immutable;
using System.Runtime.InteropServices;
using HintBook.Audit.Mentions.Languages;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>Everything that is looked for, made ready once for all files and threads.</summary>
internal sealed class Vocabulary
{
    private readonly WordNumbers numbers;
    private readonly NameTree names;
    private readonly TurnedNames turned;
    private readonly CodeTable codes = new();
    private readonly TimeTable times = new();
    private readonly SignTree signs;

    public Vocabulary(ImmutableArray<AuditSecret> secrets, AuditLanguage language)
    {
        numbers = new(language);
        turned = new(language);
        signs = new(language);
        names = new(numbers, turned, new Objects(numbers), new WordCodes(numbers));
        Wordless =
        [
            .. from secret in secrets.Index()
               from spelling in secret.Item.Spellings
               where !Add(secret.Index, spelling, secret.Item.Covers)
               select spelling.Text,
        ];
        turned.Freeze();
        IsEmpty = secrets.Sum(secret => secret.Spellings.Length) == Wordless.Length;
    }

    private bool Add(int secret, AuditSpelling spelling, bool isName) => spelling.As switch
    {
        SpelledAs.Symbols => codes.Add(secret, spelling),
        SpelledAs.Time => times.Add(secret, spelling),
        _ => names.Add(secret, spelling, canTurn: isName),
    };

    /// <summary>Whether no text can have any of them.</summary>
    public bool IsEmpty { get; }

    /// <summary>Spellings with nothing to look for in them.</summary>
    public ImmutableArray<string> Wordless { get; }

    /// <summary>A search for one thread.</summary>
    public Search NewSearch() => new(this);

    /// <summary>Looks texts through, one after the other.</summary>
    internal sealed class Search(Vocabulary all)
    {
        private readonly FoldedText text = new(all.numbers.Language);
        private readonly CodeRow row = new(all.codes, all.numbers);
        private readonly TurnedSearch turned = new(all.turned, all.numbers);
        private readonly SignReader signs = new(all.numbers, all.signs);
        private readonly Times times = new(all.times, all.numbers.Language.IsHourFirst);
        private readonly PiecewiseCodes pieces = new(all.codes);
        private readonly List<int> ids = [];
        private readonly List<FoundSecret> found = [];

        /// <summary>The words of the text that was looked through last.</summary>
        public FoldedText Text => text;

        /// <summary>Every mention in a text; valid until the next one.</summary>
        public IReadOnlyList<FoundSecret> In(string source, Manner manner)
        {
            found.Clear();
            text.Read(source, isProse: manner is Manner.Prose or Manner.Items);
            ids.Clear();
            foreach (var word in text.Words)
                ids.Add(all.numbers.Of(text.Of(word)));
            var numbered = CollectionsMarshal.AsSpan(ids);
            if (manner != Manner.Items)
                all.names.In(text, numbered, source, found);
            row.In(text, numbered, source, found);
            if (manner == Manner.Prose)
                turned.In(text, found);
            if (MayTellByPieces(numbered, source))
            {
                signs.Read(text, numbered, source);
                times.In(text, signs.Tokens, source, found);
                pieces.In(text, signs.Tokens, source, found);
            }

            return found;
        }

        // Numbers, lone letters, or words that stand for them.
        private bool MayTellByPieces(ReadOnlySpan<int> numbered, string source)
        {
            if (all.codes.Longest == 0 && all.times.IsEmpty)
                return false;
            for (var at = 0; at < numbered.Length; at++)
            {
                var word = text.Of(text.Words[at]);
                if (word.Length == 1 || char.IsAsciiDigit(word[0]) || all.numbers.IsSaidInNumbers(numbered[at]) || all.signs.Counts(word)
                    || RomanNumeral.IsWritten(source, text.Words[at].Start, text.Words[at].End))
                    return true;
            }

            return false;
        }
    }
}
