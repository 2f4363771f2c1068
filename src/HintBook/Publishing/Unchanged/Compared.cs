using System.Runtime.InteropServices;

namespace HintBook.Publishing.Unchanged;

/// <summary>What was compared to know that nothing has changed since the last publish, each file byte for byte by its digest.</summary>
/// <param name="Read">How many files lie in the book's folder, or in the shelf's.</param>
/// <param name="Made">How many files lie in the output folder.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Compared(int Read, int Made);
