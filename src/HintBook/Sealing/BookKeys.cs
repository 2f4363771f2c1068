namespace HintBook.Sealing;

/// <summary>The keys of a book. All follow from its secret and its <c>id:</c>, so that a copied folder with another id has other keys.</summary>
internal sealed class BookKeys
{
    /// <summary>Bytes of a key that stands in a slot or on a card: 128 bits, the strength of the whole.</summary>
    public const int KeyLength = 16;

    private const int TagLength = 8;

    private readonly byte[] root;

    public BookKeys(BookSecret secret, string id)
    {
        root = Derivation.Derive(secret.Bytes, 32, "book", id);
        Tag = Derivation.Derive(root, TagLength, "tag");
    }

    /// <summary>8 bytes that name the book in the open and say nothing of its secret.</summary>
    public byte[] Tag { get; }

    internal ReadOnlySpan<byte> Root => root;

    /// <summary>The keys of one epoch, which ends when a copy is retired or gets another card.</summary>
    /// <param name="number">From 1.</param>
    public EpochKeys Epoch(int number) => new(root, Tag, number);

    /// <summary>What the card of a copy carries, for all pages.</summary>
    /// <param name="serial">The copy's serial.</param>
    /// <param name="issue">The how-manieth card of the copy it is, from 1.</param>
    public byte[] CardKey(string serial, int issue) => Derivation.Derive(root, KeyLength, "card", serial, issue);

    /// <summary>What the card of a copy for one page carries. It can't be turned back into the card's key.</summary>
    public static byte[] PageCardKey(byte[] cardKey, string page) => Derivation.Derive(cardKey, KeyLength, "page card", page);

    /// <summary>The keys of photos and films.</summary>
    public FileKeys Files => new(root, Tag);
}

/// <summary>The keys of a book in one epoch.</summary>
internal sealed class EpochKeys
{
    private readonly byte[]? root;

    internal EpochKeys(byte[] root, byte[] tag, int number)
        : this(tag, Derivation.Derive(root, tag.Length, "epoch", number), Derivation.Derive(root, BookKeys.KeyLength, "box", number)) =>
        (this.root, Number) = (root, number);

    private EpochKeys(byte[] bookTag, byte[] tag, byte[] boxKey) => (BookTag, Tag, BoxKey) = (bookTag, tag, boxKey);

    private byte[] Root => root ?? throw new InvalidOperationException("This needs the secret of the book, and only the key of a box is known.");

    /// <summary>What a card of the whole box knows of an epoch: it seals pages, and makes neither slots nor gates.</summary>
    /// <param name="bookTag">The book's tag.</param>
    /// <param name="tag">The epoch's tag.</param>
    /// <param name="boxKey">The key that opens every page.</param>
    public static EpochKeys OfBox(byte[] bookTag, byte[] tag, byte[] boxKey) => new(bookTag, tag, boxKey);

    /// <summary>From 1; 0 where only a box key is known. Nobody else can tell it from the tag.</summary>
    public int Number { get; }

    /// <summary>The book's tag.</summary>
    public byte[] BookTag { get; }

    /// <summary>8 bytes that name the epoch in the open.</summary>
    public byte[] Tag { get; }

    /// <summary>Opens every page.</summary>
    public byte[] BoxKey { get; }

    /// <summary>
    /// The key of a page: a stage's, <c>index</c>, <c>solution</c>, <c>reset</c> or a question of “where am I?”. Older printed names are pages of their own.
    /// </summary>
    public byte[] PageKey(string page) => PageKey(BoxKey, page);

    /// <summary>The key of a page for whoever has the box key.</summary>
    public static byte[] PageKey(byte[] boxKey, string page) => Derivation.Derive(boxKey, BookKeys.KeyLength, "page", page);

    /// <summary>What a gate keeps back.</summary>
    public byte[] GateKey(string page) => Derivation.Derive(Root, BookKeys.KeyLength, "gate", Number, page);

    /// <summary>The key of what lies behind a page's gate.</summary>
    public static byte[] GatedPageKey(byte[] pageKey, byte[] gateKey) => Derivation.Derive([.. pageKey, .. gateKey], BookKeys.KeyLength, "gated");

    /// <summary>What stands in a free slot. It looks like any other.</summary>
    /// <param name="size">The slot's bytes.</param>
    /// <param name="page">The page of the table; empty for the whole box.</param>
    /// <param name="number">The slot's number.</param>
    public byte[] NobodysSlot(int size, string page, int number) => Derivation.Derive(Root, size, "nobody", Tag, page, number);
}
