using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;

namespace HintBook.Browser.Tests.Engines;

/// <summary>
/// Firefox's own remote control. A message is its length in bytes, a colon and JSON: <c>[0, number, command, parameters]</c> to the browser,
/// <c>[1, number, error, result]</c> from it (Firefox source documentation, "Marionette", "Protocol").
/// </summary>
internal sealed class Marionette : IDisposable
{
    private readonly TcpClient connection;
    private readonly Stream stream;
    private int number;

    private Marionette(TcpClient connection) => (this.connection, stream) = (connection, connection.GetStream());

    /// <summary>Connects to a browser on this machine.</summary>
    public static async Task<Marionette> Connect(int port)
    {
        var fresh = new TcpClient { NoDelay = true };
        await fresh.ConnectAsync(IPAddress.Loopback, port);
        var made = new Marionette(fresh);
        // It says first which program it is.
        await made.Read();
        return made;
    }

    /// <summary>Has a command carried out and gives its result.</summary>
    /// <exception cref="InvalidOperationException">The browser says that it can't.</exception>
    public async Task<JsonElement> Do(string command, object? parameters = null)
    {
        var message = JsonSerializer.SerializeToUtf8Bytes(new object[] { 0, ++number, command, parameters ?? new { } });
        await stream.WriteAsync((byte[])[.. Encoding.ASCII.GetBytes($"{message.Length.ToString(CultureInfo.InvariantCulture)}:"), .. message]);
        var answer = await Read();
        if (answer[2].ValueKind != JsonValueKind.Null)
            throw new InvalidOperationException($"{command}: {answer[2].GetProperty("error")}: {answer[2].GetProperty("message")}");
        return answer[3];
    }

    public void Dispose() => connection.Dispose();

    private async Task<JsonElement> Read()
    {
        var length = 0;
        var one = new byte[1];
        while (true)
        {
            await stream.ReadExactlyAsync(one);
            if (one[0] == ':')
                break;
            length = (10 * length) + one[0] - '0';
        }

        var message = new byte[length];
        await stream.ReadExactlyAsync(message);
        return JsonSerializer.Deserialize<JsonElement>(message);
    }
}
