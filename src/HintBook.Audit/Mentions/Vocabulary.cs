using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.InteropServices;
using HintBook.Audit.Mentions.Languages;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>Everything that is looked for, made ready once for all files and threads.</summary>
internal sealed class Vocabulary
{
    private const int LongestKept = 300, MostKept = 100_000;

    private readonly ConcurrentDictionary<(string Text, Manner Manner, Forms Forms), bool> silent = new();
    private readonly ConcurrentDictionary<int, Search> searches = new();
    private readonly TurnedLinks links;
    private readonly WordNumbers numbers;
    private readonly NameTree names;
    private readonly TurnedNames turned;
    private readonly CodeTable codes = new();
    private readonly CaselessCodes caseless = new();
    private readonly TimeTable times = new();
    private readonly SignTree signs;
    private readonly Sums sums;
    private readonly CountTalk talk;
    private readonly Places places;

    // How many texts are silent. Counted here, since the dictionary's own count takes all of its locks.
    private int kept;

    public Vocabulary(ImmutableArray<AuditSecret> secrets, AuditLanguage language)
    {
        numbers = new(language);
        turned = new(language);
        signs = new(language);
        sums = new(codes, language);
        talk = new(language);
        places = new(language.Code);
        names = new(numbers, turned, new Objects(numbers), new WordCodes(numbers));
        Wordless =
        [
            .. from secret in secrets.Index()
               from spelling in secret.Item.Spellings
               where !Add(secret.Index, spelling, secret.Item.Covers)
               select spelling.Text,
        ];
        turned.Freeze();
        names.Freeze();
        links = new(numbers);
        IsEmpty = secrets.Sum(secret => secret.Spellings.Length) == Wordless.Length;
    }

    private bool Add(int secret, AuditSpelling spelling, bool isName)
    {
        if (numbers.Language.IsUnspaced && spelling.As == SpelledAs.Letters)
            caseless.AddRomanized(secret, spelling.Text);
        return AddWritten(secret, spelling, isName);
    }

    private bool AddWritten(int secret, AuditSpelling spelling, bool isName) => spelling.As switch
    {
        SpelledAs.Symbols or SpelledAs.Letters when numbers.Language.IsUnspaced && caseless.Add(secret, spelling.Text) => true,
        SpelledAs.Symbols => codes.Add(secret, spelling),
        SpelledAs.Time => times.Add(secret, spelling),
        _ => names.Add(secret, spelling, canTurn: isName),
    };

    /// <summary>Whether no text can have any of them.</summary>
    public bool IsEmpty { get; }

    /// <summary>The tag of the language in which texts are read.</summary>
    public string Language => numbers.Language.Code;

    /// <summary>Spellings with nothing to look for in them.</summary>
    public ImmutableArray<string> Wordless { get; }

    /// <summary>The search of the calling thread.</summary>
    public Search OfThread => searches.GetOrAdd(Environment.CurrentManagedThreadId, _ => new Search(this));

    /// <summary>Whether a text is known to say nothing: the same words of the theme stand on every page, and say the same on each.</summary>
    public bool IsKnownToSayNothing(string text, Manner manner, Forms forms) => text.Length <= LongestKept && silent.ContainsKey((text, manner, forms));

    /// <summary>Keeps that a text says nothing, nor any of its other forms.</summary>
    public void KeepAsSayingNothing(string text, Manner manner, Forms forms)
    {
        if (text.Length <= LongestKept && kept < MostKept && silent.TryAdd((text, manner, forms), true))
            Interlocked.Increment(ref kept);
    }

    /// <summary>Looks texts through, one after the other.</summary>
    internal sealed class Search(Vocabulary all)
    {
        // Two lone letters or ordinals may be pieces; one number may be a code or a time.
        private const int Some = 2, Enough = 4;

        private readonly FoldedText text = new(all.numbers.Language);
        private readonly CodeRow row = new(all.codes, all.numbers, all.places);
        private readonly TurnedSearch turned = new(all.turned, all.links);
        private readonly SignReader signs = new(all.numbers, all.signs);
        private readonly Times times = new(all.times, all.numbers.Language);
        private readonly PiecewiseCodes pieces = new(all.codes);
        private readonly FigureColumns columns = new(all.codes);
        private readonly KanaLetters kanaLetters = new(all.codes);
        private readonly LooseCodes loose = new(all.codes, all.numbers.Language);
        private readonly RelatedCodes related = new(all.codes, all.numbers.Language);
        private readonly CountedThings counted = new(all.codes, all.talk, all.numbers.Language);
        private readonly LabelledRows labelled = new(all.codes, all.talk);
        private readonly List<int> ids = [];
        private readonly List<FoundSecret> found = [];

        /// <summary>The words of the text that was looked through last.</summary>
        public FoldedText Text => text;

        /// <summary>Every mention in a text; valid until the next one.</summary>
        public IReadOnlyList<FoundSecret> In(string source, Manner manner)
        {
            found.Clear();
            if (all.IsKnownToSayNothing(source, manner, Forms.None))
                return found;
            Look(source, manner);
            if (found.Count == 0)
                all.KeepAsSayingNothing(source, manner, Forms.None);
            return found;
        }

        /// <summary>The same for a text of which its caller knows whether it was met before.</summary>
        public IReadOnlyList<FoundSecret> InAnew(string source, Manner manner)
        {
            found.Clear();
            Look(source, manner);
            return found;
        }

        private void Look(string source, Manner manner)
        {
            var isSentence = manner == Manner.Quoted && source.Contains(' ', StringComparison.Ordinal);
            text.Read(source, isProse: isSentence || manner is Manner.Prose or Manner.Items or Manner.Lines);
            ids.Clear();
            foreach (var word in text.Words)
                ids.Add(all.numbers.Of(text.Of(word)));
            var numbered = CollectionsMarshal.AsSpan(ids);
            if (manner != Manner.Items)
                all.names.In(text, numbered, source, isPicture: manner == Manner.Picture, found);
            row.In(text, numbered, source, found);
            all.caseless.In(text, source, found);
            if (all.numbers.Language.IsUnspaced)
                kanaLetters.In(text, source, found);
            if (manner is not (Manner.Items or Manner.Lines or Manner.Remark))
                turned.In(text, source, found);
            if (MayTellByPieces(numbered, source))
            {
                signs.Read(text, numbered, source);
                times.In(text, signs.Tokens, source, found);
                pieces.In(text, signs.Tokens, source, found);
                if (manner is Manner.Prose or Manner.Items or Manner.Remark)
                {
                    loose.In(text, signs.Tokens, source, found);
                    columns.In(text, signs.Tokens, source, found);
                    all.sums.In(text, signs.Tokens, source, found);
                    related.In(text, signs.Tokens, found);
                    counted.In(text, signs.Tokens, source, found);
                    labelled.In(text, signs.Tokens, source, found);
                }
            }

            if (manner == Manner.Prose)
                loose.Turned(text, source, found);
        }

        // Numbers, several lone letters, or words that stand for them.
        private bool MayTellByPieces(ReadOnlySpan<int> numbered, string source)
        {
            if (all.codes.Longest == 0 && all.times.IsEmpty)
                return false;
            var weight = 0;
            for (var at = 0; at < numbered.Length && weight < Enough; at++)
            {
                var word = text.Of(text.Words[at]);
                if (char.IsAsciiDigit(word[0]))
                    weight = Enough;
                else if (all.numbers.IsSaidInNumbers(numbered[at]))
                    weight += all.numbers.UseOf(numbered[at]) == WordUse.Plain ? Enough : 1;
                else if (word.Length == 1)
                    weight += all.numbers.Language.IsUnspaced || !all.numbers.Language.LetterWords.Contains(word[0], StringComparison.Ordinal) ? Some : 0;
                else if (RomanNumeral.IsWritten(source, text.Words[at].Start, text.Words[at].End))
                    weight = Enough;
                else if (char.IsAsciiLetterUpper(source[text.Words[at].Start]) && char.IsAsciiLetterUpper(source[text.Words[at].End - 1]))
                    weight += Some;
                else
                    weight += all.signs.WeightOf(word, Some, Enough);
            }

            return weight >= Enough;
        }
    }
}
