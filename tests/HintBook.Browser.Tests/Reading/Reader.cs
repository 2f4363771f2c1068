using System.Text.RegularExpressions;
using HintBook.Browser.Tests.Engines;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests.Reading;

/// <summary>Someone who reads a site in a browser: what they do, and what they see, hear and meet with the Tab key.</summary>
internal sealed class Reader : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly PublishedSite site;
    private readonly Circumstances circumstances;

    private Reader(IBrowserContext context, PublishedSite site, Circumstances circumstances)
    {
        this.context = context;
        this.site = site;
        this.circumstances = circumstances;
        Network = new Network(context);
    }

    public IPage Page { get; private set; } = null!;

    /// <summary>The theme of the book that is read.</summary>
    public string Theme => circumstances.Theme;

    /// <summary>What the browser asked for and complained of.</summary>
    public Network Network { get; }

    public static async Task<Reader> Of(IBrowser browser, PublishedSite site, Circumstances circumstances, ViewportSize? size, float density)
    {
        var profile = await browser.NewContextAsync(new()
        {
            JavaScriptEnabled = circumstances.Script,
            ViewportSize = size ?? (circumstances.Phone ? new() { Width = 390, Height = 844 } : new() { Width = 1280, Height = 800 }),
            DeviceScaleFactor = density,
            HasTouch = circumstances.Phone,
            ColorScheme = circumstances.Dark ? ColorScheme.Dark : ColorScheme.Light,
            // A fading text has no contrast to measure.
            ReducedMotion = ReducedMotion.Reduce,
            Locale = circumstances.Locale,
            Proxy = circumstances.Proxy is { } port ? new() { Server = $"http://127.0.0.1:{port}" } : null,
        });
        profile.SetDefaultTimeout(Arrival.Patience);
        var reader = new Reader(profile, site, circumstances);
        await reader.TakeNewPage();
        return reader;
    }

    public async ValueTask DisposeAsync() => await context.DisposeAsync();

    /// <summary>Opens another tab in the same profile; it is the reader's from now on.</summary>
    public async Task TakeNewPage() => Page = await context.NewPageAsync();

    /// <summary>Runs a script in every page before its own, as a browser's settings would.</summary>
    public Task BeforeEveryPage(string script) => context.AddInitScriptAsync(script);

    /// <summary>Goes to a page of the site by its address.</summary>
    public Task Open(string page) => Page.GotoAsync(site.Address(circumstances.Source) + page);

    public Task OpenFront() => Open("index.html");

    public Task OpenStage(string stage) => Open(site.PageOf(stage));

    /// <summary>The disclosure whose words begin with these.</summary>
    public ILocator Summary(string words) =>
        Page.Locator("summary").Filter(new() { HasTextRegex = new($@"^\s*{Regex.Escape(words)}") });

    /// <summary>Clicks or taps a disclosure that can be seen.</summary>
    public async Task Press(string summary)
    {
        await Summary(summary).Filter(new() { Visible = true }).ClickAsync();
        await Settle();
    }

    /// <summary>Asks for a tier of help, and once more where the theme asks back.</summary>
    public async Task Take(string tier)
    {
        await Press(tier);
        if (await Summary(Words.AnswerNow).IsVisibleAsync())
            await Press(Words.AnswerNow);
    }

    /// <summary>Saves the notes for the maker on the front page.</summary>
    /// <param name="name">What the reader calls themselves.</param>
    /// <returns>The file that the browser has saved: its name and where it lies.</returns>
    public async Task<(string Name, string Path)> SaveNotes(string name)
    {
        await Press(Words.Notes);
        await Page.Locator("[data-who]").FillAsync(name);
        var saved = await Page.RunAndWaitForDownloadAsync(() => Page.GetByRole(AriaRole.Button, new() { Name = Words.SaveNotes }).ClickAsync());
        return (saved.SuggestedFilename, await saved.PathAsync());
    }

    /// <summary>Cuts the network off from now on.</summary>
    public Task GoOffline() => context.SetOfflineAsync(true);

    /// <summary>Follows a link that can be seen.</summary>
    public async Task Follow(string link)
    {
        var anchor = Page.GetByRole(AriaRole.Link, new() { Name = link, Exact = true });
        // The whole address: that of a page in another language may end alike.
        var page = await anchor.EvaluateAsync<string>("link => link.href");
        await anchor.ClickAsync();
        await Page.ArriveAt(page);
    }

    /// <summary>Waits until a page of the site that the reader is on the way to is there as a whole.</summary>
    public Task Arrive(string page) => Page.Arrive(page);

    /// <summary>Waits until an asynchronous function of the page returns true. The browser's own wait doesn't await a promise and takes it for true.</summary>
    /// <param name="function">The function, as JavaScript.</param>
    /// <param name="argument">its argument</param>
    public Task Until(string function, object? argument = null) => Wait.Until(() => IsTrue(function, argument), function);

    /// <summary>Opens by hand whatever can be seen and is closed, until nothing is left.</summary>
    /// <param name="kind">Only these, and what is in them, as a CSS selector.</param>
    public async Task OpenAllByHand(string kind = "details")
    {
        var closed = Page.Locator($"details:is({kind}, {kind} *):not([open]) > summary:visible");
        while (await closed.CountAsync() > 0)
        {
            await closed.First.ClickAsync();
            await Settle();
        }
    }

    /// <summary>Opens everything at once.</summary>
    public async Task OpenAll()
    {
        await Page.EvaluateAsync("() => { for (const each of document.querySelectorAll('details')) each.open = true; }");
        await Settle();
    }

    /// <summary>Loads and decodes every picture of the page now, as scrolling past all of them would in the end.</summary>
    public Task LoadPictures() => Page.EvaluateAsync(
        """
        () => Promise.all([...document.images].map(picture => {
          picture.loading = 'eager';
          return picture.decode();
        }))
        """);

    /// <summary>What a page of “Where am I?” asks, as far as it can be seen.</summary>
    public async Task<Asked> Question()
    {
        var links = await Page.EvaluateAsync<string[][]>(
            """
            () => [...document.querySelectorAll('body.where :is(ul.stages, ol.lines, .none) a')]
              .filter(link => link.checkVisibility({ opacityProperty: true, visibilityProperty: true }))
              .map(link => [
                link.closest('.none') ? 'none' : link.closest('.lines') ? 'line' : 'sign',
                link.innerText.trim().replace(/\s+/g, ' '),
                link.getAttribute('href'),
              ])
            """);
        return new([.. Of("sign")], [.. Of("line")], Of("none").SingleOrDefault());

        IEnumerable<Choice> Of(string kind) => links.Where(link => link[0] == kind).Select(link => new Choice(link[1], link[2]));
    }

    /// <summary>The links to stages that can be seen.</summary>
    public async Task<IReadOnlyList<string>> StageLinks(string within = "body") =>
        await Page.Locator($":is({within} .stages, {within}.stages) a:visible").AllTextContentsAsync();

    /// <summary>Where the links to stages lead that can be seen, as they are written.</summary>
    public async Task<IReadOnlyList<string>> StageAddresses() =>
        await Page.Locator(".stages a:visible").EvaluateAllAsync<string[]>("links => links.map(link => link.getAttribute('href'))");

    /// <summary>All text that is drawn, with the words for pictures that are drawn.</summary>
    public Task<string> Seen() => Page.EvaluateAsync<string>(
        """
        () => {
          const drawn = element => element.checkVisibility({ opacityProperty: true, visibilityProperty: true });
          const seen = [];
          const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (texts.nextNode()) if (drawn(texts.currentNode.parentElement)) seen.push(texts.currentNode.data);
          for (const picture of document.images) if (drawn(picture)) seen.push('\n' + picture.alt);
          return seen.join('').replace(/\s+/g, ' ');
        }
        """);

    /// <summary>All that the browser tells a screen reader.</summary>
    public async Task<string> Heard()
    {
        var session = await context.NewCDPSessionAsync(Page);
        var tree = await session.SendAsync("Accessibility.getFullAXTree");
        await session.DetachAsync();
        return string.Join(
            '\n',
            from node in tree!.Value.GetProperty("nodes").EnumerateArray()
            where !node.GetProperty("ignored").GetBoolean()
            from part in new[] { "name", "description", "value" }
            where node.TryGetProperty(part, out _)
            select node.GetProperty(part).GetProperty("value").ToString());
    }

    /// <summary>What the Tab key meets on its way once through the whole page, as text and address.</summary>
    public async Task<IReadOnlyList<string>> TabStops()
    {
        // Wherever the focus is now, a whole round leads through the top of the page back to the first stop of the round.
        var stops = new List<string>();
        for (var stop = await Tab() ?? await Tab(); stop is null || !stops.Contains(stop); stop = await Tab())
        {
            if (stop is not null)
                stops.Add(stop);
        }

        return stops;
    }

    /// <summary>Presses Tab until the focus is on something whose text begins with these words.</summary>
    public async Task TabTo(string words)
    {
        var passed = new HashSet<string>();
        while (await Tab() is { } stop)
        {
            if (stop.Contains($"> {words}", StringComparison.Ordinal))
                return;
            Assert.True(passed.Add(stop), $"The Tab key never reaches “{words}”; it met {string.Join(", ", passed)}.");
        }

        Assert.Fail($"The Tab key never reaches “{words}”; it met {string.Join(", ", passed)}.");
    }

    /// <summary>All that the site has stored on the device, as it is written.</summary>
    public Task<string> Kept() => Page.EvaluateAsync<string>("() => Object.values(localStorage).join('\\n')");

    /// <summary>What stands in the head: title, metadata, addresses, and the address of the page itself.</summary>
    public Task<string> Head() => Page.EvaluateAsync<string>(
        """
        () => [location.href, document.title,
          ...[document.documentElement, ...document.head.querySelectorAll('*')].flatMap(each => [...each.attributes].map(attribute => attribute.value)),
        ].join('\n')
        """);

    // The browser tells the page's script of an opened disclosure a moment after it is open (WHATWG HTML, 4.11.1: a task is queued).
    private Task Settle() => circumstances.Script
        ? Page.EvaluateAsync("() => new Promise(done => requestAnimationFrame(() => setTimeout(done)))")
        : Task.CompletedTask;

    // Null when the focus has left the page's own content.
    private async Task<string?> Tab()
    {
        await Page.Keyboard.PressAsync("Tab");
        return await Page.EvaluateAsync<string?>(
            """
            () => {
              const now = document.activeElement;
              if (!now || now === document.body || now === document.documentElement) return null;
              const place = [...document.querySelectorAll('*')].indexOf(now);
              const text = now.textContent.trim().replace(/\s+/g, ' ');
              return `${place} ${now.localName} ${now.getAttribute('href') || ''}> ${text} ${now.getAttribute('aria-label') || ''}`;
            }
            """);
    }

    // While one page takes the place of another there is none to ask.
    private async Task<bool> IsTrue(string function, object? argument)
    {
        try
        {
            return await Page.EvaluateAsync<bool>(function, argument);
        }
        catch (PlaywrightException error) when (error.Message.Contains("navigation", StringComparison.Ordinal))
        {
            return false;
        }
    }
}
