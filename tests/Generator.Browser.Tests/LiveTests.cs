using Generator.Rehearsal.Documents;
using Generator.Rehearsal.Offers;
using Generator.Rehearsal.Serving;
using Newtonsoft.Json.Linq;

namespace Generator.Browser.Tests;

/// <summary>The live page in a real browser: a fight is written, judged with every letter, mended, filled, saved and opened again.</summary>
public sealed class LiveTests(Browser browser) : LivePage(browser), IClassFixture<Browser>
{
    [Fact]
    public async Task A_fight_is_written_judged_mended_saved_and_opened_again_by_keyboard_alone()
    {
        await using var sheet = await Ready();
        var rows = await sheet.Page.Locator(".row").CountAsync();
        Assert.DoesNotContain(Server.Token, await sheet.Eval<string>("location.href"), StringComparison.Ordinal);
        await sheet.Page.Locator("#line").FocusAsync();
        await sheet.Page.Keyboard.TypeAsync("Bruno: wide swing > low parry");
        await sheet.Page.Keyboard.PressAsync("Enter");
        await sheet.Until($"document.querySelectorAll('.row').length === {rows + 1}");
        await sheet.Page.Keyboard.PressAsync("Control+z");
        await sheet.Until($"document.querySelectorAll('.row').length === {rows}");

        // A finding is there with the letter that makes it, before anything is written.
        var before = await sheet.Eval<string>("document.getElementById('verdict').textContent");
        await sheet.Page.Locator("#m1-count").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("Control+a");
        await sheet.Page.Keyboard.TypeAsync("1");
        await sheet.Until("document.querySelectorAll('.row')[1].querySelector('.finding.broken, .finding.unsafe') !== null");
        Assert.Equal("Undo", await sheet.Text("#undo"));
        await sheet.Page.Keyboard.PressAsync("Escape");
        await sheet.Until($"document.getElementById('verdict').textContent === {JValue.CreateString(before).ToString(Newtonsoft.Json.Formatting.None)}");

        await sheet.Page.Locator("#m1-technique").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("Alt+l");
        await sheet.Until("document.querySelectorAll('.row')[1].querySelector('.technique .lock.on') !== null");
        Assert.Equal("Undo: lock technique of move 2", await sheet.Text("#undo"));
        await sheet.Page.Keyboard.PressAsync("Alt+ArrowRight");
        await sheet.Until("document.getElementById('undo').textContent === 'Undo: later from move 2 on'");
        await sheet.Page.Keyboard.PressAsync("Control+s");
        await sheet.Until("document.getElementById('file').textContent.endsWith(', saved')");
        Assert.Contains("knee-to-head-right!", await System.IO.File.ReadAllTextAsync(File), StringComparison.Ordinal);

        // A page that is still open would look for the program that ends here.
        await sheet.Page.CloseAsync();
        await Server.DisposeAsync();
        await Start();
        await using var again = await Ready();
        Assert.Equal(rows, await again.Page.Locator(".row").CountAsync());
        Assert.Equal(1, await again.Page.Locator(".lock.on").CountAsync());
    }

    /// <summary>The answer to what was typed before is still under way.</summary>

    /// <summary>An offer stands already when the page is opened.</summary>

    /// <summary>Whatever people are called, no name becomes part of the page.</summary>

    [Fact]
    public async Task Two_tabs_stay_in_step_and_take_no_letters_from_one_another()
    {
        await using var one = await Ready();
        await using var two = await Ready();
        await two.Page.Locator("#m0-technique").FillAsync("elbow to the f");
        await one.Page.Locator("#m1-reaction").FillAsync("folds");
        await one.Page.Locator("#m1-reaction").PressAsync("Enter");
        await two.Until("document.getElementById('m1-reaction').value === 'folds'");
        Assert.Equal("elbow to the f", await two.Eval<string>("document.getElementById('m0-technique').value"));
        await two.Page.Locator("#m0-technique").PressAsync("Escape");
        await two.Page.Locator("#undo").ClickAsync();
        await one.Until("document.getElementById('m1-reaction').value !== 'folds'");
    }

    [Fact]
    public async Task What_is_open_is_filled_as_an_offer_that_is_taken()
    {
        await using var sheet = await Ready();
        var said = await sheet.Eval<string>("document.getElementById('m1-reaction').value");
        await sheet.Page.Locator("#m1-reaction").FillAsync(string.Empty);
        await sheet.Page.Locator("#m1-reaction").PressAsync("Enter");
        await sheet.Until("document.getElementById('verdict').textContent.includes('move 2')");
        await sheet.Page.Locator("#fill").ClickAsync();
        await sheet.Until("document.querySelector('.card .strip figure') !== null");
        Assert.Equal(1, await sheet.Page.Locator(".card .changes ins").CountAsync());
        await sheet.Until("document.getElementById('floor-head').textContent === 'Offer 1: move 2' && document.querySelector('#time-other svg') !== null");
        await sheet.Page.Locator(".card .take").ClickAsync();
        await sheet.Until($"document.getElementById('m1-reaction').value === '{said}'");
        Assert.Equal("Undo: fill what was open", await sheet.Text("#undo"));
    }

    /// <summary>The picture of the offer is under way when it is taken: the program has none any more, and the floor shows what there is.</summary>

    [Fact]
    public async Task An_offer_that_is_taken_while_its_picture_is_under_way_leaves_the_floor_as_it_is_now()
    {
        await using var sheet = await Ready();
        await sheet.Page.Locator("#m1-reaction").FillAsync(string.Empty);
        await sheet.Page.Locator("#m1-reaction").PressAsync("Enter");
        await sheet.Until("document.getElementById('verdict').textContent.includes('move 2')");
        await sheet.Page.Locator("#fill").ClickAsync();
        await sheet.Until("document.getElementById('floor-head').textContent === 'Offer 1: move 2'");
        await sheet.Page.Locator(".card .look").ClickAsync();
        await sheet.Until("document.getElementById('floor-head').textContent === 'Floor, opening places (this move is still open)'");
        var (held, taken) = (new TaskCompletionSource(), new TaskCompletionSource());
        await sheet.Page.RouteAsync("**/floor", async route =>
        {
            if (route.Request.PostData?.Contains("\"card\"", StringComparison.Ordinal) == true)
            {
                held.TrySetResult();
                await taken.Task;
            }

            await route.ContinueAsync();
        });
        await sheet.Page.Locator(".card .look").ClickAsync();
        await held.Task;
        await sheet.Page.Locator(".card .take").ClickAsync();
        await sheet.Until("document.getElementById('offer').hidden");
        taken.SetResult();
        await sheet.Until("document.getElementById('floor-head').textContent === 'Floor, move 3'");
    }

    [Fact]
    public async Task An_attacker_is_dragged_to_where_they_open()
    {
        await using var sheet = await Ready();
        var sign = await sheet.Page.Locator("#floor [data-handle=a0]").BoundingBoxAsync();
        var mark = await sheet.Page.Locator("#floor .marker.p0").BoundingBoxAsync();
        await sheet.Page.Mouse.MoveAsync(sign!.X + (sign.Width / 2), sign.Y + (sign.Height / 2));
        await sheet.Page.Mouse.DownAsync();
        await sheet.Page.Mouse.MoveAsync(mark!.X + (mark.Width / 2) - 150, mark.Y + (mark.Height / 2), new() { Steps = 4 });
        await sheet.Page.Mouse.UpAsync();
        await sheet.Until("document.getElementById('undo').textContent === 'Undo: where Bruno opens'");
        Assert.Equal("9", await sheet.Page.Locator("#places input").First.InputValueAsync());

        // Each attacker has a line: a column that falls on it squeezes its text to one letter a line.
        Assert.InRange((await sheet.Page.Locator("#places .place").First.BoundingBoxAsync())!.Height, 20, 60);

        // By keys as well: half an hour on, and the handle keeps the focus.
        await sheet.Until("document.activeElement.dataset.handle === 'a0'");
        await sheet.Page.Keyboard.PressAsync("ArrowRight");
        await sheet.Until("document.querySelector('#places input').value === '9:30' && document.activeElement.dataset.handle === 'a0'");
    }

    [Fact]
    public async Task A_finding_is_mended_by_a_card_that_was_seen_on_the_floor_first()
    {
        await using var sheet = await Ready();
        await sheet.Page.Locator("#m1-count").FillAsync("1");
        await sheet.Page.Locator("#m1-count").PressAsync("Enter");
        await sheet.Until("document.querySelector('.finding.broken .mender, .finding.unsafe .mender') !== null");
        var grave = await sheet.Text("#verdict");
        await sheet.Page.Locator(".finding.broken .mender, .finding.unsafe .mender").First.ClickAsync();
        await sheet.Until("document.querySelectorAll('.card').length > 0 && document.getElementById('floor').classList.contains('offered') && document.querySelector('#time-other svg') !== null");
        await sheet.Page.Locator(".card .take").First.ClickAsync();
        await sheet.Until($"document.getElementById('verdict').textContent !== {JValue.CreateString(grave).ToString(Newtonsoft.Json.Formatting.None)} && document.getElementById('offer').hidden");
        await sheet.Until("!document.getElementById('floor').classList.contains('offered')");
    }

    [Fact]
    public async Task A_finding_is_mended_a_stretch_locked_and_versions_compared_by_keyboard_alone()
    {
        await using var sheet = await Ready(new() { BypassCSP = true });
        await sheet.Page.Locator("#m1-count").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("Control+a");
        await sheet.Page.Keyboard.TypeAsync("1");
        await sheet.Page.Keyboard.PressAsync("Enter");
        await sheet.Until("document.querySelector('.finding.broken .mender, .finding.unsafe .mender') !== null && document.activeElement.id === 'm2-count'");
        var grave = await sheet.Eval<int>("[...document.querySelectorAll('.row')].findIndex(r => r.querySelector('.finding.broken .mender, .finding.unsafe .mender'))");
        for (var i = 2; i != grave; i += Math.Sign(grave - i))
        {
            await sheet.Page.Keyboard.PressAsync(grave < i ? "ArrowUp" : "ArrowDown");
        }

        await sheet.Until($"document.activeElement.id === 'm{grave}-count'");
        await sheet.Page.Keyboard.PressAsync("Alt+m");
        await sheet.Until("document.querySelector('.card .take:enabled') !== null && document.getElementById('leave').textContent === 'Leave'");
        await Axe.IsClean(sheet);
        await sheet.Page.Keyboard.PressAsync("Alt+o");
        await sheet.Until("document.activeElement.classList.contains('take')");
        await sheet.Page.Keyboard.PressAsync("Alt+o");
        await sheet.Until($"document.activeElement.id === 'm{grave}-technique'");
        await sheet.Page.Keyboard.PressAsync("Alt+o");
        await sheet.Page.Keyboard.PressAsync("Enter");
        await sheet.Until($"document.getElementById('offer').hidden && document.activeElement.id === 'm{grave}-technique'");

        await sheet.Page.Keyboard.PressAsync("Shift+ArrowDown");
        await sheet.Until($"document.getElementById('stretch-name').textContent === 'Moves {grave + 1} to {grave + 2}'");
        await sheet.Page.Locator("#stretch-lock").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("Space");
        await sheet.Until($"[{grave}, {grave + 1}].every(i => document.querySelectorAll('.row')[i].classList.contains('locked')) && document.activeElement.id === 'stretch-lock'");

        await sheet.Page.Keyboard.PressAsync("Control+s");
        await sheet.Until("document.getElementById('file').textContent.endsWith(', saved')");
        await sheet.Page.Locator("#compare > summary").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("Enter");
        await sheet.Until("document.querySelectorAll('#compare-floors svg.plan').length === 2");
    }

    [Fact]
    public async Task Grid_time_line_floor_and_playback_choose_the_same_move()
    {
        await using var sheet = await Ready();
        await sheet.Until("document.querySelector('#time-line svg .lane') !== null");
        await sheet.Page.Locator("#time-line").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("ArrowRight");
        await sheet.Page.Keyboard.PressAsync("ArrowRight");
        await sheet.Until("document.querySelectorAll('.row')[1].classList.contains('chosen') && document.getElementById('floor-head').textContent === 'Floor, move 2' && document.querySelectorAll('#figures .figure').length > 0");
        await sheet.Page.Keyboard.PressAsync("Shift+ArrowRight");
        await sheet.Until("document.getElementById('stretch-name').textContent === 'Moves 2 to 3' && document.querySelectorAll('#time-line .chosen').length === 1");
        await sheet.Page.Locator("#play-part summary").ClickAsync();
        await sheet.Until("document.getElementById('count') !== null && document.getElementById('count').textContent === 'count 4&'");
        await sheet.Page.Locator("#on").ClickAsync();
        await sheet.Page.Locator("#on").ClickAsync();
        await sheet.Until("document.querySelectorAll('.row')[3].classList.contains('chosen')");

        // A move is dragged to a later count, with all behind it.
        await sheet.Eval<bool>("(scrollTo(0, 0), true)");
        var box = await sheet.Page.Locator("#time-line .lane.p0 .doing").Nth(3).BoundingBoxAsync();
        await sheet.Page.Mouse.MoveAsync(box!.X + (box.Width / 2), box.Y + (box.Height / 2));
        await sheet.Page.Mouse.DownAsync();
        await sheet.Page.Mouse.MoveAsync(box.X + (box.Width / 2) + 60, box.Y + (box.Height / 2), new() { Steps = 3 });
        await sheet.Page.Mouse.UpAsync();
        await sheet.Until("document.getElementById('undo').textContent === 'Undo: later from move 4 on'");
    }

    [Fact]
    public async Task A_version_that_was_saved_is_compared_side_by_side()
    {
        await using var sheet = await Ready(new() { BypassCSP = true });
        await sheet.Page.Locator("#m1-reaction").FillAsync("folds");
        await sheet.Page.Locator("#m1-reaction").PressAsync("Enter");
        await sheet.Page.Locator("#save").ClickAsync();
        await sheet.Page.Locator("#compare > summary").ClickAsync();
        await sheet.Until("document.querySelectorAll('#compare-floors svg.plan').length === 2 && document.querySelectorAll('#compare-rows .other').length === 1");
        Assert.Equal(1, await sheet.Page.Locator("#compare-rows tr:visible").CountAsync());
        await Axe.IsClean(sheet);
    }

    [Fact]
    public async Task A_new_fight_is_cast_placed_and_written_by_keyboard_alone()
    {
        await Server.DisposeAsync();
        var (document, _) = Opening.New(Folder, Papers.Book);
        Server = await LiveServer.Start(document, (_, _) => Task.FromResult(new Answer(string.Empty, "no")));
        await using var sheet = await Browser.Open(Server.Address, new() { BypassCSP = true });
        await sheet.Until("document.getElementById('cast').open && document.getElementById('cast-hero-name') !== null && document.querySelector('#floor .handle') !== null");
        await sheet.Page.Locator("#cast-hero-name").FillAsync("Zora");
        await sheet.Page.Keyboard.PressAsync("Tab");
        await sheet.Until("document.getElementById('undo').textContent === 'Undo: name of the hero'");
        await sheet.Page.Locator("text=Add a thing").PressAsync("Enter");
        await sheet.Until("document.querySelector('[data-handle=obstacles0]') !== null");
        await sheet.Page.Locator("[data-handle=obstacles0]").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("ArrowRight");
        await sheet.Until("document.getElementById('cast-obstacles0-x').value === '0.4' && document.activeElement.dataset.handle === 'obstacles0'");
        await sheet.Page.Locator("text=Add an attacker").PressAsync("Enter");
        await sheet.Until("document.querySelectorAll('#places .place').length === 3");
        await sheet.Page.Locator("#line").FocusAsync();
        await sheet.Page.Keyboard.TypeAsync("Cedar: wide swing > low parry");
        await sheet.Page.Keyboard.PressAsync("Enter");
        await sheet.Until("document.querySelectorAll('.row').length === 1");
        await sheet.Page.Keyboard.PressAsync("Control+s");
        await sheet.Until("document.getElementById('file').textContent === 'fight.routine.json, saved'");
        await Axe.IsCleanEverywhere(sheet);
    }
}
