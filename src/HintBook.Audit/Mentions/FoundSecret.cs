using System.Runtime.InteropServices;

namespace HintBook.Audit.Mentions;

/// <summary>A secret that a text names.</summary>
/// <param name="Secret">Its place in the table.</param>
/// <param name="First">The first word of the mention.</param>
/// <param name="Last">Its last word.</param>
/// <param name="Sure">Whether it can mean nothing else.</param>
/// <param name="Words">How many words its spelling has: a lone word is easily just a word.</param>
/// <param name="IsCode">Whether it is met symbol by symbol.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct FoundSecret(int Secret, int First, int Last, bool Sure, int Words, bool IsCode);
