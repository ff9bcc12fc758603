using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rehearsal.Documents;
using Generator.Rehearsal.Offers;
using Generator.Rehearsal.Serving;

namespace Generator.Browser.Tests;

/// <summary>What lies and stands on the floor of a new fight: added by keys, placed by keys and by dragging, taken back by name, saved into the brief.</summary>
public sealed class LiveFloorTests(Browser browser) : LivePage(browser), IClassFixture<Browser>
{
    [Fact]
    public async Task Things_mats_marks_and_props_are_placed_and_stand_in_the_file()
    {
        await Server.DisposeAsync();
        var (document, _) = Opening.New(Folder, Papers.Book);
        Server = await LiveServer.Start(document, (_, _) => Task.FromResult(new Answer(string.Empty, "no")));
        await using var sheet = await Browser.Open(Server.Address, new() { BypassCSP = true });
        await sheet.Until("document.getElementById('cast-add-kind')?.options.length > 5 && document.querySelector('#floor .handle') !== null");

        await sheet.Page.Locator("#cast-add-kind").SelectOptionAsync("table");
        await Add(sheet, "Add a thing", "obstacles0");
        Assert.Equal(["table", "table"], await sheet.Eval<string[]>("['name', 'kind'].map(f => document.getElementById('cast-obstacles0-' + f).value)"));
        await Add(sheet, "Add a mat", "mats0");
        Assert.Equal(1, await sheet.Page.Locator("text=Mats matter on a hard floor only").CountAsync());

        // Two changes, of which the second is made before the first is answered: both stand.
        await sheet.Eval<bool>("(document.getElementById('cast-obstacles0-padded').click(), document.getElementById('cast-surface').value = 'hard', document.getElementById('cast-surface').dispatchEvent(new Event('change')))");
        await sheet.Until("!document.getElementById('cast-form').textContent.includes('Mats matter on a hard floor only') && document.getElementById('cast-obstacles0-padded').checked && document.getElementById('cast-surface').value === 'hard'");
        await Press(sheet, "mats0", "ArrowUp");
        await Undoes(sheet, "where mat lies");
        Assert.Equal("4.6", await sheet.Page.Locator("#cast-mats0-y").InputValueAsync());

        await Add(sheet, "Add a mark", "mark1");
        await Press(sheet, "mark1", "ArrowRight");
        await Undoes(sheet, "where second mark is");
        await Press(sheet, "mark0", "Shift+ArrowDown");
        await Undoes(sheet, "where first mark is");

        await Add(sheet, "Add a prop", "prop0");
        await Press(sheet, "prop0", "ArrowRight");
        await sheet.Page.Locator("#undo").ClickAsync();
        await Undoes(sheet, "add a prop");
        await sheet.Page.Locator("#cast-props0-with").SelectOptionAsync("Ash");
        await sheet.Until("document.querySelector('[data-handle=prop0]') === null && document.getElementById('cast-props0-hand') !== null");

        // Dragged with the mouse; where it cannot be, it goes back and says so.
        var was = await sheet.Page.Locator("#cast-mats0-x").InputValueAsync();
        await Drag(sheet, "mats0", 60, 0);
        await sheet.Until($"document.getElementById('cast-mats0-x').value !== '{was}'");
        await Undoes(sheet, "where mat lies");
        await sheet.Until("document.querySelector('[data-handle=mats0]')?.title.startsWith('mat: ' + Number(document.getElementById('cast-mats0-x').value).toFixed(1) + ' m')");
        var table = await sheet.Page.Locator("[data-handle=obstacles0]").BoundingBoxAsync();
        var mark = await sheet.Page.Locator("[data-handle=mark1]").BoundingBoxAsync();
        await Drag(sheet, "mark1", table!.X - mark!.X, table.Y - mark.Y);
        await sheet.Until("document.getElementById('floor-says').textContent.includes('Maybe')");
        Assert.Equal(mark.X, (await sheet.Page.Locator("[data-handle=mark1]").BoundingBoxAsync())!.X, 1.0);

        sheet.Refused("recast");
        await sheet.Page.Keyboard.PressAsync("Control+s");
        await sheet.Until("document.getElementById('file').textContent === 'fight.routine.json, saved'");
        var text = await System.IO.File.ReadAllTextAsync(Path.Combine(Folder, "fight.routine.json"));
        var brief = RoutineReader.Parse(new SourceFile("fight.routine.json", text), Papers.Book).Value!.Brief;
        Assert.Equal(("table", true, Surface.Hard), (brief.Floor.Obstacles[0].Kind, brief.Floor.Obstacles[0].Padded, brief.Floor.Surface));
        Assert.Equal((460, 200), (brief.Floor.Mats[0].Y.Value, brief.Floor.Mats[0].Width.Value));
        Assert.Equal(["first mark", "second mark"], brief.Marks.Select(m => m.Name));
        Assert.Equal(350, brief.Floor.MarkY.Value);
        Assert.Equal(0, brief.Props[0].With);
        await Axe.IsCleanEverywhere(sheet);
    }

    private static async Task Add(Sheet sheet, string what, string handle)
    {
        await sheet.Page.Locator($"button:text-is(\"{what}\")").PressAsync("Enter");
        await sheet.Until($"document.querySelector('[data-handle={handle}]') !== null");
    }

    private static async Task Press(Sheet sheet, string handle, string key)
    {
        await sheet.Page.Locator($"[data-handle={handle}]").FocusAsync();
        await sheet.Page.Keyboard.PressAsync(key);
    }

    private static Task Undoes(Sheet sheet, string what) => sheet.Until($"document.getElementById('undo').textContent === 'Undo: {what}'");

    private static async Task Drag(Sheet sheet, string handle, float right, float down)
    {
        var box = await sheet.Page.Locator($"[data-handle={handle}]").BoundingBoxAsync();
        var (x, y) = (box!.X + (box.Width / 2), box.Y + (box.Height / 2));
        await sheet.Page.Mouse.MoveAsync(x, y);
        await sheet.Page.Mouse.DownAsync();
        await sheet.Page.Mouse.MoveAsync(x + right, y + down, new() { Steps = 4 });
        await sheet.Page.Mouse.UpAsync();
    }
}
