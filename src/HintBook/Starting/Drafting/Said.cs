namespace HintBook.Starting.Drafting;

/// <summary>What is said in a film for a while.</summary>
/// <param name="From">When it begins.</param>
/// <param name="To">When it ends; never before it begins.</param>
/// <param name="Text">The words, on one line, without tags.</param>
public sealed record Said(TimeSpan From, TimeSpan To, string Text);

/// <summary>A chapter of a film.</summary>
/// <param name="From">When it begins.</param>
/// <param name="Title">What it is called; empty where the list says nothing.</param>
public sealed record Chapter(TimeSpan From, string Title);
