using System.Collections;
using System.Runtime.InteropServices;

namespace HintBook.Audit.Mentions;

/// <summary>Something that a reader can meet.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Line">Where, from 1; 0 where it concerns the file as a whole.</param>
/// <param name="Column">From 1.</param>
/// <param name="Where">The kind of place, as a sentence goes on: <c>in the title</c>.</param>
/// <param name="Manner">What sort of text it is.</param>
/// <param name="Scope">What may be said there.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct ReaderText(string Text, int Line, int Column, string Where, Manner Manner, Scope Scope);

/// <summary>What may be said at a place.</summary>
/// <param name="May">The secrets that may be named.</param>
/// <param name="MayToo">More of them, of the page that an element speaks of.</param>
/// <param name="Sure">Of which secrets it is sure that no others may; null for all.</param>
/// <param name="When">When a reader meets it, as a sentence goes on: <c>which is seen before anything is opened</c>.</param>
internal sealed record Scope(BitArray May, BitArray? MayToo, BitArray? Sure, string When)
{
    public bool Has(int secret) => May[secret] || MayToo?[secret] == true;

    public bool IsSureOf(int secret) => Sure is null || Sure[secret];
}

/// <summary>What sort of text it is, which tells how its words are to be taken.</summary>
internal enum Manner
{
    /// <summary>Sentences.</summary>
    Prose,

    /// <summary>An address, the name of a file, an identifier: signs part words, and nothing ends a sentence.</summary>
    Address,

    /// <summary>The address of a picture, a film or a sound: the same, and a noun there is what it shows.</summary>
    Picture,

    /// <summary>Words of the trade among others, in which a lone word says nothing: the classes of an element.</summary>
    Trade,

    /// <summary>A string in a script or a style: a lone word there is probably the programmer's.</summary>
    Quoted,

    /// <summary>Several short texts behind each other: only codes go on from one to the next.</summary>
    Items,

    /// <summary>Two or three short lines that may be one: a doubt.</summary>
    Lines,

    /// <summary>A remark in a script or a style: so is a number.</summary>
    Remark,
}

/// <summary>In which other forms a text is read as well.</summary>
internal enum Forms
{
    /// <summary>None.</summary>
    None,

    /// <summary>As a label of a list of parts turned about.</summary>
    Turned,

    /// <summary>Decoded.</summary>
    Decoded,

    /// <summary>Decoded, and without the times of an address.</summary>
    OfAddress,
}
