using Deque.AxeCore.Playwright;
using Generator.Figures.Bodies;
using Generator.Paperwork;
using Generator.Rules;
using Microsoft.Playwright;

namespace Generator.Browser.Tests;

/// <summary>The playback in the round: bodies where the figures are, seen from where one wants to see them.</summary>
public sealed class RoundTests(Browser browser, Papers papers) : IClassFixture<Browser>, IClassFixture<Papers>
{
    private const string Picture = "document.getElementById('scene').toDataURL()";

    [Fact]
    public async Task Every_joint_is_where_the_figure_has_it()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"));
        var fight = PaperSource.Of(new Scene(Papers.YardRoutine.Brief, Papers.Book), Papers.YardRoutine).With(PaperOptions.Default with { Cards = Papers.Cards }).Acted!;
        var seen = 0;
        for (var time = (double)fight.From; time <= fight.To; time += 0.75)
        {
            var places = await sheet.Eval<double[][][]>($"inTheRound(JSON.parse(document.getElementById('round').textContent), document.createElement('canvas'), {{}}).places({time.ToString(System.Globalization.CultureInfo.InvariantCulture)})");
            Assert.Equal(fight.Parts.Count, places.Length);
            for (var p = 0; p < places.Length; p++)
            {
                var (hips, rotations) = fight.Parts[p].At(time);
                var own = Rig.Joints(hips, rotations, fight.Parts[p].Stature);
                for (var j = 0; j < Skeleton.Joints; j++)
                {
                    var off = new Vec(places[p][j][0], places[p][j][1], places[p][j][2]).To(own[j]);
                    Assert.True(off < 0.05, $"{fight.Parts[p].Name} at {time}: {(Joint)j} is {off:0.000} m off");
                    seen++;
                }
            }
        }

        Assert.True(seen > 1000, $"{seen} joints");
    }

    /// <summary>A screen that is filled is filled with the fight, in the round and as a plan; and what its buttons and its picture need is all on it.</summary>
    [Fact]
    public async Task Full_screen_makes_the_fight_larger()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"), new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = 1280, Height = 720 } });
        foreach (var (view, picture) in new[] { ("free", "#scene"), ("plan", "#stage") })
        {
            await sheet.Page.Locator($"[name=seen][value={view}]").CheckAsync();
            var before = (await sheet.Page.Locator(picture).BoundingBoxAsync())!;
            await sheet.Page.Locator("#full").ClickAsync();
            await sheet.Page.WaitForFunctionAsync("document.fullscreenElement !== null");
            var filled = (await sheet.Page.Locator(picture).BoundingBoxAsync())!;
            Assert.True(filled.Width * filled.Height > 1.25 * before.Width * before.Height, $"{view}: {before.Width} x {before.Height}, then {filled.Width} x {filled.Height}");
            Assert.True(filled.Y >= 0 && filled.Y + filled.Height <= 720, $"{view}: from {filled.Y} to {filled.Y + filled.Height}");
            Assert.True((await sheet.Page.Locator("#play").BoundingBoxAsync())!.Y < 660);
            await sheet.Page.Keyboard.PressAsync("Escape");
            await sheet.Page.EvaluateAsync("document.fullscreenElement ? document.exitFullscreen() : null");
            await sheet.Page.WaitForFunctionAsync("document.fullscreenElement === null");
        }
    }

    [Fact]
    public async Task It_is_seen_from_the_floor_from_above_and_from_each_camera()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"), new BrowserNewContextOptions { BypassCSP = true });
        await sheet.Page.Locator("#place").FillAsync("6");
        Assert.True(await sheet.Page.Locator("#stage").IsVisibleAsync());
        Assert.False(await sheet.Page.Locator("#scene").IsVisibleAsync());
        var pictures = new List<string>();
        foreach (var name in new[] { "free", "above", "lens0" })
        {
            await sheet.Page.Locator($"[name=seen][value={name}]").CheckAsync();
            Assert.False(await sheet.Page.Locator("#stage").IsVisibleAsync());
            Assert.True(await sheet.Page.Locator("#scene").IsVisibleAsync());
            Assert.Equal(name != "lens0", await sheet.Page.Locator("#turning").IsVisibleAsync());
            pictures.Add(await sheet.Eval<string>(Picture));
        }

        await sheet.Page.Locator("#on").ClickAsync();
        pictures.Add(await sheet.Eval<string>(Picture));
        await sheet.Page.Locator("[name=seen][value=free]").CheckAsync();
        await sheet.Page.Locator("#turn-left").ClickAsync();
        pictures.Add(await sheet.Eval<string>(Picture));
        await sheet.Page.Locator("#follow").SelectOptionAsync("2");
        pictures.Add(await sheet.Eval<string>(Picture));
        await sheet.Page.Locator("#names").UncheckAsync();
        pictures.Add(await sheet.Eval<string>(Picture));
        Assert.Equal(pictures.Count, pictures.Distinct().Count());
        Assert.Empty((await sheet.Page.Locator("#playback").RunAxe()).Violations);
        await sheet.Page.Locator("#on").PressAsync("v");
        await sheet.Page.Locator("#on").PressAsync("v");
        await sheet.Page.Locator("#on").PressAsync("v");
        Assert.True(await sheet.Page.Locator("[name=seen][value=plan]").IsCheckedAsync());
        Assert.True(await sheet.Page.Locator("#stage").IsVisibleAsync());
    }

    /// <summary>Dragging goes round, on a phone too, and the picture is as wide as its place and sharp.</summary>
    [Fact]
    public async Task A_drag_goes_round()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"), new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = 390, Height = 800 } });
        await sheet.Page.Locator("[name=seen][value=free]").CheckAsync();
        var box = await sheet.Page.Locator("#scene").BoundingBoxAsync();
        Assert.InRange(box!.Width, 200, 390);
        var before = await sheet.Eval<string>(Picture);
        await sheet.Page.Mouse.MoveAsync(box.X + 100, box.Y + 60);
        await sheet.Page.Mouse.DownAsync();
        await sheet.Page.Mouse.MoveAsync(box.X + 180, box.Y + 60);
        await sheet.Page.Mouse.UpAsync();
        Assert.NotEqual(before, await sheet.Eval<string>(Picture));
        Assert.True(await sheet.Eval<bool>("document.getElementById('scene').width >= document.getElementById('scene').clientWidth"));
    }
}
