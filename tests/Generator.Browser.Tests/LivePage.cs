using Generator.Library.Files;
using Generator.Rehearsal.Documents;
using Generator.Rehearsal.Offers;
using Generator.Rehearsal.Serving;
using Microsoft.Playwright;
using Newtonsoft.Json.Linq;

namespace Generator.Browser.Tests;

/// <summary>A live page on the yard's fight, in a folder of its own, whose solver answers that fight.</summary>
public abstract class LivePage(Browser browser) : IAsyncLifetime
{
    protected Browser Browser { get; } = browser;

    protected string Folder { get; } = Directory.CreateTempSubdirectory("generator-").FullName;
    protected LiveServer Server { get; set; } = null!;

    protected string File => Path.Combine(Folder, "yard.routine.json");

    public async Task InitializeAsync()
    {
        await System.IO.File.WriteAllTextAsync(File, RoutineWriter.Text(Papers.YardRoutine));
        await Start();
    }

    public async Task DisposeAsync()
    {
        await Server.DisposeAsync();
        Directory.Delete(Folder, recursive: true);
    }

    protected async Task Start()
    {
        var (document, _) = Opening.Of(File, Papers.Book);
        var whole = new JObject { ["routine"] = JObject.Parse(RoutineWriter.Text(Papers.YardRoutine)), ["gave"] = new JArray() }.ToString();
        Server = await LiveServer.Start(document, (_, _) => Task.FromResult(new Answer(whole, string.Empty)));
    }

    protected async Task<Sheet> Ready(BrowserNewContextOptions? options = null)
    {
        var sheet = await Browser.Open(Server.Address, options);
        await sheet.Until("document.querySelectorAll('.row').length > 0 && document.querySelector('#floor svg') !== null");
        return sheet;
    }
}
