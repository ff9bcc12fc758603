using System.Globalization;
using Generator.Library.Files;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Testing;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace Generator.Browser.Tests;

/// <summary>
/// Every key in a cell leads to painted findings, and the first other way is a card before the last. How long each takes is printed, never judged: what it is on a quiet machine stands in benchmarks/NOTES.md, measured with
/// <c>GENERATOR_PROGRAM=…/generator</c> (the program as it is handed on), <c>GENERATOR_FIGHT=nine.routine.json</c> and <c>GENERATOR_KEYS=76</c>.
/// </summary>
public sealed class AnswerTimeTests(Browser browser, ITestOutputHelper told) : IClassFixture<Browser>, IDisposable
{
    private const int Moves = 5;

    /// <summary>From the key, before anybody hears of it, to a message in the frame after the findings have changed.</summary>
    private const string Watch = """
        () => {
          window.took = [];
          let began = 0;
          addEventListener('keydown', () => { began = performance.now(); }, true);
          new MutationObserver(() => {
            if (!began) return;
            const from = began;
            began = 0;
            requestAnimationFrame(() => { const { port1, port2 } = new MessageChannel(); port1.onmessage = () => window.took.push(performance.now() - from); port2.postMessage(0); });
          }).observe(document.getElementById('grid'), { subtree: true, childList: true });
        }
        """;

    private const string WatchCards = """
        () => {
          window.cards = [];
          addEventListener('click', e => { if (e.target.id === 'stretch-ways') { window.pressed = performance.now(); window.cards = []; } }, true);
          new MutationObserver(() => { while (window.cards.length < document.getElementById('cards').children.length) window.cards.push(performance.now() - window.pressed); }).observe(document.getElementById('cards'), { childList: true });
        }
        """;

    private static readonly int Keys = int.TryParse(Environment.GetEnvironmentVariable("GENERATOR_KEYS"), NumberStyles.None, CultureInfo.InvariantCulture, out var asked) ? asked : 6;

    private readonly Own own = new();

    public void Dispose() => own.Dispose();

    [Fact]
    public async Task Every_key_is_answered_by_painted_findings()
    {
        await using var sheet = await Open();
        await sheet.Page.EvaluateAsync(Watch);
        var move = (await sheet.Page.Locator(".row").CountAsync() - 1) / 2;
        await sheet.Page.Locator($"#m{move}-count").FocusAsync();
        await sheet.Page.Keyboard.PressAsync("End");
        for (var i = 0; i < Keys; i++)
        {
            await sheet.Page.Keyboard.PressAsync(i % 2 == 0 ? "9" : "Backspace");
            await sheet.Until($"window.took.length === {i + 1}");
        }

        Tell("ms from a key to its findings", [.. (await sheet.Eval<double[]>("window.took")).Order()]);
        await sheet.Page.CloseAsync();
    }

    [Fact]
    public async Task The_first_other_way_is_there_before_all_are()
    {
        await using var sheet = await Open();
        await sheet.Page.EvaluateAsync(WatchCards);
        var (moves, first, all) = (await sheet.Page.Locator(".row").CountAsync(), new List<double>(), new List<double>());
        for (var from = 1; from + Moves < moves && first.Count < Math.Max(1, Keys / 8); from += Math.Max(1, moves / 8))
        {
            await sheet.Page.Locator($".row:nth-child({from + 1}) .number").ClickAsync();
            await sheet.Page.Locator($".row:nth-child({from + Math.Min(Moves, moves - from)}) .number").ClickAsync(new() { Modifiers = [KeyboardModifier.Shift] });
            await sheet.Page.Locator("#stretch-ways").ClickAsync();
            await sheet.Until("!document.getElementById('offer').hidden && document.getElementById('leave').textContent === 'Leave' && document.getElementById('offer-time').hidden");
            var took = await sheet.Eval<double[]>("window.cards");
            Assert.Equal(took.Length, await sheet.Page.Locator(".card").CountAsync());
            if (took.Length > 0)
            {
                first.Add(took[0]);
                all.Add(took[^1]);
            }

            told.WriteLine(string.Create(CultureInfo.InvariantCulture, $"moves {from + 1} to {from + Moves}: {string.Join(", ", took.Select(t => t.ToString("0", CultureInfo.InvariantCulture)))} ms"));
            await sheet.Page.Locator("#leave").ClickAsync();
            await sheet.Until("document.getElementById('offer').hidden");
        }

        Tell("ms from the press to the first other way", [.. first.Order()]);
        Tell("ms to the last of them", [.. all.Order()]);
        Assert.NotEmpty(first);
        await sheet.Page.CloseAsync();
    }

    private void Tell(string what, IReadOnlyList<double> sorted)
    {
        if (sorted.Count > 0)
        {
            told.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {sorted.Count} times, median {sorted[sorted.Count / 2]:0}, 95 % {sorted[sorted.Count * 95 / 100]:0}, most {sorted[^1]:0}"));
        }
    }

    private async Task<Sheet> Open()
    {
        var file = Path.Combine(own.Folder, "fight.routine.json");
        if (Environment.GetEnvironmentVariable("GENERATOR_FIGHT") is { Length: > 0 } fight)
        {
            File.Copy(fight, file);
        }
        else
        {
            await File.WriteAllTextAsync(file, RoutineWriter.Text(StoredRoutines.All(Papers.Book).First(r => Audit.Of(new Scene(r.Brief, Papers.Book), r).IsClean)));
        }

        var sheet = await browser.Open(await own.Rehearse(file));
        await sheet.Until("document.querySelectorAll('.row').length > 0 && document.querySelector('#floor svg') !== null && document.querySelector('#time-line svg') !== null");
        return sheet;
    }
}
