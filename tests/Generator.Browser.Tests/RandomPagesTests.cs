using System.Globalization;
using Generator.Domain;
using Generator.Testing;
using Microsoft.Playwright;

namespace Generator.Browser.Tests;

/// <summary>Whatever the fight and whatever the names, on no page is anything cut off, wider than the screen or written over something else.</summary>
public sealed class RandomPagesTests(Browser browser, Papers papers) : IClassFixture<Browser>, IClassFixture<Papers>
{
    /// <summary>Routines of which all pages are looked at; <c>GENERATOR_PAGES=30</c> asks for so many.</summary>
    private static readonly int Routines = int.TryParse(Environment.GetEnvironmentVariable("GENERATOR_PAGES"), NumberStyles.None, CultureInfo.InvariantCulture, out var more) ? more : 3;

    private static readonly string[] Names = ["Wanda-Marie von der Hohenwarte", "小林さくら", "محمد عبد الرحمن", "Анастасия", "WWWWWWWWWWWWWWWW", "Jo", "Ž", "Llanfairpwllgwyngyllgogerychwyrndrobwll"];

    /// <summary>A routine by chance whose attackers have long, short and foreign names.</summary>
    internal static Routine Named(int seed)
    {
        var routine = RandomRoutine.Of(seed, Papers.Book);
        return routine with { Brief = routine.Brief with { Attackers = [.. routine.Brief.Attackers.Select((a, i) => a with { Name = Names[(seed + i) % Names.Length] })] } };
    }

    /// <summary>Words of one picture that lie on one another by more than a few units, and words that their element cuts off.</summary>
    private const string Faults = """
        (() => {
          const faults = [];
          let seen = 0;
          for (const svg of document.querySelectorAll('svg.plan, svg.tracks, .poster svg')) {
            if (!svg.getClientRects().length) continue;
            const scale = (svg.viewBox.baseVal.width || 1) / Math.max(1, svg.getBoundingClientRect().width);
            const texts = [...svg.querySelectorAll('text')].filter(t => t.getClientRects().length && t.textContent.trim() && !t.closest('.marker, .actor, .lies-there')).map(t => [t.textContent, t.getBoundingClientRect()]);
            seen += texts.length;
            const [x, y] = [2 / scale, 4 / scale];
            texts.forEach(([a, p], i) => texts.slice(i + 1).forEach(([b, q]) => {
              if (p.left + x < q.right && q.left + x < p.right && p.top + y < q.bottom && q.top + y < p.bottom) faults.push(svg.getAttribute('class') + ': ' + a + ' / ' + b + ' by ' + [Math.min(p.right - q.left, q.right - p.left), Math.min(p.bottom - q.top, q.bottom - p.top)].map(n => (n * scale).toFixed(1)));
            }));
          }
          for (const e of document.querySelectorAll('body *')) {
            if (e.closest('svg, .unseen, .skip, script, style, select, [hidden]') || !e.firstChild || !e.getClientRects().length) continue;
            const style = getComputedStyle(e);
            seen++;
            if (/hidden|clip/.test(style.overflowX) && e.scrollWidth > e.clientWidth + 1) faults.push('cut: ' + e.textContent.slice(0, 60));
            if (style.textDecorationLine.includes('line-through')) faults.push('struck: ' + e.textContent.slice(0, 60));
          }
          return [seen + '', ...faults];
        })()
        """;

    /// <summary>Words of a plan that the floor's edge, a body or a sign strikes through, or that have no halo where a path or a line of sight goes under them.</summary>
    private const string Struck = """
        (() => {
          const faults = [];
          let seen = 0;
          for (const svg of document.querySelectorAll('svg.plan')) {
            if (!svg.getClientRects().length) continue;
            const drawn = (what, fill, step) => [...svg.querySelectorAll(what)].filter(e => e.getClientRects().length && !e.closest('.actor, .lies-there')).map(e => {
              const box = e.getBBox(), far = e.getTotalLength(), on = p => p.matrixTransform(e.getCTM());
              const line = [...Array(Math.ceil(far / step) + 1).keys()].map(i => on(e.getPointAtLength(Math.min(far, i * step))));
              const inside = fill ? [...Array(81).keys()].map(i => new DOMPoint(box.x + box.width * (i % 9) / 8, box.y + box.height * Math.floor(i / 9) / 8)).filter(p => e.isPointInFill(p)).map(on) : [];
              return [e.getAttribute('class') || 'sign', [...line, ...inside]];
            });
            const hard = [...drawn('.edge', false, 2), ...drawn('.marker .body, .marker > path:first-of-type', true, 2), ...drawn('.camera', true, 2)];
            for (const t of svg.querySelectorAll('.label:not(.hour) text')) {
              if (!t.getClientRects().length) continue;
              seen++;
              const box = t.getBBox(), a = new DOMPoint(box.x + 1, box.y + 4).matrixTransform(t.getCTM()), b = new DOMPoint(box.x + box.width - 1, box.y + box.height - 4).matrixTransform(t.getCTM());
              for (const [name, points] of hard) {
                if (points.some(p => p.x > a.x && p.x < b.x && p.y > a.y && p.y < b.y)) faults.push(svg.id + ' ' + t.textContent + ' over ' + name);
              }
              const style = getComputedStyle(t);
              if (style.paintOrder.split(' ')[0] !== 'stroke' || parseFloat(style.strokeWidth) < 3) faults.push(t.textContent + ' has no halo');
            }
          }
          return [seen + '', ...faults];
        })()
        """;

    /// <summary>What reaches farthest to the right.</summary>
    internal const string Widest = """
        (() => {
          const right = e => e.getBoundingClientRect().right;
          const e = [...document.querySelectorAll('body *')].filter(e => e.getClientRects().length && !e.closest('.unseen, .skip')).sort((a, b) => right(b) - right(a))[0];
          return e.outerHTML.slice(0, 200) + ' at ' + right(e);
        })()
        """;

    [Fact]
    public async Task Nothing_is_cut_off_struck_through_or_written_over()
    {
        var (seen, labels, pages) = (0, 0, 0);
        var faults = new List<string>();
        for (var seed = 1; seed <= Routines; seed++)
        {
            var folder = Path.GetDirectoryName(papers.Of($"random-{seed}", Named(seed), "routine.html"))!;
            foreach (var path in Directory.GetFiles(folder, "*.html").Order(StringComparer.Ordinal))
            {
                var width = (pages++ + seed) % 2 == 0 ? 1280 : 390;
                await using var sheet = await browser.Open(path, new() { ViewportSize = new() { Width = width, Height = 900 } });
                var struck = await sheet.Eval<string[]>(Struck);
                labels += int.Parse(struck[0], CultureInfo.InvariantCulture);
                faults.AddRange(struck.Skip(1).Take(5).Select(f => $"{seed} {Path.GetFileName(path)} at {width}: {f}"));
                var told = await sheet.Eval<string[]>(Faults);
                seen += int.Parse(told[0], CultureInfo.InvariantCulture);
                faults.AddRange(told.Skip(1).Take(5).Select(f => $"{seed} {Path.GetFileName(path)} at {width}: {f}"));
                if (await sheet.Eval<int>("document.documentElement.scrollWidth") > width)
                {
                    faults.Add($"{seed} {Path.GetFileName(path)} is wider than {width}: {await sheet.Eval<string>(Widest)}");
                }
            }
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.True(seen > 300 * Routines && labels > 20 * Routines && pages > 4 * Routines, $"{seen} words and {labels} labels on {pages} pages");
    }
}
