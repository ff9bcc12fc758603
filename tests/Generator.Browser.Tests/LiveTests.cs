using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rehearsal.Documents;
using Generator.Rehearsal.Offers;
using Generator.Rehearsal.Serving;
using Microsoft.Playwright;
using Newtonsoft.Json.Linq;

namespace Generator.Browser.Tests;

/// <summary>The live page in a real browser: a fight is written, judged with every letter, mended, filled, saved and opened again.</summary>
public sealed class LiveTests(Browser browser) : IClassFixture<Browser>, IAsyncLifetime
{
    private readonly string folder = Directory.CreateTempSubdirectory("generator-").FullName;
    private LiveServer server = null!;

    private string File => Path.Combine(folder, "yard.routine.json");

    public async Task InitializeAsync()
    {
        await System.IO.File.WriteAllTextAsync(File, RoutineWriter.Text(Papers.YardRoutine));
        await Start();
    }

    public async Task DisposeAsync()
    {
        await server.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task A_fight_is_written_judged_mended_saved_and_opened_again_by_keyboard_alone()
    {
        await using var sheet = await Ready();
        var rows = await sheet.Page.Locator(".row").CountAsync();
        Assert.DoesNotContain(server.Token, await sheet.Eval<string>("location.href"), StringComparison.Ordinal);
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
        await server.DisposeAsync();
        await Start();
        await using var again = await Ready();
        Assert.Equal(rows, await again.Page.Locator(".row").CountAsync());
        Assert.Equal(1, await again.Page.Locator(".lock.on").CountAsync());
    }

    [Theory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    [InlineData(390, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public async Task Axe_finds_nothing_and_nothing_is_wider_than_the_screen(int width, ColorScheme scheme)
    {
        await using var sheet = await Ready(new() { ViewportSize = new() { Width = width, Height = 900 }, ColorScheme = scheme, BypassCSP = true });
        await sheet.Page.Locator("#m1-count").EvaluateAsync("e => e.value = '1'");
        await sheet.Page.Locator("#m1-count").DispatchEventAsync("change");
        await sheet.Until("document.querySelector('.finding.broken .mender, .finding.unsafe .mender') !== null");
        await sheet.Page.Locator("#save").ClickAsync();
        await sheet.Until("document.getElementById('file').textContent.endsWith(', saved')");
        await sheet.Eval<bool>("(document.querySelector('.finding.broken .mender, .finding.unsafe .mender').click(), true)");
        await sheet.Until("document.querySelectorAll('.card .strip').length > 0");
        await sheet.Eval<bool>("(document.querySelectorAll('details').forEach(d => d.open = true), true)");
        await sheet.Until("document.querySelector('[data-handle=mark]') !== null");
        await sheet.Page.Locator(width < 800 ? ".row:nth-child(3) .brief" : "#m2-technique").First.ClickAsync();
        await sheet.Page.Keyboard.PressAsync("Alt+n");
        await sheet.Until("document.activeElement.id === 'm2-from' && document.querySelectorAll('#compare-times svg').length === 2");
        await sheet.Until("document.getElementById('floor-head').textContent === 'Floor, move 3' && document.getElementById('player') !== null && document.querySelector('#time-line svg') !== null");
        await Clean(sheet);
        Assert.InRange(await sheet.Eval<int>("document.documentElement.scrollWidth"), 0, width);
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
    public async Task More_of_a_move_is_written_by_keyboard_and_a_finding_stands_on_the_time_line()
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
        Assert.Equal("mine", await System.IO.File.ReadAllTextAsync(Path.Combine(folder, "yard.versions", "1.json")));
    }

    /// <summary>The answer to what was typed before is still under way.</summary>
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

    /// <summary>An offer stands already when the page is opened.</summary>
    [Fact]
    public async Task A_second_tab_shows_the_offer_that_stands()
    {
        await using var one = await Ready();
        await one.Page.Locator("#m1-reaction").FillAsync(string.Empty);
        await one.Page.Locator("#m1-reaction").PressAsync("Enter");
        await one.Until("document.getElementById('verdict').textContent.includes('move 2')");
        await one.Page.Locator("#fill").ClickAsync();
        await one.Until("document.querySelector('.card .take:enabled') !== null");
        await using var two = await browser.Open(server.Address);
        await two.Until("document.querySelector('.card .take:enabled') !== null && document.querySelectorAll('.row').length > 0 && document.getElementById('floor-head').textContent === 'Offer 1: move 2'");
    }

    /// <summary>Whatever people are called, no name becomes part of the page.</summary>
    [Fact]
    public async Task Names_and_notes_that_are_markup_stay_words()
    {
        await server.DisposeAsync();
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
    public async Task A_fight_with_an_ally_is_written_and_audited_and_no_drawing_shows_half_of_it()
    {
        await server.DisposeAsync();
        await System.IO.File.WriteAllTextAsync(File, """
            { "brief": { "hero": { "name": "Zora" }, "ally": { "name": "Mira" }, "attackers": [ { "name": "Bruno" }, { "name": "Wanda" } ] },
              "moves": [ { "count": 2, "by": "Zora", "attacker": "Bruno", "attack": "swing-right", "technique": "outside-block-left", "reaction": "limb-stopped" },
                { "count": "2&", "by": "Mira", "attacker": "Wanda", "attack": "swing-right", "technique": "outside-block-left", "reaction": "limb-stopped" } ] }
            """);
        await Start();
        await using var sheet = await browser.Open(server.Address, new() { BypassCSP = true });
        await sheet.Until("document.getElementById('floor').textContent.includes('cannot show Mira beside Zora') && !document.getElementById('time-empty').hidden");
        Assert.Equal("Mira", await sheet.Page.Locator("#m1-by").InputValueAsync());
        await sheet.Page.Locator("#m1-attacker").FillAsync("Bruno");
        await sheet.Until("document.querySelectorAll('.finding').length > 0");
        await Clean(sheet);
    }

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
        await Clean(sheet);
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
        await Clean(sheet);
    }

    [Fact]
    public async Task A_new_fight_is_cast_placed_and_written_by_keyboard_alone()
    {
        await server.DisposeAsync();
        var (document, _) = Opening.New(folder, Papers.Book);
        server = await LiveServer.Start(document, (_, _) => Task.FromResult(new Answer(string.Empty, "no")));
        await using var sheet = await browser.Open(server.Address, new() { BypassCSP = true });
        await sheet.Until("document.getElementById('cast').open && document.getElementById('cast-hero-name') !== null && document.querySelector('#floor .handle') !== null");
        await sheet.Page.Locator("#cast-hero-name").FillAsync("Zora");
        await sheet.Page.Keyboard.PressAsync("Tab");
        await sheet.Until("document.getElementById('undo').textContent === 'Undo: name of the hero'");
        await sheet.Page.Locator("text=Add an obstacle").PressAsync("Enter");
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
        await Clean(sheet);
    }

    private static async Task Clean(Sheet sheet)
    {
        var result = await sheet.Page.RunAxe(new AxeRunOptions());
        Assert.Empty(result.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {n.Html}")));
    }

    private async Task Start()
    {
        var (document, _) = Opening.Of(File, Papers.Book);
        var whole = new JObject { ["routine"] = JObject.Parse(RoutineWriter.Text(Papers.YardRoutine)), ["gave"] = new JArray() }.ToString();
        server = await LiveServer.Start(document, (_, _) => Task.FromResult(new Answer(whole, string.Empty)));
    }

    private async Task<Sheet> Ready(BrowserNewContextOptions? options = null)
    {
        var sheet = await browser.Open(server.Address, options);
        await sheet.Until("document.querySelectorAll('.row').length > 0 && document.querySelector('#floor svg') !== null");
        return sheet;
    }
}
