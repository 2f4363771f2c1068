using System.Collections.Concurrent;

namespace HintBook.Browser.Tests.Reading;

/// <summary>What a browser asked for and complained of, over all pages of one reader.</summary>
internal sealed class Network
{
    // What a page still asked for when it was left, such as a picture in a fold that was opened last. A busy machine may not have sent it by then.
    private const string GivenUp = "net::ERR_ABORTED";

    private readonly ConcurrentQueue<string> requests = [];
    private readonly ConcurrentQueue<string> complaints = [];

    public Network(IBrowserContext context)
    {
        context.Request += (_, request) => requests.Enqueue(request.Url);
        context.RequestFailed += (_, request) =>
        {
            if (request.Failure != GivenUp)
                complaints.Enqueue($"{request.Url} failed: {request.Failure}");
        };
        context.Response += (_, response) =>
        {
            if (response.Status >= 400)
                complaints.Enqueue($"{response.Url} was answered with {response.Status}");
        };
        // A breach of the Content-Security-Policy is reported here too.
        context.Console += (_, message) => complaints.Enqueue($"{message.Page?.Url} says {message.Type}: {message.Text}");
        context.WebError += (_, error) => complaints.Enqueue($"{error.Page?.Url} failed: {error.Error}");
    }

    /// <summary>The address of every request.</summary>
    public IReadOnlyCollection<string> Requests => requests;

    /// <summary>Console messages of any kind, script errors, failed requests.</summary>
    public IReadOnlyCollection<string> Complaints => complaints;
}
