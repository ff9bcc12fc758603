using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;

namespace Generator.Rehearsal.Serving;

/// <summary>
/// Lets in only our own page: the right host (so that no name of somebody else's leads here), no foreign origin, and the token that was printed with the address. There is no cookie,
/// which every other server on this machine would be sent as well.
/// </summary>
/// <param name="token">The token; 32 hexadecimal digits.</param>
internal sealed class Gate(string token)
{
    /// <summary>Header of every call of the page.</summary>
    public const string Header = "Rehearsal-Token";

    /// <summary>Begins the sub-protocol by which a socket, which can set no header, brings the token.</summary>
    public const string Protocol = "rehearsal.";

    private const string Policy = "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self' data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <summary>A new token.</summary>
    public static string NewToken() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));

    /// <summary>What every answer says of itself.</summary>
    public static void Guard(IHeaderDictionary headers)
    {
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
    }

    /// <summary>The status with which a call is turned away; null for one that may come in.</summary>
    /// <param name="context">The call.</param>
    /// <param name="isPage">It asks for a file of the page, which holds no secret.</param>
    public int? Refuses(HttpContext context, bool isPage)
    {
        var port = context.Connection.LocalPort;
        var host = FormattableString.Invariant($"127.0.0.1:{port}");
        var request = context.Request;
        if (!string.Equals(request.Host.Value, host, StringComparison.Ordinal) || (request.Headers.Origin.Count > 0 && !string.Equals(request.Headers.Origin, "http://" + host, StringComparison.Ordinal)))
        {
            return StatusCodes.Status421MisdirectedRequest;
        }

        if (context.WebSockets.IsWebSocketRequest)
        {
            return request.Headers.Origin.Count == 1 && context.WebSockets.WebSocketRequestedProtocols is [var protocol] && Same(protocol, Protocol + token) ? null : StatusCodes.Status401Unauthorized;
        }

        return isPage || Same(request.Headers[Header].ToString(), token) ? null : StatusCodes.Status401Unauthorized;
    }

    private static bool Same(string given, string wanted) => CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(given), Encoding.UTF8.GetBytes(wanted));
}
