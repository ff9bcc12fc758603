using System.Net;
using System.Text;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Rehearsal.Documents;
using Generator.Rehearsal.Offers;
using Generator.Rehearsal.Serving;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Tests;

/// <summary>A live page on a file in a folder of its own, served in this process and asked as its script asks.</summary>
internal sealed class Stage : IAsyncDisposable
{
    /// <summary>A fight of two exchanges in which everything is said.</summary>
    public const string Yard = """
        {
          "brief": { "title": "Behind the cinema", "hero": { "name": "Zora" }, "attackers": [ { "name": "Bruno" }, { "name": "Wanda" } ] },
          "attackers": [ { "name": "Bruno", "bearing": "12", "distance": 2 }, { "name": "Wanda", "bearing": "2:30", "distance": 3 } ],
          "moves": [
            { "count": 1, "attacker": "Bruno", "attack": "swing-right", "technique": "parry-down-left", "reaction": "head-drops" },
            { "count": 2, "attacker": "Bruno", "technique": "knee-to-head-right", "reaction": "staggers-back", "linger": 2, "note": "slow" },
            { "count": "4&", "attacker": "Wanda", "attack": "cross-right", "technique": "parry-down-left", "reaction": "limb-swept-in" }
          ]
        }
        """;

    public static readonly Book Book = LibraryLoader.LoadBundled([]).Value!;

    private readonly HttpClient client = new(new SocketsHttpHandler { UseCookies = false });
    private LiveServer server = null!;
    private bool isOver;

    private Stage(string folder) => Folder = folder;

    public string Folder { get; }

    public string File => Document.Store.Target;

    public Document Document { get; private set; } = null!;

    public string? Remark { get; private set; }

    public string Site => server.Site;

    public string Token => server.Token;

    public static Task<Stage> Open(Func<Question, CancellationToken, Task<Answer>>? work = null, string text = Yard)
    {
        var folder = Path.Combine(Path.GetTempPath(), "generator-" + Path.GetRandomFileName());
        Directory.CreateDirectory(folder);
        System.IO.File.WriteAllText(Path.Combine(folder, "yard.routine.json"), text);
        return Again(folder, work);
    }

    /// <summary>The same folder, as if the program had been started once more.</summary>
    public static async Task<Stage> Again(string folder, Func<Question, CancellationToken, Task<Answer>>? work = null)
    {
        var stage = new Stage(folder);
        (stage.Document, stage.Remark) = Opening.Of(Path.Combine(folder, "yard.routine.json"), Book);
        stage.server = await LiveServer.Start(stage.Document, work ?? ((_, _) => Task.FromResult(new Answer(string.Empty, "no"))));
        return stage;
    }

    /// <summary>A new fight in a folder.</summary>
    public static async Task<Stage> New(string? folder = null)
    {
        var stage = new Stage(folder ?? Directory.CreateTempSubdirectory("generator-").FullName);
        (stage.Document, stage.Remark) = Opening.New(stage.Folder, Book);
        stage.server = await LiveServer.Start(stage.Document, (_, _) => Task.FromResult(new Answer(string.Empty, "no")));
        return stage;
    }

    public async Task<(HttpStatusCode Status, JObject Said)> Call(string name, string message = "{}")
    {
        using var answer = await Send(name, message, r => r.Headers.Add("Rehearsal-Token", Token));
        return (answer.StatusCode, JObject.Parse(await answer.Content.ReadAsStringAsync()));
    }

    /// <summary>A call that must be good.</summary>
    public async Task<JObject> Good(string name, string message = "{}")
    {
        var (status, said) = await Call(name, message);
        Assert.True(status == HttpStatusCode.OK, said.ToString());
        return said;
    }

    public async Task<HttpResponseMessage> Send(string name, string message, Action<HttpRequestMessage> with)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, $"{Site}/{name}") { Content = new StringContent(message, Encoding.UTF8, "application/json") };
        with(request);
        return await client.SendAsync(request);
    }

    public Task<HttpResponseMessage> Get(string path) => client.GetAsync(new Uri(Site + path));

    /// <summary>The state once what was asked has been answered.</summary>
    public async Task<JObject> Settled()
    {
        for (var tries = 0; tries < 24_000; tries++)
        {
            var said = await Good("state");
            if (said["offers"] is JObject { } offers && offers["running"]!.Type == JTokenType.Null)
            {
                return said;
            }

            await Task.Delay(25);
        }

        throw new InvalidOperationException("This was never answered.");
    }

    /// <summary>Ends the server and leaves the folder.</summary>
    public async Task End()
    {
        if (!isOver)
        {
            isOver = true;
            client.Dispose();
            await server.DisposeAsync();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await End();
        if (Directory.Exists(Folder))
        {
            Directory.Delete(Folder, recursive: true);
        }
    }
}
