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
