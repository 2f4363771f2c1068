using System.Collections.Immutable;
using System.Runtime.InteropServices;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>Everything that is looked for, made ready once for all files and threads.</summary>
internal sealed class Vocabulary
{
    private readonly WordNumbers numbers;
    private readonly NameTree names;
    private readonly CodeTable codes = new();

    public Vocabulary(ImmutableArray<AuditSecret> secrets, AuditLanguage language)
    {
        numbers = new(language);
        names = new(numbers);
        Wordless =
        [
            .. from secret in secrets.Index()
               from spelling in secret.Item.Spellings
               where !(spelling.As == SpelledAs.Symbols ? codes.Add(secret.Index, spelling) : names.Add(secret.Index, spelling))
               select spelling.Text,
        ];
        IsEmpty = secrets.Sum(secret => secret.Spellings.Length) == Wordless.Length;
    }

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
        private readonly List<int> ids = [];
        private readonly List<FoundSecret> found = [];

        /// <summary>The words of the text that was looked through last.</summary>
        public FoldedText Text => text;

        /// <summary>Every mention in a text; valid until the next one.</summary>
        public IReadOnlyList<FoundSecret> In(string source, bool isProse)
        {
            found.Clear();
            text.Read(source, isProse);
            ids.Clear();
            foreach (var word in text.Words)
                ids.Add(all.numbers.Of(text.Of(word)));
            var numbered = CollectionsMarshal.AsSpan(ids);
            all.names.In(text, numbered, source, found);
            row.In(text, numbered, found);
            return found;
        }
    }
}
