using System.Text.Json;
using HintBook.Browser.Tests.Engines;
using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Tests.Publishing.Visits;

namespace HintBook.Browser.Tests;

// What pages may count on in every engine, found out by a page's own script: a driver's isn't bound by the page's policy.
public class EngineFactsTests(ReadingRoom room, EngineRoom engines)
{
    private const string Chromium = "Chromium";

    // PBKDF2 with HMAC-SHA-256: the first 32 bytes of the first test vector of RFC 7914, section 11.
    private const string Script =
        """
        (async () => {
          const facts = {};
          const tryOut = async (name, what) => {
            try {
              facts[name] = Boolean(await what());
            } catch {
              facts[name] = false;
            }
          };
          const bytes = text => new TextEncoder().encode(text);
          await tryOut('pbkdf2', async () => {
            const key = await crypto.subtle.importKey('raw', bytes('passwd'), 'PBKDF2', false, ['deriveBits']);
            const made = await crypto.subtle.deriveBits({ name: 'PBKDF2', hash: 'SHA-256', salt: bytes('salt'), iterations: 1 }, key, 256);
            const hex = [...new Uint8Array(made)].map(each => each.toString(16).padStart(2, '0')).join('');
            return hex === '55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc';
          });
          await tryOut('aes-gcm', async () => {
            const key = await crypto.subtle.generateKey({ name: 'AES-GCM', length: 256 }, false, ['encrypt', 'decrypt']);
            const how = { name: 'AES-GCM', iv: new Uint8Array(12) };
            const sealed = await crypto.subtle.encrypt(how, key, bytes('a jar'));
            return new TextDecoder().decode(await crypto.subtle.decrypt(how, key, sealed)) === 'a jar';
          });
          await tryOut('blob', async () => {
            const drawn = '<svg xmlns="http://www.w3.org/2000/svg" width="3" height="2"/>';
            const picture = new Image();
            await new Promise((done, fail) => {
              picture.onload = done;
              picture.onerror = fail;
              picture.src = URL.createObjectURL(new Blob([drawn], { type: 'image/svg+xml' }));
            });
            return picture.naturalWidth === 3;
          });
          await tryOut('hashchange', () => new Promise(done => {
            addEventListener('hashchange', () => done(location.hash === '#one'), { once: true });
            location.hash = 'one';
          }));
          await tryOut('replaceState', () => {
            history.replaceState(null, '', '#two');
            return location.hash === '#two';
          });
          await tryOut('fetch', async () => (await fetch('facts.js')).ok);
          document.documentElement.dataset.facts = JSON.stringify(facts);
        })();
        """;

    public static TheoryData<string, Source> Everywhere =>
    [
        .. from engine in new[] { Chromium, EngineRoom.Firefox, EngineRoom.WebKit }
           from source in Enum.GetValues<Source>()
           select new TheoryDataRow<string, Source>(engine, source),
    ];

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task Secrets_can_be_opened_and_a_code_taken_from_the_address(string engine, Source source)
    {
        var facts = await Facts(engine, source, "default-src 'self'; img-src 'self' blob:");

        Assert.Equal(
            ["pbkdf2", "aes-gcm", "blob", "hashchange", "replaceState"],
            facts.Where(each => each.Value && each.Key != "fetch").Select(each => each.Key));
        Assert.Equal(source == Source.Http, facts["fetch"]);
    }

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task A_picture_from_memory_wants_a_word_in_the_policy(string engine, Source source) =>
        Assert.False((await Facts(engine, source, "default-src 'self'"))["blob"]);

    // Nothing can be opened there that was sealed: it is no secure context (W3C, "Secure Contexts", section 3.1), and the page can tell.
    [Theory]
    [InlineData(Chromium)]
    [InlineData(EngineRoom.Firefox)]
    [InlineData(EngineRoom.WebKit)]
    public async Task Over_plain_http_from_a_host_with_a_name_there_is_no_way_to_open_a_secret(string engine)
    {
        var facts = await OfAPage("default-src 'self'; img-src 'self' blob:", async folder =>
        {
            using var proxy = new LoopbackHost(folder);
            return await FactsAt(engine, "http://box.home.arpa/index.html", new(Proxy: proxy.Address.Port));
        });

        Assert.Equal(["blob", "hashchange", "replaceState", "fetch"], facts.Where(each => each.Value).Select(each => each.Key));
    }

    private Task<IReadOnlyDictionary<string, bool>> Facts(string engine, Source source, string policy) => OfAPage(policy, async folder =>
    {
        using var server = FolderServer.Of(folder);
        var address = (source == Source.Http ? server.Address : new Uri(folder + Path.DirectorySeparatorChar).AbsoluteUri) + "index.html";
        return await FactsAt(engine, address, new());
    });

    private static async Task<IReadOnlyDictionary<string, bool>> OfAPage(string policy, Func<string, Task<string>> read)
    {
        var folder = Directory.CreateTempSubdirectory("hintbook facts").FullName;
        try
        {
            await File.WriteAllTextAsync(Path.Combine(folder, "facts.js"), Script);
            await File.WriteAllTextAsync(
                Path.Combine(folder, "index.html"),
                $"""
                <!doctype html>
                <meta charset="utf-8">
                <meta http-equiv="Content-Security-Policy" content="{policy}">
                <script src="facts.js" defer></script>
                """);
            return JsonSerializer.Deserialize<Dictionary<string, bool>>(await read(folder)) ?? [];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private async Task<string> FactsAt(string engine, string address, Circumstances circumstances)
    {
        if (engine == Chromium)
        {
            await using var reader = await room.Seat(circumstances);
            await reader.Page.GotoAsync(address);
            return await reader.Page.Locator("html[data-facts]").GetAttributeAsync("data-facts") ?? "";
        }

        await using var visitor = await engines.Seat(engine, room.Shelf.Small, circumstances);
        await visitor.Tab.Go(address);
        await visitor.Until("!!document.documentElement.dataset.facts");
        return await visitor.Text("document.documentElement.dataset.facts");
    }
}
