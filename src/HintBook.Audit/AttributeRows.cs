using AngleSharp.Dom;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>
/// Codes that a page holds symbol by symbol in attributes of one name: <c>&lt;i data-set="4">&lt;/i>&lt;i data-set="0">&lt;/i></c>, or in the words for
/// pictures of figures. What a browser reads as a number of its own, such as a width, isn't gathered.
/// </summary>
internal sealed class AttributeRows
{
    private const int Longest = 2;
    private readonly Dictionary<(string Name, Scope Scope), Row> rows = [];
    private readonly List<Row> inOrder = [];

    /// <summary>Takes an attribute, if its value may be one symbol of a code.</summary>
    public void Add(IElement element, IAttr attribute, Scope scope)
    {
        if (attribute.Value.Length is 0 or > Longest || !attribute.Value.All(char.IsLetterOrDigit)
            || (PageWords.Keywords.Contains(attribute.Name) && attribute.Name != "aria-valuenow"))
            return;
        if (!rows.TryGetValue((attribute.Name, scope), out var row))
        {
            rows[(attribute.Name, scope)] = row = new(attribute.Name, element, scope);
            inOrder.Add(row);
        }

        row.Symbols.Add(attribute.Value);
    }

    /// <summary>The rows that are long enough for a code, in the order in which they begin.</summary>
    public IEnumerable<Row> Rows => inOrder.Where(row => row.Symbols.Count is >= SymbolRows.Fewest and < SymbolRows.Most);

    /// <summary>The values of one attribute.</summary>
    internal sealed record Row(string Name, IElement First, Scope Scope)
    {
        /// <summary>The symbols, in the order of the page.</summary>
        public List<string> Symbols { get; } = [];

        /// <summary>All of them as one text.</summary>
        public string Said => string.Join(FoldedText.BetweenItems, Symbols);
    }
}
