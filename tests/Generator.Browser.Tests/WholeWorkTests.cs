namespace Generator.Browser.Tests;

/// <summary>The whole work in a real browser with the program and its solver as they are: a new fight, notes, a padlock, filling, mending, saving, comparing, and going on after the program was killed.</summary>
public sealed class WholeWorkTests(Browser browser) : IClassFixture<Browser>, IDisposable
{
    private const string Grave = ".finding.broken .mender, .finding.unsafe .mender";

    private readonly Own own = new();

    public void Dispose() => own.Dispose();

    [Fact]
    public async Task A_fight_from_nothing_to_a_saved_file_and_on_after_a_kill()
    {
        var said = await Rows(await own.Rehearse());
        Assert.Equal(["fight.live.json", "fight.live.json.open", "fight.routine.json", "fight.versions"], Directory.EnumerateFileSystemEntries(own.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));

        // What was written last was not saved, and is there.
        await using var again = await browser.Open(await own.Rehearse("fight.routine.json"));
        await again.Until("document.querySelectorAll('.row').length > 0");
        Assert.Equal(said, await Written(again));
        Assert.Equal(1, await again.Page.Locator(".lock.on").CountAsync());
        Assert.EndsWith("kept in the working copy", await again.Text("#file"), StringComparison.Ordinal);
        await again.Page.CloseAsync();
    }

    /// <summary>Works until the program is killed, and gives what was written by then.</summary>
    private async Task<string[]> Rows(string address)
    {
        await using var sheet = await browser.Open(address);
        await sheet.Until("document.getElementById('cast').open && document.getElementById('cast-hero-name') !== null");
        await sheet.Page.Locator("#cast-hero-name").FillAsync("Zora");
        await sheet.Page.Keyboard.PressAsync("Tab");
        await sheet.Until("document.getElementById('undo').textContent === 'Undo: name of the hero'");
        foreach (var (line, rows) in new[] { ("Ash: wide swing > low parry, elbow to the face", 2), ("Birch: cross > a defence, hook to the body", 4) })
        {
            await sheet.Page.Locator("#line").FillAsync(line);
            await sheet.Page.Keyboard.PressAsync("Enter");
            await sheet.Until($"document.querySelectorAll('.row').length === {rows}");
        }

        await sheet.Page.Locator("#m1-technique").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("Alt+l");
        await sheet.Until("document.querySelectorAll('.lock.on').length === 1");
        await sheet.Page.Locator("#fill").ClickAsync();
        await sheet.Until("document.querySelector('.card .take:enabled') !== null && document.getElementById('leave').textContent === 'Leave'");
        await sheet.Page.Locator(".card .take").First.ClickAsync();
        await sheet.Until("document.getElementById('offer').hidden && document.getElementById('verdict').textContent.startsWith('Nothing unsafe or broken,')");
        await sheet.Page.Keyboard.PressAsync("Control+s");
        await sheet.Until("document.getElementById('file').textContent.endsWith(', saved')");

        // A fault, mended by the first card, and saved beside what was there.
        await sheet.Page.Locator("#m2-count").FillAsync("1");
        await sheet.Page.Locator("#m2-count").PressAsync("Enter");
        await sheet.Until($"document.querySelector('{Grave}') !== null");
        var verdict = await sheet.Text("#verdict");
        await sheet.Page.Locator(Grave).First.ClickAsync();
        await sheet.Until("document.querySelector('.card .take:enabled') !== null");
        await sheet.Page.Locator(".card .take").First.ClickAsync();
        await sheet.Until($"document.getElementById('offer').hidden && document.getElementById('verdict').textContent !== {Newtonsoft.Json.JsonConvert.ToString(verdict)}");
        await sheet.Page.Keyboard.PressAsync("Control+s");
        await sheet.Until("document.getElementById('file').textContent.endsWith(', saved')");
        await sheet.Page.Locator("#compare > summary").ClickAsync();
        await sheet.Until("document.querySelectorAll('#compare-floors svg.plan').length === 2 && document.querySelectorAll('#compare-times svg').length === 2");

        await sheet.Page.Locator("#m0-note").EvaluateAsync("e => { e.value = 'slow'; e.dispatchEvent(new Event('change')); }");
        await sheet.Until("document.getElementById('undo').textContent === 'Undo: note of move 1'");
        var written = await Written(sheet);
        await sheet.Page.CloseAsync();
        await own.Kill();
        return written;
    }

    private static Task<string[]> Written(Sheet sheet) => sheet.Eval<string[]>("[...document.querySelectorAll('.row')].map(r => [...r.querySelectorAll('input, textarea')].map(i => i.value).join(' | '))");
}
