using System.Collections;
using System.Collections.Immutable;
using System.IO.Enumeration;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>The table, indexed for searches. Shared by all threads; each file gets a search of its own.</summary>
internal sealed class Secrets
{
    private readonly AuditTable table;
    private readonly Vocabulary vocabulary;
    private readonly Dictionary<string, Vocabulary> others;
    private readonly CommonSentences everywhere;
    private readonly Dictionary<string, AuditPage> pages;
    private readonly Dictionary<string, AuditCaptions> captions;
    private readonly Dictionary<string, AuditBooklet> booklets;

    private Secrets(AuditTable table)
    {
        this.table = table;
        vocabulary = new(table.Secrets, AuditLanguages.For(table.Language));
        others = table.Pages.Select(page => page.Language ?? table.Language).Concat(table.Captions.Select(each => each.Language))
            .Concat(table.Booklets.Select(each => each.Language)).Distinct()
            .Where(language => language != table.Language)
            .ToDictionary(language => language, language => new Vocabulary(table.Secrets, AuditLanguages.For(language)), StringComparer.Ordinal);
        everywhere = new(table.SaidEverywhere);
        pages = table.Pages.ToDictionary(page => page.File, StringComparer.Ordinal);
        captions = table.Captions.ToDictionary(each => each.File, StringComparer.Ordinal);
        booklets = table.Booklets.ToDictionary(each => each.File, StringComparer.Ordinal);
        Outside = new(table.Outside, null, null, "where anyone meets it who has opened nothing");
    }

    /// <summary>What may be said where anyone looks.</summary>
    public Scope Outside { get; }

    /// <summary>Whether there is nothing to look for.</summary>
    public bool IsEmpty => vocabulary.IsEmpty && table.Pictures.IsEmpty;

    /// <summary>Indexes a table. Without a table there are no secrets.</summary>
    public static Secrets Of(AuditTable? table) => new(table ?? new() { Secrets = [], Outside = new BitArray(0) });

    /// <summary>Pages of the table that don't exist and secrets that can't be searched for: faults, since they would pass unchecked.</summary>
    public IEnumerable<AuditFault> Unusable(IEnumerable<string> paths) =>
    [
        .. from path in pages.Keys.Concat(captions.Keys).Except(paths, StringComparer.Ordinal)
           select new AuditFault(path, 0, 0, "The table of secrets names this file, and it is not there."),
        .. from word in vocabulary.Wordless
           select new AuditFault("", 0, 0, $"The table of secrets forbids “{word}”, which has no letter or digit to look for."),
    ];

    /// <summary>What is known of a page; null for one that may say only what anyone may know.</summary>
    public AuditPage? PageAt(string path) => pages.GetValueOrDefault(path);

    /// <summary>What is known of captions or chapters; null for those that may say only what anyone may know.</summary>
    public AuditCaptions? CaptionsAt(string path) => captions.GetValueOrDefault(path);

    private Vocabulary VocabularyAt(string path) =>
        (PageAt(path)?.Language ?? CaptionsAt(path)?.Language ?? booklets.GetValueOrDefault(path)?.Language) is { } language
        && others.TryGetValue(language, out var other)
            ? other
            : vocabulary;

    /// <summary>What the SHA-256 of a file must be; null where any will do.</summary>
    public string? DigestOf(string path) => table.Digests.GetValueOrDefault(path);

    /// <summary>Whether a file may say everything.</summary>
    public bool IsFree(string path) => table.Free.Any(pattern => FileSystemName.MatchesSimpleExpression(pattern, path, ignoreCase: false));

    /// <summary>A search for one file.</summary>
    public Listener Listen(string path) => new(this, path);

    /// <summary>Searches the texts of one file.</summary>
    internal sealed class Listener(Secrets all, string path)
    {
        private readonly Vocabulary vocabulary = all.VocabularyAt(path);

        /// <summary>Whether a text is known to say nothing in any of its forms.</summary>
        public bool IsSilent(string text, Manner manner, Forms forms) => vocabulary.IsKnownToSayNothing(text, manner, forms);

        /// <summary>Keeps that.</summary>
        public void KeepSilent(string text, Manner manner, Forms forms) => vocabulary.KeepAsSayingNothing(text, manner, forms);

        /// <summary>The tag of the language in which the file is read.</summary>
        public string Language => vocabulary.Language;

        /// <summary>Whether the text that was heard last has no mention of anything, allowed or not.</summary>
        public bool HeardNothing { get; private set; }

        /// <summary>The secrets that may not be told there, each once.</summary>
        public IReadOnlyCollection<AuditFault> Hear(ReaderText saying) => Judge(saying, isNew: false);

        /// <summary>The same of a text that isn't known to be silent.</summary>
        public IReadOnlyCollection<AuditFault> HearAnew(ReaderText saying) => Judge(saying, isNew: true);

        private AuditFault[] Judge(ReaderText saying, bool isNew)
        {
            var search = vocabulary.OfThread;
            var mentions = isNew ? search.InAnew(saying.Text, saying.Manner) : search.In(saying.Text, saying.Manner);
            HeardNothing = mentions.Count == 0;
            if (HeardNothing)
                return [];
            Dictionary<int, AuditFault>? told = null;
            foreach (var met in mentions)
            {
                if (saying.Scope.Has(met.Secret) || IsOnlyAWord(met, saying.Manner) || IsPartOfSomethingKnown(met, mentions, saying.Scope))
                    continue;
                if ((saying.Manner == Manner.Items && !IsAcrossItems(search.Text, met)) || (saying.Manner == Manner.Lines && met.IsCode))
                    continue;
                var (start, end) = (search.Text.Words[met.First].Start, search.Text.Words[met.Last].End);
                if (all.everywhere.Says(saying.Text, start, end))
                    continue;
                var isSure = met.Sure && saying.Manner != Manner.Lines && saying.Scope.IsSureOf(met.Secret) && !IsProbablyTheProgrammers(met, saying.Manner);
                told ??= [];
                if (!told.TryGetValue(met.Secret, out var before) || (isSure && !before.IsSure))
                    told[met.Secret] = FaultOf(met, search.Text, saying, isSure);
            }

            return told is null ? [] : [.. told.Values];
        }

        /// <summary>The secrets that a picture shows where it may not.</summary>
        public IEnumerable<AuditFault> See(string address, int line, int column, Scope scope)
        {
            if (all.table.Pictures.IsEmpty)
                return [];
            var name = address[(address.LastIndexOf('/') + 1)..];
            var end = name.AsSpan().IndexOfAny('-', '.');
            if (!all.table.Pictures.TryGetValue(end < 0 ? name : name[..end], out var shown))
                return [];
            return
                from secret in shown
                where !scope.Has(secret)
                let told = all.table.Secrets[secret].Name
                select new AuditFault(path, line, column, $"The picture “{name}” shows the secret “{told}”, {scope.When}.")
                {
                    Secret = told,
                    IsSure = scope.IsSureOf(secret),
                };
        }

        // What one item tells by itself is heard where it stands.
        private static bool IsAcrossItems(FoldedText text, in FoundSecret met)
        {
            for (var i = met.First + 1; met.IsCode && i <= met.Last; i++)
            {
                if (text.Words[i].Parting == Parting.Item)
                    return true;
            }

            return false;
        }

        private static bool IsOnlyAWord(in FoundSecret met, Manner manner) => manner == Manner.Trade && met is { Words: 1, IsCode: false };

        private static bool IsProbablyTheProgrammers(in FoundSecret met, Manner manner) =>
            met.Words == 1 && (manner == Manner.Remark || (manner == Manner.Quoted && !met.IsCode));

        // "Iron key" may be known where "key" is a secret. Of two overlapping secrets only the longer is reported.
        private bool IsPartOfSomethingKnown(in FoundSecret met, IReadOnlyList<FoundSecret> mentions, Scope scope)
        {
            foreach (var other in mentions)
            {
                if (other.Secret != met.Secret && all.table.Secrets[other.Secret].Covers && other.First <= met.First && other.Last >= met.Last
                    && (scope.Has(other.Secret) || (other.Sure && other.Last - other.First > met.Last - met.First)))
                    return true;
            }

            return false;
        }

        private AuditFault FaultOf(in FoundSecret met, FoldedText text, ReaderText saying, bool isSure)
        {
            var name = all.table.Secrets[met.Secret].Name;
            var told = saying.Text[text.Words[met.First].Start..text.Words[met.Last].End].ReplaceLineEndings(" ");
            var how = string.Equals(told, name, StringComparison.OrdinalIgnoreCase) ? "" : $", as “{told}”";
            return new(path, saying.Line, saying.Column, $"The secret “{name}” stands {saying.Where}{how}, {saying.Scope.When}.")
            {
                Secret = name,
                IsSure = isSure,
            };
        }
    }
}
