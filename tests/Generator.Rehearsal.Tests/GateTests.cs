using System.Net;
using System.Net.Sockets;
using System.Net.WebSockets;
using System.Text;
using Generator.Testing;

namespace Generator.Rehearsal.Tests;

/// <summary>Nobody but the page itself comes in, and nothing that is sent makes the server fall.</summary>
public class GateTests
{
    [Fact]
    public async Task Without_the_token_nothing_is_told_or_done()
    {
        await using var stage = await Stage.Open();
        foreach (var token in new[] { null, string.Empty, "0", stage.Token[..^1], stage.Token + "0", stage.Token.ToUpperInvariant() + "x" })
        {
            using var answer = await stage.Send("state", "{}", r => _ = token is not null && r.Headers.TryAddWithoutValidation("Rehearsal-Token", token));
            Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
            Assert.DoesNotContain("cinema", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }

        using var cookie = await stage.Send("delete", """{"revision":0,"move":0}""", r => r.Headers.Add("Cookie", "Rehearsal-Token=" + stage.Token));
        Assert.Equal(HttpStatusCode.Unauthorized, cookie.StatusCode);
        Assert.Equal(0, stage.Document.Now.Revision);
    }

    [Theory]
    [InlineData("Host", "evil.example")]
    [InlineData("Host", "localhost")]
    [InlineData("Origin", "http://evil.example")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "http://127.0.0.1:1")]
    public async Task Another_host_or_origin_is_turned_away_even_with_the_token(string header, string value)
    {
        await using var stage = await Stage.Open();
        using var answer = await stage.Send("state", "{}", r =>
        {
            r.Headers.Add("Rehearsal-Token", stage.Token);
            r.Headers.TryAddWithoutValidation(header, value);
        });
        Assert.Equal(HttpStatusCode.MisdirectedRequest, answer.StatusCode);
    }

    [Fact]
    public async Task Only_our_own_page_may_listen()
    {
        await using var stage = await Stage.Open();
        Assert.True(await Listens(stage, stage.Site, "rehearsal." + stage.Token));
        Assert.False(await Listens(stage, stage.Site, "rehearsal.0"));
        Assert.False(await Listens(stage, "http://evil.example", "rehearsal." + stage.Token));
        Assert.False(await Listens(stage, null, "rehearsal." + stage.Token));
    }

    [Theory]
    [InlineData("/../yard.routine.json")]
    [InlineData("/..%2fyard.routine.json")]
    [InlineData("/yard.routine.json")]
    [InlineData("/%2e%2e/%2e%2e/etc/passwd")]
    [InlineData("//etc/passwd")]
    [InlineData("/live.js/../../yard.routine.json")]
    public async Task No_path_leads_to_a_file(string path)
    {
        await using var stage = await Stage.Open();
        using var tcp = new TcpClient();
        await tcp.ConnectAsync(IPAddress.Loopback, new Uri(stage.Site).Port);
        var host = new Uri(stage.Site).Authority;
        await tcp.GetStream().WriteAsync(Encoding.ASCII.GetBytes($"GET {path} HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n\r\n"));
        using var reader = new StreamReader(tcp.GetStream());
        var answer = await reader.ReadToEndAsync();
        Assert.StartsWith("HTTP/1.1 4", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("swing", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("root:", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_is_strict_and_holds_no_secret()
    {
        await using var stage = await Stage.Open();
        foreach (var path in new[] { "/", "/live.js", "/live.css", "/page.css", "/talk.js", "/grid.js", "/floor.js", "/cards.js", "/cast.js", "/playback.js" })
        {
            using var answer = await stage.Get(path);
            var text = await answer.Content.ReadAsStringAsync();
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
            Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
            Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
            Assert.True(answer.Headers.CacheControl!.NoStore);
            Assert.False(answer.Headers.Contains("Set-Cookie"));
            Assert.False(answer.Headers.Contains("Server"));
            Assert.DoesNotContain(stage.Token, text, StringComparison.Ordinal);
            Assert.DoesNotContain("cinema", text.Replace("placeholder", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Five_hundred_malformed_messages_are_answered_and_change_nothing()
    {
        await using var stage = await Stage.Open();
        string[] names = ["type", "note", "insert", "delete", "swap", "shift", "lock", "place", "try", "floor", "undo", "take", "mend", "ways", "hurt", "recast", "clear", "compare"];
        var chance = new Chance(1);
        for (var i = 0; i < 500; i++)
        {
            var (status, said) = await stage.Call(names[i % names.Length], Malformed(chance));
            Assert.Equal(HttpStatusCode.BadRequest, status);
            Assert.StartsWith("Maybe ", (string?)said["maybe"], StringComparison.Ordinal);
        }

        Assert.Equal(0, stage.Document.Now.Revision);
        Assert.Equal("Behind the cinema", (string?)(await stage.Good("state"))["title"]);
    }

    [Fact]
    public async Task What_is_too_long_is_refused()
    {
        await using var stage = await Stage.Open();
        var (status, _) = await stage.Call("note", $$"""{"revision":0,"before":0,"text":"{{new string('a', 70_000)}}"}""");
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, status);
        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("note", $$"""{"revision":0,"before":0,"text":"{{new string('a', 3000)}}"}""")).Status);
    }

    private static string Malformed(Chance chance) => chance.Whole(0, 9) switch
    {
        0 => string.Empty,
        1 => "{",
        2 => "[]",
        3 => "null",
        4 => new string('[', 60) + new string(']', 60),
        5 => """{"revision":"0","move":0.5,"column":7,"text":null}""",
        6 => """{"revision":-1,"move":-2,"before":-1,"by":1e9,"attacker":99,"column":"no such","text":5}""",
        7 => """{"revision":99999999999999999999,"move":{},"before":[]}""",
        8 => """{"revision":1.0} {"revision":0}""",
        _ => new string([.. Enumerable.Range(0, chance.Whole(1, 40)).Select(_ => (char)chance.Whole(33, 0x2FF))]),
    };

    private static async Task<bool> Listens(Stage stage, string? origin, string protocol)
    {
        using var socket = new ClientWebSocket();
        socket.Options.AddSubProtocol(protocol);
        if (origin is not null)
        {
            socket.Options.SetRequestHeader("Origin", origin);
        }

        try
        {
            await socket.ConnectAsync(new Uri(stage.Site.Replace("http", "ws", StringComparison.Ordinal) + "/news"), CancellationToken.None);
            return socket.State == WebSocketState.Open;
        }
        catch (WebSocketException)
        {
            return false;
        }
    }
}
