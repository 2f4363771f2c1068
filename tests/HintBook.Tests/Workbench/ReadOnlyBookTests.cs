using System.Diagnostics;
using System.Net;
using System.Text.Json;
using HintBook.Cli;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Workbench;

/// <summary>A book that its reader may not write, on the workbench of another user of the computer.</summary>
public sealed class ReadOnlyBookTests
{
    private const string Nobody = "65534";
    private const string SetPriv = "/usr/bin/setpriv";

    [Fact]
    public async Task A_book_that_cannot_be_written_is_shown_and_said_to_be_and_nothing_of_it_changes()
    {
        if (!OperatingSystem.IsLinux() || !Environment.IsPrivilegedProcess || !File.Exists(SetPriv))
        {
            Assert.Skip("This takes Linux, setpriv and an administrator.");
            return;
        }

        using var book = new BookOnDisk();
        File.SetUnixFileMode(book.Path, UnixFileMode.UserRead | UnixFileMode.UserExecute | UnixFileMode.OtherRead | UnixFileMode.OtherExecute);
        using var bench = Process.Start(new ProcessStartInfo(
            SetPriv,
            [$"--reuid={Nobody}", $"--regid={Nobody}", "--clear-groups", "dotnet", typeof(ExitCode).Assembly.Location, "workbench", book.Path, "--no-browser"])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        }) ?? throw new InvalidOperationException("setpriv can't be run.");
        try
        {
            using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
            var address = new Uri(await bench.StandardOutput.ReadLineAsync(patience.Token) ?? await bench.StandardError.ReadToEndAsync(patience.Token));
            using var client = new HttpClient();
            client.DefaultRequestHeaders.Add("Origin", address.GetLeftPart(UriPartial.Authority));
            const string lid = "stages/01-the-lid.md";
            var before = File.ReadAllText(Path.Combine(book.Path, lid));
            using var text = await client.GetAsync($"{address}text?name={lid}", patience.Token);
            using var request = new HttpRequestMessage(HttpMethod.Put, $"{address}text?name={lid}") { Content = new StringContent("mine") };
            request.Headers.IfMatch.Add(text.Headers.ETag!);

            using var house = JsonDocument.Parse(await client.GetStringAsync($"{address}house", patience.Token));
            using var saved = await client.SendAsync(request, patience.Token);

            Assert.True(house.RootElement.GetProperty("readOnly").GetBoolean());
            Assert.Equal(HttpStatusCode.Conflict, saved.StatusCode);
            Assert.Contains("can't be saved", await saved.Content.ReadAsStringAsync(patience.Token), StringComparison.Ordinal);
            Assert.Equal(before, File.ReadAllText(Path.Combine(book.Path, lid)));
            Assert.Equal(2, Directory.EnumerateFileSystemEntries(book.Path).Count());
        }
        finally
        {
            bench.Kill(entireProcessTree: true);
            await bench.WaitForExitAsync(TestContext.Current.CancellationToken);
            File.SetUnixFileMode(book.Path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }
}
