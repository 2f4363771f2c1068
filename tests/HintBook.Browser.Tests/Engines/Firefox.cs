using System.Text.Json;
using HintBook.Browser.Tests.Reading;

namespace HintBook.Browser.Tests.Engines;

/// <summary>Gecko, in Firefox ESR. One process for all tabs; each tab has a container of its own, with which it shares nothing that is stored.</summary>
internal sealed class Firefox(string program) : IEngine
{
    private readonly string folder = Directory.CreateTempSubdirectory("hintbook-firefox").FullName;
    private FirefoxProcess? shared;

    public async Task<ITab> Open(Circumstances circumstances, string? profile = null)
    {
        if (profile is not null)
            return await Tab.Open(await FirefoxProcess.Start(program, profile), circumstances, isOwner: true);
        shared ??= await FirefoxProcess.Start(program, Path.Combine(folder, "profile"));
        return await Tab.Open(shared, circumstances, isOwner: false);
    }

    public async ValueTask DisposeAsync()
    {
        if (shared is not null)
            await shared.DisposeAsync();
        await Wait.Removed(folder);
    }

    private sealed class Tab(FirefoxProcess process, string before, bool isOwner) : ITab
    {
        private const int MostTries = 3;

        // What an engine's own pages say is none of ours.
        private const string SaidByPages =
            """
            const isOurs = file => /^(file|http):/.test(file || '');
            const told = Services.console.getMessageArray()
              .filter(each => each instanceof Ci.nsIScriptError && isOurs(each.sourceName)).map(each => each.message);
            const kept = Cc['@mozilla.org/consoleAPI-storage;1'].getService(Ci.nsIConsoleAPIStorage);
            return told.concat(kept.getEvents().filter(each => isOurs(each.filename)).map(each => `${each.level}: ${each.arguments.join(' ')}`));
            """;

        private Marionette Control => process.Control;

        public static async Task<Tab> Open(FirefoxProcess process, Circumstances circumstances, bool isOwner)
        {
            var control = process.Control;
            var before = (await control.Do("WebDriver:GetWindowHandle")).GetProperty("value").GetString() ?? "";
            var tab = new Tab(process, before, isOwner);
            if (!isOwner)
            {
                await tab.RunInBrowser(
                    """
                    const { ContextualIdentityService: containers } = ChromeUtils.importESModule('resource://gre/modules/ContextualIdentityService.sys.mjs');
                    const { userContextId } = containers.create('reader', 'circle', 'blue');
                    gBrowser.selectedTab = gBrowser.addTrustedTab('about:blank', { userContextId });
                    """);
                var handles = (await control.Do("WebDriver:GetWindowHandles")).EnumerateArray().Select(each => each.GetString());
                await control.Do("WebDriver:SwitchToWindow", new { handle = handles.Last() });
            }

            await tab.RunInBrowser(
                """
                const [dark, script, language, phone, proxy] = arguments;
                const { prefs } = Services;
                prefs.setIntPref('layout.css.prefers-color-scheme.content-override', dark ? 0 : 1);
                prefs.setStringPref('intl.accept_languages', language);
                prefs.setBoolPref('javascript.enabled', script);
                // A phone's scrollbars lie over the page.
                prefs.setIntPref('ui.useOverlayScrollbars', phone ? 1 : 0);
                prefs.setStringPref('network.proxy.http', proxy ? '127.0.0.1' : '');
                prefs.setIntPref('network.proxy.http_port', proxy);
                prefs.setIntPref('network.proxy.type', proxy ? 1 : 0);
                Services.console.reset();
                Cc['@mozilla.org/consoleAPI-storage;1'].getService(Ci.nsIConsoleAPIStorage).clearEvents();
                """,
                circumstances.Dark,
                circumstances.Script,
                circumstances.Locale,
                circumstances.Phone,
                circumstances.Proxy ?? 0);
            await tab.Resize(circumstances.Phone ? 390 : 1280, circumstances.Phone ? 844 : 800);
            return tab;
        }

        public Task Go(string address) => Control.Do("WebDriver:Navigate", new { url = address });

        // In a list, which tells nothing that the script gives from nothing that comes back.
        public async Task<JsonElement> Run(string body, params object?[] arguments)
        {
            var answer = await Answered("WebDriver:ExecuteScript", $"return [(function () {{\n{body}\n}}).apply(null, arguments)];", arguments);
            return answer.ValueKind == JsonValueKind.Array ? answer[0] : answer;
        }

        public async Task<JsonElement> Await(string body, params object?[] arguments) =>
            Later.Result(await Answered("WebDriver:ExecuteAsyncScript", Later.Script(body), arguments));

        public Task Act(params object[] sources) => Control.Do("WebDriver:PerformActions", new { actions = sources });

        public Task Resize(int width, int height) => RunInBrowser(
            """
            const { style } = gBrowser.selectedBrowser;
            [style.minWidth, style.minHeight] = [style.maxWidth, style.maxHeight] = [...arguments].map(each => each + 'px');
            """,
            width,
            height);

        public async Task<byte[]> Screenshot() =>
            (await Control.Do("WebDriver:TakeScreenshot", new { full = false })).GetProperty("value").GetBytesFromBase64();

        public async Task<byte[]> Print(string address)
        {
            await Go(address);
            await Await(Later.OpenEverything);
            var page = new { width = 21.0, height = 29.7 };
            var margin = new { top = 1.5, bottom = 1.5, left = 1.5, right = 1.5 };
            // Firefox asks for the pictures that paper gets while it prints, and on a busy machine doesn't wait for them: the first print fetches them.
            await Control.Do("WebDriver:Print", new { page, margin });
            return (await Control.Do("WebDriver:Print", new { page, margin })).GetProperty("value").GetBytesFromBase64();
        }

        public async Task<IReadOnlyCollection<string>> Console() =>
            [.. (await RunInBrowser(SaidByPages)).EnumerateArray().Select(each => each.GetString() ?? "")];

        public async ValueTask DisposeAsync()
        {
            if (isOwner)
            {
                await process.Quit();
                await process.DisposeAsync();
                return;
            }

            await Control.Do("WebDriver:CloseWindow");
            await Control.Do("WebDriver:SwitchToWindow", new { handle = before });
        }

        // Nothing at all comes back where the browser moved the page into another process meanwhile, as it may just after it is there: then the script is
        // run again.
        private async Task<JsonElement> Answered(string command, string script, object?[] arguments)
        {
            for (var tries = 1; ; tries++)
            {
                var answer = (await Control.Do(command, new { script, args = arguments })).GetProperty("value");
                if (answer.ValueKind != JsonValueKind.Null || tries == MostTries)
                    return answer;
            }
        }

        private async Task<JsonElement> RunInBrowser(string body, params object?[] arguments)
        {
            await Control.Do("Marionette:SetContext", new { value = "chrome" });
            var result = (await Control.Do("WebDriver:ExecuteScript", new { script = body, args = arguments })).GetProperty("value");
            await Control.Do("Marionette:SetContext", new { value = "content" });
            return result;
        }
    }
}
