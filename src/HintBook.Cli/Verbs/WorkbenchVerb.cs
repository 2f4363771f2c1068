using System.Collections.Immutable;
using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using System.Net.Sockets;
using HintBook.Workbench;
using HintBook.Workbench.Choosing;
using HintBook.Workbench.Phone;
using Microsoft.AspNetCore.Connections;

namespace HintBook.Cli.Verbs;

/// <summary>
/// <c>workbench BOOK</c>: a page on this computer to see the book as a reader does, and to write it, until Ctrl-C; without a book, a page that asks for one.
/// </summary>
internal static class WorkbenchVerb
{
    private const int HighestPort = 65_535;

    // A page that is loaded again, or a laptop that wakes up, is back sooner.
    private static readonly TimeSpan LongestAway = TimeSpan.FromMinutes(1);

    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var book = new Argument<string?>("BOOK")
        {
            Description = "The book's folder (default: a page that lists the books in your documents, and begins one).",
            DefaultValueFactory = _ => null,
        };
        var port = new Option<int>("--port") { Description = "The port (default: any that is free).", HelpName = "NUMBER" };
        port.Validators.Add(given =>
        {
            if (given.GetValue(port) is not (>= 0 and <= HighestPort))
                given.AddError($"--port takes a number from 0 to {HighestPort}.");
        });
        var alone = new Option<bool>("--no-browser") { Description = "Print the address, and open no browser." };
        var phone = new Option<bool>("--phone") { Description = "Show the reader's pages, and nothing else, to telephones in the local network too." };
        var verb = new Command("workbench", "See and write the book in the browser of this computer.") { book, port, alone, phone };
        verb.Validators.Add(given =>
        {
            if (given.GetValue(phone) && given.GetValue(book) is null)
                given.AddError("With “--phone” say which book: its pages are shown to telephones.");
        });
        verb.SetAction((parsed, _) => parsed.GetValue(book) is { } path
            ? Run(path, parsed.GetValue(port), parsed.GetValue(alone), parsed.GetValue(phone), terminal, stop)
            : Choose(parsed.GetValue(port), parsed.GetValue(alone), terminal, stop));
        return verb;
    }

    private static async Task<int> Choose(int port, bool alone, Terminal terminal, CancellationToken stop)
    {
        try
        {
            using var guests = terminal.IsDoubleClicked ? new Guests(LongestAway) : Guests.Unwatched;
            var chooser = await ChooserServer.Open(Documents(), address => !alone && IsOpened(address), guests, port).ConfigureAwait(false);
            await using var _ = chooser.ConfigureAwait(false);
            terminal.Out.WriteLine(chooser.Address);
            terminal.Say("Whoever knows this address can open your books, from this computer alone. A button on the page closes HintBook, and so does Ctrl-C.");
            if (!alone && !IsOpened(chooser.Address))
            {
                terminal.Say("No browser could be opened. Open the address in one.");
                // Nobody would see that it waits.
                if (terminal.IsDoubleClicked)
                    return ExitCode.MachineFailed;
            }

            await Task.WhenAny(chooser.Closed, guests.Left, Task.Delay(Timeout.Infinite, stop)).ConfigureAwait(false);
            return ExitCode.Fine;
        }
        catch (Exception failure) when (WhyNotOpened(port, failure) is { } why)
        {
            terminal.Say(why);
            return ExitCode.WrongUsage;
        }
    }

    // The folder may not be there yet; where the system names none, it is the user's own.
    private static string Documents() =>
        Environment.GetFolderPath(Environment.SpecialFolder.MyDocuments, Environment.SpecialFolderOption.DoNotVerify) is { Length: > 0 } documents
            ? documents
            : Environment.GetFolderPath(Environment.SpecialFolder.UserProfile, Environment.SpecialFolderOption.DoNotVerify) is { Length: > 0 } own
                ? own
                : Environment.CurrentDirectory;

    // Systems keep low ports for their own programs.
    private static string? WhyNotOpened(int port, Exception failure) => failure switch
    {
        IOException { InnerException: AddressInUseException } => $"Port {port} is in use. Leave --port out, and a free one is taken.",
        SocketException { SocketErrorCode: SocketError.AccessDenied } =>
            $"This system doesn't let you open port {port}. Leave --port out, and a free one is taken, or name one above 1023.",
        _ => null,
    };

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
        catch (Exception failure) when (WhyNotOpened(port, failure) is { } why)
        {
            terminal.Say(why);
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
