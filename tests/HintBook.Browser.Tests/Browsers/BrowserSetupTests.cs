namespace HintBook.Browser.Tests.Browsers;

public class BrowserSetupTests
{
    [Fact]
    public void An_installed_browser_is_used() =>
        Assert.Equal("here", new BrowserSetup(() => "here", Never).Browser());

    [Fact]
    public void A_missing_browser_is_installed_by_the_first_way_that_works()
    {
        string? installed = null;
        var setup = new BrowserSetup(
            () => installed,
            new("first", () => false),
            new("second", () => (installed = "fresh") is not null),
            Never);

        Assert.Equal("fresh", setup.Browser());
    }

    [Fact]
    public void Without_any_browser_one_sentence_says_what_to_do()
    {
        var setup = new BrowserSetup(() => null, new("first", () => false), new("second", () => true));

        var failure = Assert.Throws<InvalidOperationException>(setup.Browser);

        Assert.Equal(
            "The browser tests need Chromium, Chrome or Edge: none is installed, and `first` and `second` failed; install one and run the tests again.",
            failure.Message);
    }

    [Fact]
    public void A_browser_is_found_on_the_search_path()
    {
        var there = Path.Combine("two", OperatingSystem.IsWindows() ? "chromium.exe" : "chromium");

        Assert.Equal(there, InstalledBrowser.Find($"one{Path.PathSeparator}two", file => file == there));
    }

    private static BrowserSetup.Way Never => new("never", () => throw new InvalidOperationException("This was not to be tried."));
}
