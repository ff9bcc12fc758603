using System.Net;
using System.Net.WebSockets;
using System.Text;
using Generator.Rehearsal.Documents;
using Generator.Rehearsal.Offers;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Serving;

/// <summary>The live page of one document, served to this machine alone.</summary>
public sealed class LiveServer : IAsyncDisposable
{
    /// <summary>Bytes of the longest message.</summary>
    public const int LongestMessage = 64 * 1024;

    private const int MostSockets = 32;

    private static readonly TimeSpan Look = TimeSpan.FromSeconds(1);

    private readonly WebApplication app;
    private readonly Gate gate;
    private readonly Calls calls;
    private readonly Offering offering;
    private readonly News news = new();
    private readonly Document document;
    private readonly CancellationTokenSource ends = new();

    private LiveServer(Document document, Func<Question, CancellationToken, Task<Answer>> ask, int port)
    {
        this.document = document;
        Token = Gate.NewToken();
        gate = new Gate(Token);
        offering = new Offering(document, ask);
        calls = new Calls(document, offering, Token[..8]);
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(options =>
        {
            options.AddServerHeader = false;
            options.Limits.MaxRequestBodySize = LongestMessage;
            options.Listen(IPAddress.Loopback, port);
        });
        app = builder.Build();
        app.UseWebSockets(new WebSocketOptions { KeepAliveInterval = TimeSpan.FromSeconds(20) });
        app.Run(Answer);
        document.Changed = news.Tell;
        offering.Changed = news.Tell;
    }

    /// <summary>Who has it may do everything that the page can.</summary>
    public string Token { get; }

    /// <summary>What to open: the token stands behind the hash, which browsers do not send.</summary>
    public string Address => $"{Site}/#{Token}";

    /// <summary>"http://127.0.0.1:40123".</summary>
    public string Site => app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();

    /// <summary>Starts to serve.</summary>
    /// <param name="document">What is edited.</param>
    /// <param name="ask">Answers a question to the solver, and ends soon once it is asked to.</param>
    /// <param name="port">0 for any that is free.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<LiveServer> Start(Document document, Func<Question, CancellationToken, Task<Answer>> ask, int port = 0)
    {
        var server = new LiveServer(document, ask, port);
        await server.app.StartAsync().ConfigureAwait(false);
        _ = server.LookOutside();
        return server;
    }

    public async ValueTask DisposeAsync()
    {
        await ends.CancelAsync().ConfigureAwait(false);
        offering.Dispose();
        news.Tell();
        await app.StopAsync(CancellationToken.None).ConfigureAwait(false);
        await app.DisposeAsync().ConfigureAwait(false);
        document.Store.Dispose();
        ends.Dispose();
    }

    /// <summary>Tells the pages when another program has written the file.</summary>
    private async Task LookOutside()
    {
        var was = document.Store.Outside;
        using var timer = new PeriodicTimer(Look);
        try
        {
            while (await timer.WaitForNextTickAsync(ends.Token).ConfigureAwait(false))
            {
                var now = document.Store.Outside;
                if (!string.Equals(now, was, StringComparison.Ordinal))
                {
                    was = now;
                    news.Tell();
                }
            }
        }
        catch (OperationCanceledException)
        {
            return;
        }
    }

    private async Task Answer(HttpContext context)
    {
        Gate.Guard(context.Response.Headers);
        var path = context.Request.Path.Value ?? string.Empty;
        var file = HttpMethods.IsGet(context.Request.Method) && !context.WebSockets.IsWebSocketRequest ? PageFiles.Find(path) : null;
        if (gate.Refuses(context, file is not null) is { } status)
        {
            await Say(context, status, Fault("This is not for you.", "Maybe open the address that the program printed, whole.")).ConfigureAwait(false);
        }
        else if (file is var (text, type))
        {
            context.Response.ContentType = type;
            await context.Response.WriteAsync(text).ConfigureAwait(false);
        }
        else if (context.WebSockets.IsWebSocketRequest && string.Equals(path, "/news", StringComparison.Ordinal))
        {
            await Push(context).ConfigureAwait(false);
        }
        else if (HttpMethods.IsPost(context.Request.Method) && calls.Find(path.TrimStart('/')) is { } call)
        {
            await Call(context, call).ConfigureAwait(false);
        }
        else
        {
            await Say(context, StatusCodes.Status404NotFound, Fault("There is nothing here.", "Maybe open the address that the program printed.")).ConfigureAwait(false);
        }
    }

    private static async Task Call(HttpContext context, Func<Asked, JObject> call)
    {
        try
        {
            using var reader = new StreamReader(context.Request.Body, new UTF8Encoding(false, throwOnInvalidBytes: true));
            var asked = Asked.Of(await reader.ReadToEndAsync(context.RequestAborted).ConfigureAwait(false));
            await Say(context, StatusCodes.Status200OK, call(asked)).ConfigureAwait(false);
        }
        catch (RefusedEditException refused)
        {
            await Say(context, refused.IsStale ? StatusCodes.Status409Conflict : StatusCodes.Status400BadRequest, Fault(refused.Message, refused.Maybe)).ConfigureAwait(false);
        }
        catch (DecoderFallbackException)
        {
            await Say(context, StatusCodes.Status400BadRequest, Fault("The message is not text in UTF-8.", "Maybe load the page again.")).ConfigureAwait(false);
        }
        catch (Exception fault) when (fault is KeyNotFoundException or InvalidOperationException or ArgumentException)
        {
            await Say(context, StatusCodes.Status500InternalServerError, Fault($"The program could not do that. {fault.Message}", "Maybe this is a fault of the program: please report it, with the file and what was done. Nothing was changed.")).ConfigureAwait(false);
        }
        catch (BadHttpRequestException bad)
        {
            await Say(context, bad.StatusCode, Fault("The message is too long or broken off.", "Maybe cut the text that was typed.")).ConfigureAwait(false);
        }
    }

    private async Task Push(HttpContext context)
    {
        using var seat = news.Sit(MostSockets);
        if (seat is null)
        {
            context.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
            return;
        }

        using var socket = await context.WebSockets.AcceptWebSocketAsync(context.WebSockets.WebSocketRequestedProtocols[0]).ConfigureAwait(false);
        using var over = CancellationTokenSource.CreateLinkedTokenSource(ends.Token, context.RequestAborted);
        var listening = Listen(socket, over);
        try
        {
            while (await seat.Next(over.Token).ConfigureAwait(false))
            {
                await socket.SendAsync(Encoding.UTF8.GetBytes("changed"), WebSocketMessageType.Text, endOfMessage: true, over.Token).ConfigureAwait(false);
            }
        }
        catch (Exception fault) when (fault is OperationCanceledException or WebSocketException)
        {
            socket.Abort();
        }

        await listening.ConfigureAwait(false);
    }

    /// <summary>The page has nothing to say here: whatever comes ends it.</summary>
    private static async Task Listen(WebSocket socket, CancellationTokenSource over)
    {
        try
        {
            _ = await socket.ReceiveAsync(new byte[64], over.Token).ConfigureAwait(false);
        }
        catch (Exception fault) when (fault is OperationCanceledException or WebSocketException)
        {
            return;
        }
        finally
        {
            await over.CancelAsync().ConfigureAwait(false);
        }
    }

    private static JObject Fault(string message, string maybe) => new() { ["problem"] = message, ["maybe"] = maybe };

    private static Task Say(HttpContext context, int status, JObject answer)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "application/json; charset=utf-8";
        return context.Response.WriteAsync(answer.ToString(Formatting.None));
    }
}
