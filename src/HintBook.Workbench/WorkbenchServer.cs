using System.Collections.Immutable;
using HintBook.Reading.Folder;
using HintBook.Workbench.Guarding;
using HintBook.Workbench.Looking;
using HintBook.Workbench.Making;
using HintBook.Workbench.Phone;
using HintBook.Workbench.Replying;
using HintBook.Workbench.Showing;
using HintBook.Workbench.Understanding;
using HintBook.Workbench.Writing;
using Microsoft.AspNetCore.Builder;

namespace HintBook.Workbench;

/// <summary>The workbench of one book, on this computer's own address only (127.0.0.1), until it is disposed of.</summary>
public sealed class WorkbenchServer : IAsyncDisposable
{
    // A text of the largest size in UTF-8, and room for its frame.
    private const long LargestBody = BookFolder.MostTextBytes + (64 * 1024);

    private readonly WebApplication server;
    private readonly LiveBook book;
    private readonly Workshop workshop;
    private readonly PhoneServer? phone;
    private readonly BookLock taken;

    private WorkbenchServer(WebApplication server, LiveBook book, Workshop workshop, PhoneServer? phone, BookLock taken, Uri address)
    {
        (this.server, this.book, this.workshop, this.phone, this.taken) = (server, book, workshop, phone, taken);
        Address = address;
    }

    /// <summary>Where it is; whoever knows it may read and change the book.</summary>
    public Uri Address { get; }

    /// <summary>Where telephones in the local network find the reader's pages, the likeliest address first; none where that wasn't asked for.</summary>
    public ImmutableArray<Uri> OnPhones => phone?.Addresses ?? [];

    /// <summary>Whether another workbench on this computer has the book too.</summary>
    public bool HasAnother => taken.IsTaken;

    /// <summary>Whether the book's files can be written.</summary>
    public bool CanWrite => BookAccess.CanWrite(book.Root);

    /// <summary>The port and path of the pages for telephones, or null.</summary>
    internal (int Port, string Path)? Phone => phone is null ? null : (phone.Port, phone.Path);

    /// <summary>Fails with what nobody expected, should that end the looking at the book.</summary>
    public Task Ended => book.Ended;

    /// <summary>Opens the workbench of a book. It answers at once; the book is read meanwhile.</summary>
    /// <param name="path">The book's folder.</param>
    /// <param name="port">The port, or 0 for any that is free.</param>
    /// <param name="onPhones">Whether the reader's pages, and nothing else, are shown to the local network too.</param>
    /// <param name="guests">Who is there; not needed where nobody asks.</param>
    /// <exception cref="IOException">The port is in use.</exception>
    public static async Task<WorkbenchServer> Open(string path, int port = 0, bool onPhones = false, Guests? guests = null)
    {
        var made = LocalServer.Make(port, LargestBody);
        FilesWriter.Mend(Path.GetFullPath(path));
        var live = new LiveBook(path);
        var door = new Door();
        var ours = BookLock.Take(live.Root);
        var makes = new Workshop(live.Root);
        PhoneServer? phones = null;
        try
        {
            phones = onPhones ? await PhoneServer.Open(live).ConfigureAwait(false) : null;
            var files = new BookFiles(live.Root);
            var answers = new Answers(live, files, [
                new WritingAnswers(live, files).AnswerTo,
                new ShowAnswers(files, live.Root).AnswerTo,
                new MakeAnswers(live, makes).AnswerTo,
                new UnderstandAnswers(live).AnswerTo,
                new LetterAnswers(live).AnswerTo,
                new HouseAnswers(live, ours.IsTaken, phones).AnswerTo,
            ]);
            LocalServer.Answer(made, door, guests ?? Guests.Unwatched, answers.Answer);
            await made.StartAsync().ConfigureAwait(false);
        }
        catch
        {
            await Close(made, live, makes, phones, ours).ConfigureAwait(false);
            throw;
        }

        return new(made, live, makes, phones, ours, new Uri(new Uri(made.Urls.First()), door.Path));
    }

    /// <summary>Closes it. Pages that are open say so.</summary>
    public ValueTask DisposeAsync() => Close(server, book, workshop, phone, taken);

    private static async ValueTask Close(WebApplication server, LiveBook book, Workshop workshop, PhoneServer? phone, BookLock taken)
    {
        await book.DisposeAsync().ConfigureAwait(false);
        await workshop.DisposeAsync().ConfigureAwait(false);
        if (phone is not null)
            await phone.DisposeAsync().ConfigureAwait(false);
        await server.DisposeAsync().ConfigureAwait(false);
        taken.Dispose();
    }
}
