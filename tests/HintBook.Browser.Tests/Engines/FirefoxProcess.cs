using System.Diagnostics;

namespace HintBook.Browser.Tests.Engines;

/// <summary>A running Firefox without a window, and the way to tell it what to do.</summary>
internal sealed class FirefoxProcess : IAsyncDisposable
{
    // What the browser does by itself, for its own people, would only take time and ask for a network.
    private const string Settings =
        """
        user_pref("app.normandy.enabled", false);
        user_pref("browser.aboutwelcome.enabled", false);
        user_pref("browser.discovery.enabled", false);
        user_pref("browser.newtabpage.enabled", false);
        user_pref("browser.region.network.url", "");
        user_pref("browser.shell.checkDefaultBrowser", false);
        user_pref("browser.startup.homepage", "about:blank");
        user_pref("browser.startup.page", 0);
        user_pref("browser.topsites.contile.enabled", false);
        user_pref("datareporting.policy.dataSubmissionEnabled", false);
        user_pref("extensions.getAddons.cache.enabled", false);
        user_pref("media.gmp-manager.updateEnabled", false);
        user_pref("network.captive-portal-service.enabled", false);
        user_pref("network.connectivity-service.enabled", false);
        user_pref("services.settings.server", "data:,");
        user_pref("startup.homepage_welcome_url", "about:blank");
        user_pref("toolkit.telemetry.reportingpolicy.firstRun", false);
        user_pref("marionette.port", 0);
        // Not set by default, but what a driver would set relaxes file://, where readers have it as strict as this.
        user_pref("remote.prefs.recommended", false);
        user_pref("security.fileuri.strict_origin_policy", true);
        // Films may start by script, as they may after a reader's own click.
        user_pref("media.autoplay.default", 0);
        user_pref("ui.prefersReducedMotion", 1);
        """;

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly Process process;

    private FirefoxProcess(Process process, Marionette control) => (this.process, Control) = (process, control);

    public Marionette Control { get; }

    /// <summary>Starts it with a profile, which is made if it isn't there.</summary>
    public static async Task<FirefoxProcess> Start(string program, string profile)
    {
        Directory.CreateDirectory(profile);
        await File.WriteAllTextAsync(Path.Combine(profile, "user.js"), Settings);
        var portFile = Path.Combine(profile, "MarionetteActivePort");
        File.Delete(portFile);
        var start = new ProcessStartInfo(program, ["--headless", "--marionette", "--remote-allow-system-access", "--no-remote", "--profile", profile])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        // A browser of root's refuses another one's home.
        start.Environment["HOME"] = profile;
        var started = Process.Start(start) ?? throw new InvalidOperationException($"{program} doesn't start.");
        started.OutputDataReceived += (_, _) => { };
        started.ErrorDataReceived += (_, _) => { };
        started.BeginOutputReadLine();
        started.BeginErrorReadLine();
        var port = 0;
        await Wait.Until(async () => File.Exists(portFile) && int.TryParse(await File.ReadAllTextAsync(portFile), out port), "Firefox listens", Patience);
        var control = await Marionette.Connect(port);
        await control.Do("WebDriver:NewSession");
        await control.Do("WebDriver:SetTimeouts", new { script = 60_000, pageLoad = 60_000 });
        return new(started, control);
    }

    /// <summary>Ends it as its own menu does, so that it writes down what it keeps.</summary>
    public async Task Quit()
    {
        await Control.Do("Marionette:Quit", new { flags = new[] { "eAttemptQuit" } });
        await process.WaitForExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        Control.Dispose();
        if (!process.HasExited)
            process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
    }
}
