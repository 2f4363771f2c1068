using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Primitives;

namespace HintBook.Workbench;

/// <summary>
/// Who may come in: whoever knows the random path, at this computer's own address, from the workbench's own page. Pages from elsewhere can
/// send requests to this computer too, so a request that says where it comes from must come from here (Fetch Standard, <c>Origin</c>; Fetch Metadata
/// Request Headers, <c>Sec-Fetch-Site</c>), and one that changes something must say so. A foreign name that leads to this computer fails by <c>Host</c>.
/// </summary>
internal sealed class Door
{
    // 128 bits, as letters that need no escaping in an address.
    private readonly byte[] token = Encoding.ASCII.GetBytes(Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)));

    /// <summary>The path that all addresses begin with, such as <c>/0f3a…/</c>.</summary>
    public string Path => $"/{Encoding.ASCII.GetString(token)}/";

    /// <summary>The rest of the path behind the token, such as <c>see/parlour/light/index.html</c>; null for somebody who may not come in.</summary>
    /// <param name="request">What was asked.</param>
    public string? Enters(HttpRequest request)
    {
        var port = request.HttpContext.Connection.LocalPort;
        string[] hosts = [$"127.0.0.1:{port}", $"localhost:{port}"];
        if (!hosts.Contains(request.Host.Value) || !IsFromHere(request, hosts))
            return null;
        var path = request.Path.Value ?? "";
        var length = token.Length + 2;
        if (path.Length < length || path[0] != '/' || path[length - 1] != '/')
            return null;
        return CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(path[1..(length - 1)]), token) ? path[length..] : null;
    }

    private static bool IsFromHere(HttpRequest request, string[] hosts)
    {
        var site = request.Headers["Sec-Fetch-Site"];
        if (!StringValues.IsNullOrEmpty(site) && site != "same-origin" && site != "none")
            return false;
        var origin = request.Headers.Origin;
        return StringValues.IsNullOrEmpty(origin)
            ? HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method)
            : hosts.Any(host => origin == $"http://{host}");
    }
}
