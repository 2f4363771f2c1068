using System.Text.Json;
using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests.Engines;

/// <summary>Someone who reads a site in an engine, with its mouse and keys.</summary>
internal sealed class Visitor(ITab tab, PublishedSite site, Circumstances circumstances, Action leave) : IAsyncDisposable
{
    // The first that can be seen of those whose words begin like this, in the middle of the window, as [x, y]; null if there is none.
    private const string Find =
        """
        const [selector, words] = arguments;
        const found = [...document.querySelectorAll(selector)].find(each => each.checkVisibility()
          && (each.textContent.trim().replace(/\s+/g, ' ') + ' ').startsWith(words));
        if (!found) return null;
        found.scrollIntoView({ block: 'center', behavior: 'instant' });
        const { x, y, width, height } = found.getClientRects()[0];
        return [x + width / 2, y + height / 2].map(Math.floor);
        """;

    /// <summary>The tab.</summary>
    public ITab Tab => tab;

    public async ValueTask DisposeAsync()
    {
        try
        {
            await tab.DisposeAsync();
        }
        finally
        {
            leave();
        }
    }

    /// <summary>Goes to a page of the site by its address.</summary>
    public Task Open(string page) => Leave(() => tab.Go(site.Address(circumstances.Source) + page), page);

    public Task OpenFront() => Open("index.html");

    public Task OpenStage(string stage) => Open(site.PageOf(stage));

    /// <summary>Clicks what can be seen: the first of these elements whose words begin like this.</summary>
    public async Task Click(string selector, string words = "")
    {
        var place = await tab.Run(Find, selector, words);
        Assert.True(place.ValueKind == JsonValueKind.Array, $"Nothing to click: {selector} “{words}”.");
        await tab.Act(new
        {
            type = "pointer",
            id = "mouse",
            actions = new object[]
            {
                new { type = "pointerMove", x = place[0].GetInt32(), y = place[1].GetInt32(), duration = 0 },
                new { type = "pointerDown", button = 0 },
                new { type = "pointerUp", button = 0 },
            },
        });
    }

    /// <summary>Clicks a disclosure and waits until it has turned.</summary>
    public async Task Press(string summary)
    {
        var before = await Folds();
        await Click("summary", summary);
        await Wait.Until(async () => await Folds() != before, $"“{summary}” turns");
        // The browser tells the page's script of an opened disclosure a moment after it is open (WHATWG HTML, 4.11.1: a task is queued).
        if (circumstances.Script)
            await tab.Await("await new Promise(done => requestAnimationFrame(() => setTimeout(done)));");
    }

    /// <summary>Asks for a tier of help, and once more where the theme asks back.</summary>
    public async Task Take(string tier)
    {
        await Press(tier);
        if ((await tab.Run(Find, "summary", Words.AnswerNow)).ValueKind == JsonValueKind.Array)
            await Press(Words.AnswerNow);
    }

    /// <summary>Follows a link that can be seen and waits until the page is there that it leads to.</summary>
    public Task Follow(string words) => Leave(() => Click("a", words), $"the page behind “{words}”");

    /// <summary>Presses one key after the other: characters, or those of W3C WebDriver's table "Keyboard Actions".</summary>
    public Task Keys(params string[] keys) => tab.Act(new
    {
        type = "key",
        id = "keys",
        actions = keys.SelectMany(key => (object[])[new { type = "keyDown", value = key }, new { type = "keyUp", value = key }]),
    });

    /// <summary>Opens every fold at once, and loads every picture.</summary>
    public Task OpenAll() => circumstances.Script
        ? tab.Await(Later.OpenEverything)
        : tab.Run("for (const each of document.querySelectorAll('details')) each.open = true;");

    /// <summary>What an expression gives in the page.</summary>
    public Task<JsonElement> Value(string expression) => tab.Run($"return ({expression});");

    /// <summary>A text that an expression gives.</summary>
    public async Task<string> Text(string expression) => (await Value(expression)).ToString();

    /// <summary>Waits until an expression is true in the page.</summary>
    public Task Until(string expression) =>
        Wait.Until(async () => (await Asked(expression)).ValueKind == JsonValueKind.True, expression);

    /// <summary>The heading of the page.</summary>
    public Task<string> Heading() => Text("document.querySelector('h1').textContent.trim()");

    /// <summary>The links to stages that can be seen.</summary>
    public async Task<IReadOnlyList<string>> StageLinks(string within = "body") =>
        [
            .. (await tab.Run(
                "return [...document.querySelectorAll(`:is(${arguments[0]} .stages, ${arguments[0]}.stages) a`)].filter(each => each.checkVisibility())"
                + ".map(each => each.textContent);",
                within)).EnumerateArray().Select(each => each.ToString()),
        ];

    /// <summary>All text that is drawn.</summary>
    public Task<string> Seen() => Text(
        """
        (() => {
          const seen = [];
          const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (texts.nextNode()) {
            if (texts.currentNode.parentElement.checkVisibility({ visibilityProperty: true })) seen.push(texts.currentNode.data);
          }
          return seen.join('').replace(/\s+/g, ' ');
        })()
        """);

    // The page that is left carries a mark. Between two pages Firefox shows an empty one, which is complete as well.
    private async Task Leave(Func<Task> leave, string what)
    {
        const string IsThere =
            "document.readyState === 'complete' && !document.documentElement.dataset.left && location.href !== 'about:blank' && !!document.body";
        await tab.Run("document.documentElement.dataset.left = 'soon'");
        await leave();
        await Wait.Until(async () => (await Asked(IsThere)).ValueKind == JsonValueKind.True, what);
    }

    private Task<string> Folds() => Text("location.href + [...document.querySelectorAll('details')].map(each => each.open)");

    // Between two pages there is none to ask.
    private async Task<JsonElement> Asked(string expression)
    {
        try
        {
            return await Value(expression);
        }
        catch (InvalidOperationException)
        {
            return default;
        }
    }
}
