using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;
using System.Net.Http.Json;
using System.Net.Sockets;
using System.Text.Json;
using HintBook.Browser.Tests.Reading;

namespace HintBook.Browser.Tests.Engines;

/// <summary>
/// WebKit, in WebKitGTK, on a screen that nobody sees. Its driver opens a window of our own for each tab, in a process that ends with it: how the reader
/// comes is said to it when it starts.
/// </summary>
internal sealed class WebKit : IEngine
{
    private const string Python = "/usr/bin/python3";

    // In pixels: room for a desk's page and a sheet of paper.
    private const string Screen = "1400x1200x24";

    private static readonly string Window = Path.Combine(AppContext.BaseDirectory, "Engines", "webkit-window.py");

    private readonly ConcurrentQueue<string> said = [];
    private readonly string folder = Directory.CreateTempSubdirectory("hintbook-webkit").FullName;
    private int tabs;
    private Process? screen, driver;
    private HttpClient? http;
    private string display = "";

    public async Task<ITab> Open(Circumstances circumstances, string? profile = null)
    {
        http ??= await Start();
        string[] how =
        [
            $"--languages={circumstances.Locale}",
            $"--width={(circumstances.Phone ? 390 : 1280)}",
            $"--height={(circumstances.Phone ? 844 : 800)}",
            .. circumstances.Dark ? (string[])["--dark"] : [],
            .. circumstances.Script ? (string[])[] : ["--no-script"],
            .. circumstances.Proxy is { } port ? (string[])[$"--proxy=http://127.0.0.1:{port}"] : [],
            $"--data={profile ?? Directory.CreateDirectory(Path.Combine(folder, $"{++tabs}")).FullName}",
        ];
        var options = new Dictionary<string, object> { ["webkitgtk:browserOptions"] = new { binary = Python, args = (string[])[Window, .. how] } };
        var session = await Ask(http, HttpMethod.Post, "session", new { capabilities = new { alwaysMatch = options } });
        said.Clear();
        var tab = new Tab(this, http, $"session/{session.GetProperty("sessionId").GetString()}/");
        await tab.Patient();
        return tab;
    }

    public async ValueTask DisposeAsync()
    {
        http?.Dispose();
        foreach (var process in new[] { driver, screen }.OfType<Process>())
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
            process.Dispose();
        }

        await Wait.Removed(folder);
    }

    private static async Task<JsonElement> Ask(HttpClient http, HttpMethod how, string what, object? with = null, CancellationToken patience = default)
    {
        using var request = new HttpRequestMessage(how, what) { Content = how == HttpMethod.Post ? JsonContent.Create(with ?? new { }) : null };
        // The driver answers no request whose length isn't said beforehand.
        if (request.Content is { } content)
            await content.LoadIntoBufferAsync(patience);
        using var answer = await http.SendAsync(request, patience);
        var value = (await answer.Content.ReadFromJsonAsync<JsonElement>(patience)).GetProperty("value");
        return answer.IsSuccessStatusCode ? value : throw new InvalidOperationException($"{how} {what}: {value}");
    }

    private async Task<HttpClient> Start()
    {
        screen = Process.Start(new ProcessStartInfo("Xvfb", ["-displayfd", "1", "-screen", "0", Screen, "-nolisten", "tcp"])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        }) ?? throw new InvalidOperationException("Xvfb doesn't start.");
        screen.ErrorDataReceived += (_, _) => { };
        screen.BeginErrorReadLine();
        // It writes the number of the display once it is ready.
        display = $":{await screen.StandardOutput.ReadLineAsync()}";
        // Another program may take the port between finding it and listening on it.
        for (var tries = 0; ; tries++)
        {
            var port = FreePort();
            driver = Run("WebKitWebDriver", "-p", $"{port}");
            var client = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port}/") };
            await Wait.Until(async () => driver.HasExited || await Listens(client), "WebKitWebDriver listens", TimeSpan.FromMinutes(2));
            if (!driver.HasExited)
                return client;
            client.Dispose();
            Assert.True(tries < 10, "WebKitWebDriver ends as soon as it starts.");
        }
    }

    // A program on the screen. What pages say to the console stands among its errors.
    private Process Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["DISPLAY"] = display;
        // No bus, no memory of settings, no screen reader: a page needs none of them.
        start.Environment["GSETTINGS_BACKEND"] = "memory";
        start.Environment["NO_AT_BRIDGE"] = "1";
        var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} doesn't start.");
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, line) => said.Enqueue(line.Data ?? "");
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }

    private static async Task<bool> Listens(HttpClient client)
    {
        try
        {
            await Ask(client, HttpMethod.Get, "status");
            return true;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }

    private sealed class Tab(WebKit engine, HttpClient http, string session) : ITab
    {
        public Task<JsonElement> Patient() => Post("timeouts", new { script = 60_000, pageLoad = 60_000 });

        public Task Go(string address) => Post("url", new { url = address });

        // A script that reaches a page at the moment it is left gets no answer from the driver.
        public async Task<JsonElement> Run(string body, params object?[] arguments)
        {
            using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(30));
            try
            {
                return await Ask(http, HttpMethod.Post, session + "execute/sync", new { script = body, args = arguments }, patience.Token);
            }
            catch (OperationCanceledException late) when (patience.IsCancellationRequested)
            {
                throw new InvalidOperationException($"The page doesn't answer: {body}", late);
            }
        }

        public async Task<JsonElement> Await(string body, params object?[] arguments) =>
            Later.Result(await Post("execute/async", new { script = Later.Script(body), args = arguments }));

        public Task Act(params object[] sources) => Post("actions", new { actions = sources });

        public Task Resize(int width, int height) => Post("window/rect", new { width, height });

        public async Task<byte[]> Screenshot() => (await Ask(http, HttpMethod.Get, session + "screenshot")).GetBytesFromBase64();

        public async Task<byte[]> Print(string address)
        {
            var pdf = Path.Combine(engine.folder, "printed.pdf");
            using var printing = engine.Run(Python, Window, $"--data={engine.folder}", "--print", address, pdf);
            using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(2));
            await printing.WaitForExitAsync(patience.Token);
            var printed = await File.ReadAllBytesAsync(pdf, patience.Token);
            File.Delete(pdf);
            return printed;
        }

        // A page speaks in its own time: what it said until now is there when what is said now is.
        public async Task<IReadOnlyCollection<string>> Console()
        {
            const string End = "That was all.";
            await Run("console.log(arguments[0])", End);
            await Wait.Until(() => Task.FromResult(engine.said.Any(line => line.Contains(End, StringComparison.Ordinal))), "the console's output");
            return [.. engine.said.Where(line => line.StartsWith("CONSOLE", StringComparison.Ordinal) && !line.Contains(End, StringComparison.Ordinal))];
        }

        // The window ends with its only page, and the session with the window.
        public async ValueTask DisposeAsync() => await Ask(http, HttpMethod.Delete, session + "window");

        private Task<JsonElement> Post(string what, object with) => Ask(http, HttpMethod.Post, session + what, with);
    }
}
