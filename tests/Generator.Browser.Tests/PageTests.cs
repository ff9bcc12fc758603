using Generator.Domain;
using Microsoft.Playwright;

namespace Generator.Browser.Tests;

/// <summary>The pages in a real browser: they play, print, can be used by everybody, and let nothing in or out.</summary>
public sealed class PageTests(Browser browser, Papers papers) : IClassFixture<Browser>, IClassFixture<Papers>
{
    private const string X = "document.querySelector('.actor[data-performer=\"1\"]').dataset.";

    [Fact]
    public async Task Playback_steps_by_counts_and_moves_the_performers()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"));
        await sheet.Page.Locator("#place").FillAsync("0");
        Assert.Equal("count 1", await sheet.Text("#count"));
        var before = await sheet.Eval<string>(X + "y");
        await sheet.Page.Locator("#on").ClickAsync();
        Assert.Equal("count 2", await sheet.Text("#count"));
        Assert.Contains("Knee", await sheet.Text("#caption"), StringComparison.Ordinal);
        Assert.NotEqual(before, await sheet.Eval<string>(X + "y"));
        await sheet.Page.Locator("#on").PressAsync("Shift+ArrowRight");
        Assert.Equal("count 2&", await sheet.Text("#count"));
        await sheet.Page.Locator("#on").PressAsync("ArrowLeft");
        await sheet.Page.Locator("#back").ClickAsync();
        Assert.Equal("count 1", await sheet.Text("#count"));
    }

    [Fact]
    public async Task Playback_plays_clicks_stops_and_sets_the_speed_by_keys()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"));
        await sheet.Eval<bool>("(() => { window.clicks = 0; const start = OscillatorNode.prototype.start; OscillatorNode.prototype.start = function (t) { window.clicks++; start.call(this, t); }; return true; })()");
        await sheet.Page.Locator("#play").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("4");
        Assert.True(await sheet.Page.Locator("[name=speed][value='1']").IsCheckedAsync());
        await sheet.Page.Keyboard.PressAsync("k");
        Assert.Equal("Pause", await sheet.Text("#play"));
        await sheet.Until("Number(document.getElementById('place').value) >= 3");
        Assert.True(await sheet.Eval<int>("window.clicks") >= 2);
        await sheet.Page.Locator("#stage").ClickAsync();
        Assert.Equal("Play", await sheet.Text("#play"));
        var stopped = await sheet.Text("#count");
        await sheet.Eval<bool>("new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))");
        Assert.Equal(stopped, await sheet.Text("#count"));
    }

    [Fact]
    public async Task A_phrase_loops_with_the_move_it_picks_up_from()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"));
        await sheet.Page.Locator("#part").SelectOptionAsync("1");
        var first = await sheet.Text("#count");
        Assert.StartsWith("picks up from move ", await sheet.Text("#phrase-2 .pick-up"), StringComparison.Ordinal);
        Assert.Contains($"{first}:", await sheet.Text("#phrase-2 .pick-up"), StringComparison.Ordinal);
        await sheet.Page.Locator("#loop").CheckAsync();
        var end = await sheet.Eval<int>("JSON.parse(document.getElementById('course').textContent).phrases[1][1]");
        await sheet.Page.Locator("#place").FillAsync((end - 1).ToString(System.Globalization.CultureInfo.InvariantCulture));
        await sheet.Page.Locator("#play").ClickAsync();
        await sheet.Until($"Number(document.getElementById('place').value) < {end - 2}");
        Assert.Equal("Pause", await sheet.Text("#play"));
    }

    [Fact]
    public async Task What_comes_next_is_told_names_come_and_go_and_findings_are_found()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"));
        Assert.StartsWith("Next at count ", await sheet.Text("#next"), StringComparison.Ordinal);
        Assert.True(await sheet.Page.Locator("#stage .called:visible").CountAsync() > 0);
        await sheet.Page.Locator("#on").PressAsync("n");
        Assert.Equal(0, await sheet.Page.Locator("#stage .called:visible").CountAsync());
        var counts = await sheet.Eval<int[]>("document.getElementById('finding').dataset.counts.split(' ').map(Number)");
        Assert.Equal(counts.Length, await sheet.Page.Locator(".marks .grave-mark").CountAsync());
        foreach (var count in counts.Append(counts[0]))
        {
            await sheet.Page.Locator("#finding").ClickAsync();
            Assert.Equal(count, await sheet.Eval<int>("Number(document.getElementById('place').value)"));
        }
    }

    [Fact]
    public async Task Four_counts_come_in_before_anybody_moves()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"));
        await sheet.Eval<bool>("(() => { window.said = []; new MutationObserver(() => window.said.push(document.getElementById('count').textContent + '@' + document.getElementById('place').value)).observe(document.getElementById('count'), { childList: true }); return true; })()");
        await sheet.Page.Locator("#count-in").CheckAsync();
        await sheet.Page.Locator("#play").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("4");
        var from = await sheet.Eval<int>("JSON.parse(document.getElementById('course').textContent).from");
        await sheet.Page.Locator("#play").ClickAsync();
        await sheet.Until($"Number(document.getElementById('place').value) > {from}");
        var told = (await sheet.Eval<string[]>("window.said")).Where(s => s.StartsWith("in ", StringComparison.Ordinal)).ToList();
        Assert.Equal(Enumerable.Range(1, 4).Select(b => FormattableString.Invariant($"in {b} of 4@{from}")), told);
    }

    [Fact]
    public async Task One_performer_can_be_followed()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"));
        await sheet.Page.Locator("#follow").SelectOptionAsync("2");
        Assert.Equal(1, await sheet.Page.Locator(".actor.followed").CountAsync());
        Assert.Equal(1, await sheet.Page.Locator("#doings li:visible").CountAsync());
        Assert.Contains("Wanda", await sheet.Text("#next"), StringComparison.Ordinal);
        await sheet.Page.Locator("#place").FillAsync("12");
        Assert.Equal("Nothing more to do.", await sheet.Text("#next"));
        await sheet.Page.Locator("#follow").SelectOptionAsync(string.Empty);
        Assert.Equal(0, await sheet.Page.Locator(".actor.followed").CountAsync());
    }

    [Fact]
    public async Task Those_who_want_little_motion_see_it_jump_from_half_count_to_half_count()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"), new() { ReducedMotion = ReducedMotion.Reduce });
        await sheet.Eval<bool>("(() => { window.seen = new Set(); new MutationObserver(() => window.seen.add(" + X + "y)).observe(document.querySelector('.actor[data-performer=\"1\"]'), { attributes: true, attributeFilter: ['data-y'] }); return true; })()");
        await sheet.Page.Locator("#play").ClickAsync();
        await sheet.Until("Number(document.getElementById('place').value) >= 3");
        await sheet.Page.Locator("#play").ClickAsync();
        var passed = await sheet.Eval<int>("Number(document.getElementById('place').value) - JSON.parse(document.getElementById('course').textContent).from + 1");
        Assert.InRange(await sheet.Eval<int>("window.seen.size"), 1, passed);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task No_two_labels_of_a_plan_lie_on_one_another_in_the_browsers_own_font(bool crowd)
    {
        await using var sheet = await browser.Open(crowd ? papers.Of("crowd", Papers.Crowd, "routine.html") : papers.Of("routine.html"));
        var clashes = await sheet.Eval<string[]>("""
            [...document.querySelectorAll('.plan')].flatMap(svg => {
              const boxes = [...svg.querySelectorAll('.label text')].map(t => [t.textContent, t.getBBox()]);
              return boxes.flatMap(([a, p], i) => boxes.slice(i + 1)
                .filter(([, q]) => p.x < q.x + q.width && q.x < p.x + p.width && p.y + 3 < q.y + q.height && q.y + 3 < p.y + p.height)
                .map(([b]) => a + ' / ' + b));
            })
            """);
        Assert.Empty(clashes);
        Assert.True(await sheet.Page.Locator(".phrase .label text").CountAsync() > 20);

        // Nor on somebody who lies there, as far as the middle of the line goes.
        var covered = await sheet.Eval<string[]>("""
            [...document.querySelectorAll('.phrase .plan')].flatMap(svg => {
              const bodies = [...svg.querySelectorAll('rect.body')];
              return [...svg.querySelectorAll('.label:not(.hour) text')].filter(t => {
                const box = t.getBBox();
                return bodies.some(b => [...Array(21).keys()].some(i => b.isPointInFill(
                  new DOMPoint(box.x + box.width * i / 20, box.y + box.height / 2).matrixTransform(t.getCTM()).matrixTransform(b.getCTM().inverse()))));
              }).map(t => t.textContent);
            })
            """);
        Assert.Empty(covered);
        Assert.True(await sheet.Page.Locator(".phrase rect.body").CountAsync() > 2);

        // What is shown again is as wide as what it shows: its words stand where they stand there.
        var again = await sheet.Eval<double[]>("[...document.querySelectorAll('use[href=\"#whole-floor\"]')].map(u => Math.abs(u.getBBox().width - document.getElementById('whole-floor').getBBox().width))");
        Assert.NotEmpty(again);
        Assert.All(again, off => Assert.InRange(off, 0, 0.5));
    }

    /// <summary>However long a name is, it stands on one line, and count, sign, name and technique stand beside one another.</summary>
    [Theory]
    [InlineData(1400)]
    [InlineData(390)]
    public async Task On_the_wall_nothing_lies_on_anything_else(int width)
    {
        await using var sheet = await browser.Open(papers.Of("crowd", Papers.Crowd, "wall.html"), new() { ViewportSize = new() { Width = width, Height = 900 } });
        var clashes = await sheet.Eval<string[]>("""
            [...document.querySelectorAll('.poster .moves li')].flatMap(li => {
              const parts = [...li.children].map(e => { const r = document.createRange(); r.selectNodeContents(e); return [e, r.getBoundingClientRect()]; });
              return parts.slice(1).filter(([, box], i) => box.left < parts[i][1].right - 1).map(([e]) => li.textContent + ' / ' + e.textContent);
            })
            """);
        Assert.Empty(clashes);
        Assert.Empty(await sheet.Eval<string[]>("[...document.querySelectorAll('.poster .moves .name')].filter(n => n.getBoundingClientRect().height > 1.6 * parseFloat(getComputedStyle(n).fontSize)).map(n => n.textContent)"));
        Assert.Equal(Papers.Crowd.Moves.Count, await sheet.Page.Locator(".poster .moves li").CountAsync());
    }

    /// <summary>Somebody who falls is drawn on the way down: the body grows from their feet until it lies.</summary>
    [Fact]
    public async Task A_fall_is_seen_on_its_way_and_a_spark_only_where_a_blow_lands()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"));
        var frames = await sheet.Eval<double[][]>("""
            (() => {
              const place = document.getElementById('place');
              const course = JSON.parse(document.getElementById('course').textContent);
              const actors = [...document.querySelectorAll('.actor')];
              place.step = 'any';
              const frames = [];
              for (let time = course.from; time <= course.to; time += 0.25) {
                place.value = time;
                place.dispatchEvent(new Event('input'));
                const down = actors.filter(a => a.classList.contains('falls')).map(a => Number(a.querySelector('.lying').getAttribute('transform').match(/scale\(1,([\d.]+)\)/)[1]));
                const lands = course.performers.flatMap(p => p.contacts).filter(c => c[2] && time >= c[0] && time < c[0] + 1).length;
                frames.push([time, down.length ? Math.max(...down) : 0, lands, document.querySelectorAll('#blows .spark').length]);
              }
              return frames;
            })()
            """);
        var falling = frames.Where(f => f[1] > 0).ToList();
        Assert.True(falling.Count > 8, $"{falling.Count} moments");
        Assert.Contains(falling.Zip(falling.Skip(1)), f => f.First[1] < f.Second[1] && f.Second[0] - f.First[0] == 0.25);
        Assert.All(falling, f => Assert.InRange(f[1], 0.3, 1));
        Assert.All(frames, f => Assert.Equal(f[2], f[3]));
        Assert.Contains(frames, f => f[3] > 0);
    }

    [Fact]
    public async Task In_playback_signs_are_where_the_people_are_and_nobody_jumps()
    {
        await using var sheet = await browser.Open(papers.Of("crowd", Papers.Crowd, "routine.html"));
        var (nearest, farthest, moments) = (double.MaxValue, 0.0, 0);
        foreach (var frame in await sheet.Eval<double[][]>("""
            (() => {
              const place = document.getElementById('place');
              const course = JSON.parse(document.getElementById('course').textContent);
              const actors = [...document.querySelectorAll('.actor')];
              place.step = 'any';
              const frames = [];
              let before = null;
              for (let time = course.from; time <= course.to; time += 0.25) {
                place.value = time;
                place.dispatchEvent(new Event('input'));
                const seen = actors.map(a => a.classList.contains('away') ? null : a.getAttribute('transform').match(/-?[\d.]+/g).map(Number));
                const far = (a, b) => Math.hypot(a[0] - b[0], a[1] - b[1]);
                const pairs = seen.flatMap((a, i) => seen.slice(i + 1).filter(b => a && b).map(b => far(a, b)));
                const steps = before ? seen.map((a, i) => a && before[i] ? far(a, before[i]) : 0) : [0];
                frames.push([Math.min(...pairs), Math.max(...steps)]);
                before = seen;
              }
              return frames;
            })()
            """))
        {
            (nearest, farthest, moments) = (Math.Min(nearest, frame[0]), Math.Max(farthest, frame[1]), moments + 1);
        }

        Assert.True(moments > 500);

        // Nobody is drawn apart from others for looks: in this made-up crowd some do stand in one place.
        Assert.True(nearest < 20, $"{nearest} units between two signs");
        Assert.True(farthest <= 60, $"{farthest} units in a quarter of a half count");
    }

    [Fact]
    public async Task Plan_and_buttons_of_the_playback_fit_a_phone_together()
    {
        await using var sheet = await browser.Open(papers.Of("crowd", Papers.Crowd, "routine.html"), new() { ViewportSize = new() { Width = 390, Height = 780 } });
        var height = await sheet.Eval<double>("document.getElementById('play').getBoundingClientRect().bottom - document.getElementById('stage').getBoundingClientRect().top");
        Assert.InRange(height, 300, 780);
    }

    [Fact]
    public async Task Hostile_names_and_notes_stay_text()
    {
        const string Hostile = "</script><script>alert(1)</script><img src=x onerror=alert(2)>\"'&{{7*7}}<!--";
        var yard = Papers.YardRoutine;
        var brief = yard.Brief with
        {
            Title = Hostile,
            Hero = yard.Brief.Hero with { Name = "javascript:alert(3)" },
            Attackers = [.. yard.Brief.Attackers.Select((a, i) => a with { Name = Hostile + i })],
            Cameras = [yard.Brief.Cameras[0] with { Name = Hostile }],
            Floor = yard.Brief.Floor with { Obstacles = [yard.Brief.Floor.Obstacles[0] with { Name = Hostile }] },
        };
        var routine = yard with { Brief = brief, LibraryVersion = Hostile, Moves = [.. yard.Moves.Select(m => m with { Note = Hostile })] };
        var path = papers.Of("hostile", routine, "routine.html");
        await using var sheet = await browser.Open(path);
        Assert.Equal(Hostile, await sheet.Text("h1"));
        Assert.Equal(Hostile, await sheet.Page.TitleAsync());
        Assert.Equal(Hostile + "0", await sheet.Eval<string>("JSON.parse(document.getElementById('course').textContent).performers[1].name"));
        Assert.Equal(0, await sheet.Page.Locator("img").CountAsync());
        Assert.Equal(3, await sheet.Page.Locator("script").CountAsync());
        foreach (var part in Directory.GetFiles(Path.GetDirectoryName(path)!, "part-*.html"))
        {
            await using var other = await browser.Open(part);
            Assert.Equal(0, await other.Page.Locator("img, script").CountAsync());
        }
    }
}
