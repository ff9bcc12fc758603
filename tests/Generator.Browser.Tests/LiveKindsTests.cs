using Generator.Library.Files;
using Microsoft.Playwright;

namespace Generator.Browser.Tests;

/// <summary>The live page on a phone, in the dark, beside other tabs and programs, with names that are markup and with an ally.</summary>
public sealed class LiveKindsTests(Browser browser) : LivePage(browser), IClassFixture<Browser>
{
    [Fact]
    public async Task Axe_finds_nothing_in_any_view_and_nothing_is_wider_than_the_screen()
    {
        await using var sheet = await Ready(new() { BypassCSP = true });
        await sheet.Page.Locator("#m1-count").EvaluateAsync("e => e.value = '1'");
        await sheet.Page.Locator("#m1-count").DispatchEventAsync("change");
        await sheet.Until("document.querySelector('.finding.broken .mender, .finding.unsafe .mender') !== null");
        await sheet.Page.Locator("#save").ClickAsync();
        await sheet.Until("document.getElementById('file').textContent.endsWith(', saved')");
        await sheet.Eval<bool>("(document.querySelector('.finding.broken .mender, .finding.unsafe .mender').click(), true)");
        await sheet.Until("document.querySelectorAll('.card .strip').length > 0");
        await sheet.Eval<bool>("(document.querySelectorAll('details:not(#play-part)').forEach(d => d.open = true), true)");
        await sheet.Until("document.querySelector('[data-handle=mark]') !== null");

        // The playback chooses the move that it is at, and the floor then shows that one.
        await sheet.Eval<bool>("(document.getElementById('play-part').open = true)");
        await sheet.Page.Locator("#m2-technique").ClickAsync();
        await sheet.Page.Keyboard.PressAsync("Alt+n");
        await sheet.Until("document.activeElement.id === 'm2-from' && document.querySelectorAll('#compare-times svg').length === 2");
        await sheet.Until("document.getElementById('floor-head').textContent === 'Floor, move 3' && document.getElementById('player') !== null && document.querySelector('#time-line svg') !== null");
        await Axe.IsCleanEverywhere(sheet);

        // Several moves at once, which are open.
        await sheet.Page.Keyboard.PressAsync("Shift+ArrowDown");
        await sheet.Until("document.getElementById('stretch-name').textContent === 'Moves 3 to 4'");
        await sheet.Page.Locator("#stretch-clear").ClickAsync();
        await sheet.Until("document.querySelectorAll('.box.is-open').length > 0 && document.querySelector('.row.first-open') !== null");
        await Axe.IsCleanEverywhere(sheet);
    }

    [Fact]
    public async Task On_a_phone_the_move_that_is_chosen_is_a_card_and_the_others_are_a_line_each()
    {
        await using var sheet = await Ready(new() { ViewportSize = new() { Width = 390, Height = 844 } });
        Assert.Equal(0, await sheet.Page.Locator(".row .cells:visible").CountAsync());
        Assert.Equal(await sheet.Page.Locator(".row").CountAsync(), await sheet.Page.Locator(".row .brief:visible").CountAsync());
        await sheet.Page.Locator(".row:nth-child(2) .brief").ClickAsync();
        await sheet.Until("document.activeElement.id === 'm1-technique' && document.querySelectorAll('.row.now').length === 1");
        Assert.Equal(1, await sheet.Page.Locator(".row .cells:visible").CountAsync());
        await sheet.Page.Locator(".row.now .row-tools button").Last.ClickAsync();
        await sheet.Page.Locator("#m1-note").FillAsync("slow");
        await sheet.Page.Locator(".row:nth-child(3) .brief").ClickAsync();
        await sheet.Until("document.getElementById('undo').textContent === 'Undo: note of move 2'");
    }

    [Fact]
    public async Task More_of_a_move_is_written_by_keyboard_and_a_finding_stands_on_time_line_and_floor()
    {
        await using var sheet = await Ready();
        await sheet.Page.Locator("#m1-technique").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("Alt+n");
        await sheet.Until("document.activeElement.id === 'm1-from'");
        await sheet.Page.Keyboard.PressAsync("Tab");
        await sheet.Page.Keyboard.TypeAsync("voice");
        await sheet.Page.Keyboard.PressAsync("Tab");
        await sheet.Page.Keyboard.TypeAsync("left wing until 24");
        await sheet.Until("document.getElementById('m1-hurts-as').classList.contains('wrong')");
        await sheet.Page.Keyboard.PressAsync("Control+a");
        await sheet.Page.Keyboard.TypeAsync("left wrist until 24");
        await sheet.Page.Keyboard.PressAsync("Tab");
        await sheet.Until("document.querySelectorAll('.row')[1].querySelector('.also').textContent.startsWith('cue voice; hurts left-wrist until 24')");
        Assert.Equal("Undo: hurts of move 2", await sheet.Text("#undo"));
        await sheet.Page.Locator("#m1-count").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("Control+a");
        await sheet.Page.Keyboard.TypeAsync("1");
        await sheet.Until("document.querySelectorAll('#time-line .found-at.broken, #time-line .found-at.unsafe').length > 0");

        // Once it is written, the floor of that move has the sign beside whom it is about.
        await sheet.Page.Keyboard.PressAsync("Enter");
        await sheet.Until("document.activeElement.id === 'm2-count'");
        await sheet.Page.Keyboard.PressAsync("ArrowUp");
        await sheet.Until("document.getElementById('floor-head').textContent === 'Floor, move 2' && document.querySelectorAll('#floor .found-at.broken, #floor .found-at.unsafe').length > 0");
    }

    [Fact]
    public async Task A_file_that_another_program_has_changed_is_read_anew_or_saved_over()
    {
        await using var sheet = await Ready();
        await System.IO.File.WriteAllTextAsync(File, RoutineWriter.Text(Papers.YardRoutine).Replace("Behind the cinema", "Behind the bakery", StringComparison.Ordinal));
        await sheet.Until("document.querySelectorAll('#remark button').length === 2");
        await sheet.Page.Locator("#remark button").First.ClickAsync();
        await sheet.Until("document.getElementById('remark').hidden && document.getElementById('undo').textContent === 'Undo: read the file anew' && document.getElementById('file').textContent.endsWith(', saved')");
        await System.IO.File.WriteAllTextAsync(File, "mine");
        await sheet.Until("document.querySelectorAll('#remark button').length === 2 && !document.getElementById('remark').hidden");
        await sheet.Page.Locator("#remark button").Last.ClickAsync();
        await sheet.Until("document.getElementById('remark').hidden");
        Assert.Equal("mine", await System.IO.File.ReadAllTextAsync(Path.Combine(Folder, "yard.versions", "1.json")));
    }

    [Fact]
    public async Task Cells_that_are_written_quickly_one_after_the_other_are_all_kept()
    {
        await using var sheet = await Ready();
        await sheet.Page.Locator("#m1-technique").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("Alt+n");
        await sheet.Until("document.activeElement.id === 'm1-from'");
        await sheet.Page.RouteAsync("**/type", async route =>
        {
            await Task.Delay(300);
            await route.ContinueAsync();
        });
        foreach (var text in new[] { "2", "voice", "left wrist until 24", "1" })
        {
            await sheet.Page.Keyboard.TypeAsync(text);
            await sheet.Page.Keyboard.PressAsync("Tab");
        }

        await sheet.Until("document.querySelectorAll('.row')[1].querySelector('.also').textContent === 'comes from 2; cue voice; hurts left-wrist until 24; down longer 1'");
        Assert.True(await sheet.Eval<bool>("document.getElementById('remark').hidden"));
    }

    [Fact]
    public async Task A_second_tab_shows_the_offer_that_stands()
    {
        await using var one = await Ready();
        await one.Page.Locator("#m1-reaction").FillAsync(string.Empty);
        await one.Page.Locator("#m1-reaction").PressAsync("Enter");
        await one.Until("document.getElementById('verdict').textContent.includes('move 2')");
        await one.Page.Locator("#fill").ClickAsync();
        await one.Until("document.querySelector('.card .take:enabled') !== null");
        await using var two = await Browser.Open(Server.Address);
        await two.Until("document.querySelector('.card .take:enabled') !== null && document.querySelectorAll('.row').length > 0 && document.getElementById('floor-head').textContent === 'Offer 1: move 2'");
    }

    [Fact]
    public async Task Names_and_notes_that_are_markup_stay_words()
    {
        await Server.DisposeAsync();
        const string Evil = "<img src=x onerror=document.title='no'><script>document.title='no'</script>";
        var (who, routine) = ("<svg onload=document.title='no'>", Papers.YardRoutine);
        routine = routine with { Brief = routine.Brief with { Title = Evil, Attackers = [.. routine.Brief.Attackers.Select((a, i) => i == 0 ? a with { Name = who } : a)] }, Moves = [.. routine.Moves.Select(m => m with { Note = Evil })] };
        await System.IO.File.WriteAllTextAsync(File, RoutineWriter.Text(routine));
        await Start();
        await using var sheet = await Ready();
        await sheet.Eval<bool>("(document.querySelectorAll('details').forEach(d => d.open = true), true)");
        await sheet.Page.Locator("#m1-technique").FocusAsync();
        await sheet.Until("document.getElementById('player') !== null && document.querySelector('#time-line svg') !== null && document.querySelectorAll('#figures .figure').length > 0");
        Assert.Equal(0, await sheet.Eval<int>("[...document.querySelectorAll('body script, img, [onload], [onerror]')].filter(e => e.tagName !== 'SCRIPT' || e.textContent.startsWith(\"document\")).length"));
        Assert.Equal($"{Evil} – Rehearse", await sheet.Eval<string>("document.title"));
    }

    [Fact]
    public async Task What_the_hero_does_alone_has_no_attacker_and_no_reaction_and_nothing_of_it_is_open()
    {
        await Server.DisposeAsync();
        await System.IO.File.WriteAllTextAsync(File, """
            { "brief": { "hero": { "name": "Zora" }, "marks": [ { "name": "door", "x": 2, "y": 3 }, { "name": "window", "x": 5, "y": 3 } ], "attackers": [ { "name": "Bruno" } ] },
              "moves": [ { "count": 2, "technique": "walks-across", "to": "window" },
                { "count": 9, "attacker": "Bruno", "from": "3", "attack": "cross-right", "technique": "parry-down-left", "reaction": "?" } ] }
            """);
        await Start();
        await using var sheet = await Ready();
        Assert.Equal(["none", "none", "none"], await sheet.Eval<string[]>("['attacker', 'attack', 'reaction'].map(c => document.getElementById('m0-' + c).placeholder)"));
        Assert.Equal(["m1-reaction"], await sheet.Eval<string[]>("[...document.querySelectorAll('.box.is-open :is(textarea, input)')].filter(e => e.checkVisibility()).map(e => e.id)"));
        Assert.True(await sheet.Eval<bool>("document.getElementById('grid').lastElementChild.getBoundingClientRect().bottom <= document.getElementById('notes').getBoundingClientRect().top"), "Moves lie under what stands below them.");
        Assert.Equal("2 Zora alone walks across", (await sheet.Eval<string>("document.querySelector('.row .brief').textContent")).Trim());
    }

    [Fact]
    public async Task A_fight_with_an_ally_is_written_and_audited_and_no_drawing_shows_half_of_it()
    {
        await Server.DisposeAsync();
        await System.IO.File.WriteAllTextAsync(File, """
            { "brief": { "hero": { "name": "Zora" }, "ally": { "name": "Mira" }, "attackers": [ { "name": "Bruno" }, { "name": "Wanda" } ] },
              "moves": [ { "count": 2, "by": "Zora", "attacker": "Bruno", "attack": "swing-right", "technique": "outside-block-left", "reaction": "limb-stopped" },
                { "count": "2&", "by": "Mira", "attacker": "Wanda", "attack": "swing-right", "technique": "outside-block-left", "reaction": "limb-stopped" } ] }
            """);
        await Start();
        await using var sheet = await Browser.Open(Server.Address, new() { BypassCSP = true });
        await sheet.Until("document.getElementById('floor').textContent.includes('cannot show Mira beside Zora') && !document.getElementById('time-empty').hidden");
        Assert.Equal("Mira", await sheet.Page.Locator("#m1-by").InputValueAsync());
        await sheet.Page.Locator("#m1-attacker").FillAsync("Bruno");
        await sheet.Until("document.querySelectorAll('.finding').length > 0");

        // Nothing is searched for two; that somebody is hurt is written and judged all the same.
        await sheet.Page.Locator("#hurt > summary").ClickAsync();
        await sheet.Until("document.getElementById('hurt-what').options.length > 5");
        await sheet.Page.Locator("#hurt-who").SelectOptionAsync("ally");
        await sheet.Page.Locator("#hurt-what").SelectOptionAsync("injured-left-elbow");
        await sheet.Page.Locator("#hurt-note").ClickAsync();
        await sheet.Until("document.getElementById('undo').textContent === 'Undo: Mira: injured-left-elbow' && [...document.querySelectorAll('.finding')].some(f => f.textContent.includes('able:') && f.textContent.includes('Mira'))");
        await Axe.IsCleanEverywhere(sheet);
    }
}
