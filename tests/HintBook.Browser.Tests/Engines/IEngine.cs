using System.Text.Json;
using HintBook.Browser.Tests.Reading;

namespace HintBook.Browser.Tests.Engines;

/// <summary>A browser engine other than Chromium's, as the tests drive it. One tab is open at a time.</summary>
internal interface IEngine : IAsyncDisposable
{
    /// <summary>Opens a tab that knows nothing of the tabs before it.</summary>
    /// <param name="circumstances">How the reader comes; where from and in which theme is the tests' matter.</param>
    /// <param name="profile">A folder that keeps what pages store until a tab is opened with it again, in a process of its own; null where nothing is to
    /// be kept.</param>
    Task<ITab> Open(Circumstances circumstances, string? profile = null);
}

/// <summary>A tab of an engine. Closed when it is disposed of.</summary>
internal interface ITab : IAsyncDisposable
{
    /// <summary>Goes to an address and waits until it is loaded.</summary>
    Task Go(string address);

    /// <summary>Runs the body of a function in the page. Works where the page's own script is switched off.</summary>
    Task<JsonElement> Run(string body, params object?[] arguments);

    /// <summary>The same for a body that may <c>await</c>. Not where script is switched off.</summary>
    Task<JsonElement> Await(string body, params object?[] arguments);

    /// <summary>Uses mouse or keys: the sources of W3C WebDriver, section 17.5, "Perform Actions".</summary>
    Task Act(params object[] sources);

    /// <summary>Gives the page another size, in CSS pixels.</summary>
    Task Resize(int width, int height);

    /// <summary>What shows of the page now, as PNG.</summary>
    Task<byte[]> Screenshot();

    /// <summary>The page at an address, everything in it opened, as PDF on A4.</summary>
    Task<byte[]> Print(string address);

    /// <summary>What the engine's console says of all pages since the tab was opened.</summary>
    Task<IReadOnlyCollection<string>> Console();
}
