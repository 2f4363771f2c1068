using System.Collections.Immutable;
using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using HintBook.Workbench;
using HintBook.Workbench.Phone;

namespace HintBook.Cli.Verbs;

/// <summary><c>workbench BOOK</c>: a page on this computer to see the book as a reader does, and to write it, until Ctrl-C.</summary>
internal static class WorkbenchVerb
{
    private const int HighestPort = 65_535;

    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var book = Options.Book();
        var port = new Option<int>("--port") { Description = "The port (default: any that is free).", HelpName = "NUMBER" };
        port.Validators.Add(given =>
        {
            if (given.GetValue(port) is not (>= 0 and <= HighestPort))
                given.AddError($"--port takes a number from 0 to {HighestPort}.");
        });
        var alone = new Option<bool>("--no-browser") { Description = "Print the address, and open no browser." };
        var phone = new Option<bool>("--phone") { Description = "Show the reader's pages, and nothing else, to telephones in the local network too." };
        var verb = new Command("workbench", "See and write the book in the browser of this computer.") { book, port, alone, phone };
        verb.SetAction((parsed, _) => Run(
            parsed.GetValue(book)!, parsed.GetValue(port), parsed.GetValue(alone), parsed.GetValue(phone), terminal, stop));
        return verb;
    }

    private static async Task<int> Run(string path, int port, bool alone, bool onPhones, Terminal terminal, CancellationToken stop)
    {
        if (!Directory.Exists(path) && (File.Exists(path) || !Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(path)))))
        {
            terminal.Say($"There is no folder “{path}”. Begin a book with: hintbook begin {path}");
            return ExitCode.WrongUsage;
        }

        if (!Directory.Exists(path))
            terminal.Say($"There is no folder “{path}” yet. The page begins a book there, if you want one.");

        try
        {
            var bench = await WorkbenchServer.Open(path, port, onPhones).ConfigureAwait(false);
            await using var _ = bench.ConfigureAwait(false);
            terminal.Out.WriteLine(bench.Address);
            terminal.Say("Whoever knows this address can read and change the book, from this computer alone. Ctrl-C closes the workbench.");
            if (bench.HasAnother)
            {
                terminal.Say("Another workbench has this book open on this computer. Both may write: "
                    + "a text that was changed by both is shown with both versions.");
            }

            if (!bench.CanWrite)
                terminal.Say("This book can only be read: its folder doesn't let you write. You can look at everything; nothing is saved.");
            if (onPhones)
                TellPhones(bench.OnPhones, terminal);
            if (!alone && !IsOpened(bench.Address))
                terminal.Say("No browser could be opened. Open the address in one.");
            await (await Task.WhenAny(bench.Ended, Task.Delay(Timeout.Infinite, stop)).ConfigureAwait(false))
                .ConfigureAwait(bench.Ended.IsFaulted ? ConfigureAwaitOptions.None : ConfigureAwaitOptions.SuppressThrowing);
            return ExitCode.Fine;
        }
        catch (IOException failure) when (failure.InnerException is Microsoft.AspNetCore.Connections.AddressInUseException)
        {
            terminal.Say($"Port {port} is in use. Leave --port out, and a free one is taken.");
            return ExitCode.WrongUsage;
        }
    }

    private static void TellPhones(ImmutableArray<Uri> addresses, Terminal terminal)
    {
        if (addresses is not [var first, ..])
        {
            terminal.Say("This computer is in no network now, so no telephone finds the pages.");
            return;
        }

        terminal.Say("For telephones in the same network, any of:");
        foreach (var address in addresses)
            terminal.Say($"  {address}");
        foreach (var line in ScanCode.Text(first)?.TrimEnd('\n').Split('\n') ?? [])
            terminal.Say(line);
        terminal.Say("Whoever has this address can read all pages, hints and answers too, until the workbench is closed; nobody can change anything by it.");
        terminal.Say("Pages of a sealed book lie open there: those that a card opens need an address with https.");
    }

    private static bool IsOpened(Uri address)
    {
        try
        {
            using var browser = Process.Start(new ProcessStartInfo(address.ToString()) { UseShellExecute = true });
            return true;
        }
        catch (Exception failure) when (failure is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            return false;
        }
    }
}
