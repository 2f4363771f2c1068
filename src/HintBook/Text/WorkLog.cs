using System.Collections.Concurrent;

namespace HintBook.Text;

/// <summary>Work that one run does once for each thing, however many rooms need its result.</summary>
public enum Work
{
    /// <summary>A book's box is turned into the machine that the explorers see.</summary>
    Compile,

    /// <summary>A machine's states are explored.</summary>
    Explore,

    /// <summary>The secrets of a book in one language are collected, with what is known where.</summary>
    CollectSecrets,

    /// <summary>The codes of a book are proved.</summary>
    ProveCodes,

    /// <summary>The answers of “Where am I?” are worked out.</summary>
    FindPlaces,

    /// <summary>A photo's bytes are read and its key is computed.</summary>
    KeyPhoto,

    /// <summary>A film is opened and read.</summary>
    ReadFilm,

    /// <summary>A PDF of the cards is drawn.</summary>
    MakePdf,

    /// <summary>A PDF of a paper beside the cards is drawn.</summary>
    MakePaper,

    /// <summary>A card's code is drawn as a picture.</summary>
    MakePicture,

    /// <summary>A photo is developed for paper.</summary>
    DevelopForPaper,

    /// <summary>A card's code is decoded from its picture.</summary>
    DecodePicture,

    /// <summary>A card's code is decoded from the finished PDF.</summary>
    DecodePdf,

    /// <summary>A code was read from the page of a paper, which was turned into pixels.</summary>
    DecodePaper,
}

/// <summary>Counts what was worked out in a run. It is passed in by whoever wants to know; thread-safe.</summary>
public sealed class WorkLog
{
    private readonly ConcurrentDictionary<(Work Work, string What), int> times = new();

    /// <summary>Every piece of work with the number of times that it was done.</summary>
    public IReadOnlyDictionary<(Work Work, string What), int> Times => times;

    /// <summary>Notes that something is being worked out.</summary>
    /// <param name="work">What kind of work.</param>
    /// <param name="what">Which of its kind: a file, a language, a card; nothing where there is only one.</param>
    public void Did(Work work, string what = "") => times.AddOrUpdate((work, what), 1, static (_, before) => before + 1);
}
