namespace HintBook.Sealing;

/// <summary>The keys and names of sealed files.</summary>
/// <param name="parent">The book's root; where the secret is lost, the box key of the epoch.</param>
/// <param name="tag">The tag of the book.</param>
internal sealed class FileKeys(byte[] parent, byte[] tag)
{
    /// <summary>The tag of the book.</summary>
    public byte[] Tag => tag;

    /// <summary>The key of a file. It has no epoch: a photo that didn't change is nothing new to a retired copy, and isn't uploaded again.</summary>
    /// <param name="hash">The SHA-256 of its content.</param>
    public byte[] KeyOf(byte[] hash) => Derivation.Derive(parent, BookKeys.KeyLength, "file", hash);

    /// <summary>The name of a file: 16 letters that say nothing of what is in it.</summary>
    /// <param name="hash">The SHA-256 of its content.</param>
    public string NameOf(byte[] hash) => Letters32.Write(Derivation.Derive(parent, 10, "file name", hash)).ToLowerInvariant();
}
