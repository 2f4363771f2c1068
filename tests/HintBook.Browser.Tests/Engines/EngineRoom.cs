using HintBook.Browser.Tests.Engines;
using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Tests.House;

[assembly: AssemblyFixture(typeof(EngineRoom))]

namespace HintBook.Browser.Tests.Engines;

/// <summary>The engines that an owner may hold beside Chromium's. Each is installed and started when the first test asks for it.</summary>
public sealed class EngineRoom : IAsyncDisposable
{
    public const string Firefox = "Firefox";

    public const string WebKit = "WebKit";

    // With what plays films: WebKitGTK leaves that to GStreamer.
    private const string PackagesOfWebKit = "webkit2gtk-driver xvfb python3-gi gir1.2-webkit2-4.1 "
        + "gstreamer1.0-plugins-good gstreamer1.0-plugins-bad gstreamer1.0-libav";

    private readonly Turn firefox = new(() => new Firefox("firefox-esr"));
    private readonly Turn webKit = new(() => new WebKit());

    /// <summary>Their names, for tables of tests.</summary>
    public static TheoryData<string> Names => [Firefox, WebKit];

    /// <summary>Someone who reads a site in an engine, or the reason for which the test is skipped. They have it for themselves until they go.</summary>
    internal async Task<Visitor> Seat(string engine, PublishedSite site, Circumstances circumstances, string? profile = null)
    {
        if (engine == Firefox)
            DebianProgram.Have("Firefox ESR", "firefox-esr", () => DebianProgram.IsThere("firefox-esr"));
        else
            DebianProgram.Have("WebKitGTK with its driver", PackagesOfWebKit, () => DebianProgram.IsThere("WebKitWebDriver") && DebianProgram.IsThere("Xvfb"));
        var turn = engine == Firefox ? firefox : webKit;
        await turn.Wait();
        try
        {
            return new(await turn.Engine.Open(circumstances, profile), site, circumstances, turn.End);
        }
        catch
        {
            turn.End();
            throw;
        }
    }

    public async ValueTask DisposeAsync()
    {
        await firefox.DisposeAsync();
        await webKit.DisposeAsync();
    }

    // An engine drives one tab at a time, and tests come two at a time.
    private sealed class Turn(Func<IEngine> make) : IAsyncDisposable
    {
        private readonly SemaphoreSlim one = new(1);
        private IEngine? engine;

        public IEngine Engine => engine ??= make();

        public Task Wait() => one.WaitAsync();

        public void End() => one.Release();

        public async ValueTask DisposeAsync()
        {
            one.Dispose();
            if (engine is not null)
                await engine.DisposeAsync();
        }
    }
}
