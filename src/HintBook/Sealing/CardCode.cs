using System.Buffers.Binary;
using System.Security.Cryptography;

namespace HintBook.Sealing;

/// <summary>What a card opens.</summary>
public enum CardKind
{
    /// <summary>Every page.</summary>
    WholeBox = 0,

    /// <summary>The page of one stage.</summary>
    OneStage = 1,
}

/// <summary>
/// The code of a card: 160 bits as 32 letters, in this order: version (4 bits, 1), kind (1), number of the slot (15), key (128), check (12).
/// </summary>
public sealed class CardCode
{
    /// <summary>Letters of a code.</summary>
    public const int Letters = 32;

    /// <summary>The largest number of a slot.</summary>
    public const int LargestNumber = (1 << NumberBits) - 1;

    private const int Length = 20;
    private const int Version = 1;
    private const int NumberBits = 15;
    private const int GroupLetters = 4;

    private readonly byte[] key;

    /// <summary>A code.</summary>
    /// <param name="kind">What the card opens.</param>
    /// <param name="number">The copy's slot, 0 to 32,767.</param>
    /// <param name="key">The card's key, or the page card key: 16 bytes.</param>
    /// <exception cref="ArgumentException">The number or the key has another size.</exception>
    public CardCode(CardKind kind, int number, ReadOnlySpan<byte> key)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(number);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, LargestNumber);
        if (key.Length != BookKeys.KeyLength)
            throw new ArgumentException($"A key has {BookKeys.KeyLength} bytes, and here are {key.Length}.", nameof(key));
        (Kind, Number, this.key) = (kind, number, key.ToArray());
    }

    /// <summary>What the card opens.</summary>
    public CardKind Kind { get; }

    /// <summary>The copy's slot.</summary>
    public int Number { get; }

    /// <summary>The key, of 16 bytes.</summary>
    public ReadOnlySpan<byte> Key => key;

    /// <summary>The code as it stands in an address: 32 capitals and figures.</summary>
    public override string ToString()
    {
        // The key begins within the third byte, so that everything in front of it is 20 bits and what follows is moved by four.
        var bytes = new byte[Length];
        var head = (Version << (NumberBits + 1)) | ((int)Kind << NumberBits) | Number;
        BinaryPrimitives.WriteUInt16BigEndian(bytes, (ushort)(head >> 4));
        bytes[2] = (byte)((head & 0xF) << 4);
        for (var i = 0; i < key.Length; i++)
        {
            bytes[2 + i] |= (byte)(key[i] >> 4);
            bytes[3 + i] = (byte)((key[i] & 0xF) << 4);
        }

        var check = CheckOf(bytes);
        bytes[^2] |= (byte)(check >> 8);
        bytes[^1] = (byte)(check & 0xFF);
        return Letters32.Write(bytes);
    }

    /// <summary>The code as it is printed: eight groups of four.</summary>
    public string ToGroups() => string.Join(' ', ToString().Chunk(GroupLetters).Select(group => new string(group)));

    /// <summary>Reads a code as somebody typed it: in any case, with spaces and hyphens or without, I and L as 1, O as 0.</summary>
    public static CardReading Read(string typed)
    {
        var letters = Letters32.Plain(typed);
        if (letters.Length != Letters)
            return new OtherLength(letters.Length);
        if (Letters32.Read(letters, Length) is not { } bytes)
            return new WrongLetter();
        if (bytes[0] >> 4 != Version)
            return CheckOf(bytes) == CheckIn(bytes) ? new OtherVersion(bytes[0] >> 4) : new WrongLetter();
        if (CheckOf(bytes) != CheckIn(bytes))
            return new WrongLetter();
        var head = (BinaryPrimitives.ReadUInt16BigEndian(bytes) << 4) | (bytes[2] >> 4);
        var found = new byte[BookKeys.KeyLength];
        for (var i = 0; i < found.Length; i++)
            found[i] = (byte)(((bytes[2 + i] & 0xF) << 4) | (bytes[3 + i] >> 4));
        return new ReadCode(new((CardKind)((head >> NumberBits) & 1), head & LargestNumber, found));
    }

    private static int CheckIn(ReadOnlySpan<byte> bytes) => ((bytes[^2] & 0xF) << 8) | bytes[^1];

    // The first 12 bits of a hash of all that stands before the check.
    private static int CheckOf(ReadOnlySpan<byte> bytes)
    {
        Span<byte> said = stackalloc byte[Length - 1];
        bytes[..said.Length].CopyTo(said);
        said[^1] &= 0xF0;
        var hash = SHA256.HashData([.. "hb1 code"u8, .. said]);
        return BinaryPrimitives.ReadUInt16BigEndian(hash) >> 4;
    }
}

/// <summary>What came of reading a code.</summary>
public abstract record CardReading;

/// <summary>It is a code.</summary>
/// <param name="Code">The code.</param>
public sealed record ReadCode(CardCode Code) : CardReading;

/// <summary>It has another number of letters than 32.</summary>
/// <param name="Letters">How many it has.</param>
public sealed record OtherLength(int Letters) : CardReading;

/// <summary>A letter is wrong, or two are exchanged: the check doesn't fit.</summary>
public sealed record WrongLetter : CardReading;

/// <summary>A code of a later version of the format.</summary>
/// <param name="Version">Which, 0 to 15.</param>
public sealed record OtherVersion(int Version) : CardReading;
