using System.Globalization;
using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Benchmarks.Taste;

/// <summary>What a practitioner looks for in many drafts together: a line of figures for each.</summary>
internal static class TasteRows
{
    public static IEnumerable<(string Name, string Found)> Of(IReadOnlyList<TasteDraft> drafts)
    {
        var steps = drafts.SelectMany(d => d.Steps).ToList();
        var lengths = drafts.SelectMany(TasteChecks.LengthsOf).ToList();
        yield return ("exchange length (moves)", $"1: {Share(lengths, l => l == 1)}, 2: {Share(lengths, l => l == 2)}, 3: {Share(lengths, l => l == 3)}, 4: {Share(lengths, l => l == 4)}, 5 and more: {Share(lengths, l => l >= 5)}; up to {N(drafts.Max(d => Exchange.LongestAlike(d.Shape.Exchanges).Count))} alike in a row");
        var starts = drafts.SelectMany(d => d.Steps.Zip(d.Steps.Skip(1), (a, b) => b.Start - a.Start)).ToList();
        yield return ("rhythm: start to start", $"1 count {Share(starts, s => s <= 2)}, 1½ {Share(starts, s => s == 3)}, 2 {Share(starts, s => s == 4)}, more {Share(starts, s => s > 4)}; two flurries in {Share(drafts, d => d.Shape.Flurries.Count >= 2)} of drafts; equal neighbours among gaps of contacts {Share(drafts.Sum(d => d.Shape.Intervals.EqualPairs), drafts.Sum(d => d.Shape.Intervals.Pairs))}; nPVI, median {N(Median(drafts.Select(d => (double)(d.Shape.Intervals.Npvi ?? 0))))}");
        yield return ("pace", $"contacts a minute by thirds {string.Join(" / ", Enumerable.Range(0, 3).Select(i => N(drafts.Average(d => d.Shape.Intensity.Thirds[i] * 180.0 / (double)d.Shape.Seconds))))}; mean weight {string.Join(" / ", Enumerable.Range(0, 3).Select(i => N2(Third(drafts, i).Average(s => s.Technique!.Weight))))}");
        yield return ("attacks a minute by cast of 1..8", string.Join(", ", drafts.GroupBy(d => d.Cast).OrderBy(g => g.Key).Select(g => N(g.Average(d => d.Shape.Attacks * 60.0 / (double)d.Shape.Seconds)))));
        var attacks = drafts.SelectMany(d => TasteChecks.Attacks(d).Zip(TasteChecks.Attacks(d).Skip(1))).ToList();
        yield return ("two attackers within a count", $"{N(attacks.Count(p => p.First.Row.Attacker != p.Second.Row.Attacker && p.Second.Contact - p.First.Contact <= 2))} of {N(attacks.Count)} neighbouring attacks; the same attacker twice in a row without a hit between: {N(drafts.Sum(d => TasteChecks.Pairs(d).Count(p => p.First.Row.Attacker == p.Second.Row.Attacker)))}");
        yield return ("attacker defends", $"{Share(steps, s => s is { HasTarget: true, Technique.Family: Family.Strike or Family.Kick or Family.Throw or Family.Lock, Reaction: { Posture: Posture.Ready or Posture.Gripping } or { Id: "keeps-grip" } })} of all moves are techniques of the hero that leave the attacker ready or gripping");
        foreach (var row in Setbacks(drafts))
        {
            yield return row;
        }

        var finishes = drafts.SelectMany(d => d.Shape.Outs).ToList();
        yield return ("ending", $"the last finish is the peak in {Share(drafts, d => d.Shape.LastFight is { } l && l.Weight == l.Heaviest)}; run-offs {N(finishes.Count(o => o.RunsOff))} of {N(finishes.Count)} outs, last in {N(drafts.Count(d => d.Shape.Outs is [.., { RunsOff: true }]))} of {N(drafts.Count)} drafts");
        yield return ("style of attackers", $"mutual information attacker and kind of attack {N2(drafts.Average(d => d.Shape.Manners.Bits))} bits, shuffled {N2(drafts.Average(d => d.Shape.Manners.Shuffled))}; z, median {N2(Median(drafts.Where(d => d.Cast > 1).Select(d => d.Shape.Manners.Score)))}");
        yield return ("lingering, counts", string.Join("; ", new (string, Func<Step, bool>)[] { ("after a fall", Falls), ("after a hit", s => !Falls(s) && TasteChecks.IsHit(s)), ("after a mere block", s => s.Technique is { Family: Family.Defence } && !Falls(s)) }.Select(k => $"{k.Item1} {N2(steps.Where(s => s.HasTarget && !TasteChecks.IsOut(s) && s.Row.Linger > 0 && k.Item2(s)).Select(s => s.Row.Linger / 2.0).DefaultIfEmpty().Average())} where there is any ({Share(steps.Where(s => s.HasTarget && k.Item2(s)), s => s.Row.Linger > 0)})")));
        var wears = drafts.SelectMany(d => d.Shape.Wears.Skip(1).Select(w => (d, w))).ToList();
        yield return ("damage", $"falls each, mean {N2(wears.Average(w => w.w.Falls))}, most {N(wears.Max(w => w.w.Falls))}; most blows on one {N(wears.Max(w => w.w.Blows))}; away after the first fall {N2(Away(drafts, 1))} counts, after the third and later {N2(Away(drafts, 3))}");
        var crowds = wears.Where(w => w.d.Cast >= 5).ToList();
        yield return ("shares", $"casts of 5 to 8: {N(crowds.Count(w => w.w.Moves <= 3))} of {N(crowds.Count)} have at most 3 moves; {Share(crowds, w => w.d.Steps.First(s => s.Concerns(w.w.Performer) || s.Row.Attacker == w.w.Performer) is var f && 2 * f.Start > w.d.Shape.End)} first act after half-time");
        yield return ("punch-bags", $"{Share(drafts.Sum(d => d.Steps.Count(TasteChecks.IsPunchBag)), drafts.Sum(d => d.Shape.Exchanges.Count))} of exchanges; walking in is {Share(steps.Where(s => s.Attack is not null), s => s.Attack!.IsWalkIn)} of attacks");
        yield return ("holds", $"{N(drafts.Sum(d => d.Steps.Count(TasteChecks.LetsGo)))} of {N(drafts.Sum(TasteTrails.Holds))} are let go; for nothing {N(drafts.Sum(d => d.Shape.ForNothing.Holds.Count))}");
        yield return ("big steps while holding somebody", $"{N(drafts.Sum(d => d.Steps.Count(TasteTrails.StepsWhileHolding)))} of {N(drafts.Sum(d => d.Steps.Count(TasteTrails.OnOthersWhileHolding)))} moves on others meanwhile are steps back, leaps, hops, jumps or side steps");
        var levels = drafts.Select(d => d.Shape.Levels).ToList();
        var hits = levels.Sum(l => l.High + l.Middle + l.Low);
        yield return ("levels, sides", $"high {Share(levels.Sum(l => l.High), hits)}, middle {Share(levels.Sum(l => l.Middle), hits)}, low {Share(levels.Sum(l => l.Low), hits)}; left {N(100 * levels.Min(l => Left(l)))} to {N(100 * levels.Max(l => Left(l)))} % a draft; hits in a chain with another limb {Share(drafts.Sum(d => d.Shape.Chain.Links - d.Shape.Chain.SameLimb.Count), drafts.Sum(d => d.Shape.Chain.Links))}");
        yield return ("variety", $"distinct of all techniques {N2(drafts.Min(d => d.Shape.Returns.Techniques / (double)d.Shape.Returns.Uses))} to {N2(drafts.Max(d => d.Shape.Returns.Techniques / (double)d.Shape.Returns.Uses))}; neighbours that come again, most {N(drafts.Max(d => d.Shape.Returns.Runs))}; records used {N(steps.Where(s => s.Technique is not null).Select(s => s.Technique!.BaseId).Distinct(StringComparer.Ordinal).Count())} of {N(drafts[0].Scene.Book.Techniques.Select(t => t.BaseId).Distinct(StringComparer.Ordinal).Count())}");
        var (same, other) = TasteTrails.FamilyOrder(drafts);
        yield return ("spread between seeds", $"the same families in the same order, by the longest common sequence: seeds of one brief {N2(same)}, different briefs {N2(other)}; exchange mean {N2(lengths.Average())}");
        yield return ("voice", $"{Share(drafts.Sum(d => TasteChecks.Attacks(d).Count(s => s.Row.Cue is Cue.Voice or Cue.Sound)), drafts.Sum(d => d.Shape.Attacks))} of attacks are shouted; {N(drafts.Count(d => TasteChecks.Attacks(d).FirstOrDefault()?.Row.Cue is Cue.Voice or Cue.Sound))} of {N(drafts.Count)} fights begin so");
        yield return ("space", $"areas of nine used, median {N(Median(drafts.Select(d => (double)d.Shape.Areas.Used)))}; ways of each attacker {N2(wears.Average(w => w.w.Way / 100.0))} m; the hero stays at the mark in all");
        yield return ("turns", $"{Share(steps, s => s.TurnMade != 0)} of moves begin with a turn; wound up against the last {Share(drafts.Sum(d => d.Shape.Chain.Against.Count), drafts.Sum(d => d.Shape.Chain.Neighbours))} of neighbours in an exchange");
        yield return ("bodies on the floor", $"{N(drafts.Sum(TasteTrails.PastTheLying))} ways within 0.5 m of somebody lying, in {N(drafts.Count(d => TasteTrails.PastTheLying(d) > 0))} of {N(drafts.Count)} drafts");
        yield return ("teleports", $"{N(drafts.Sum(TasteTrails.TooFast))} legs of a way faster than 5 m/s, in {N(drafts.Count(d => TasteTrails.TooFast(d) > 0))} drafts");
        yield return ("lens", $"{N(drafts.Sum(TasteTrails.OpensInTheLens))} attackers open within 1 m of a camera");
        yield return ("floor plan", "a fault of a paper, not of a draft: nothing is measured here");
        yield return ("points", $"0 in {N(drafts.Count(d => d.Points == 0))} of {N(drafts.Count)}, most {N(drafts.Max(d => d.Points))}");
    }

    private static IEnumerable<(string Name, string Found)> Setbacks(IReadOnlyList<TasteDraft> drafts)
    {
        var all = drafts.SelectMany(d => d.Shape.Setbacks.Select(s => (Draft: d, Setback: s, At: d.Shape.PercentAt(s.Time)))).ToList();
        var untouched = drafts.Where(d => d.Shape.Setbacks.Count > 0).Select(d => 100 - d.Shape.PercentAt(d.Shape.Setbacks[^1].Time));
        yield return ("setbacks", $"{N(all.Count)}: {Share(all, s => s.At < 25)} in the first quarter, {Share(all, s => s.At < 50)} in the first half, {Share(all, s => s.At >= 75)} in the last quarter; the hero scores again after a median of {N2(Median(all.Select(s => s.Setback.Cost / 2.0)))} counts ({Share(all, s => s.Setback.Cost <= 2)} within 1); untouched after the last for a median of {N(Median(untouched.Select(u => (double)u)))} % of the fight; attack beaten later {N(all.Count(s => s.Setback.Beaten is not null))} of {N(all.Count)}");
    }

    private static IEnumerable<Step> Third(IReadOnlyList<TasteDraft> drafts, int third) =>
        drafts.SelectMany(d => d.Steps.Where(s => s.Technique is not null && Math.Clamp(3 * s.Start / d.Shape.End, 0, 2) == third));

    private static bool Falls(Step step) => step.Reaction is { Fall: not FallClass.None };

    /// <summary>Counts from the end of the move of such a fall to the next move that concerns them.</summary>
    private static double Away(IReadOnlyList<TasteDraft> drafts, int fall) => drafts.SelectMany(d => Enumerable.Range(0, d.Cast).SelectMany(a => d.Steps
        .Where(s => s.Concerns(a) && Falls(s) && s.After.Attackers[a] is { OutAt: < 0 } after && (fall == 1 ? after.Falls == 1 : after.Falls >= fall))
        .Select(s => d.Steps.Skip(s.Index + 1).FirstOrDefault(n => n.Attack is not null && n.Row.Attacker == a) is { } next ? (next.Start - s.End) / 2.0 : -1).Where(t => t >= 0))).DefaultIfEmpty().Average();

    private static double Left(Levels levels) => levels.Left + levels.Right == 0 ? 0.5 : levels.Left / (double)(levels.Left + levels.Right);

    private static double Median(IEnumerable<double> values) => values.Order().ToList() is { Count: > 0 } sorted ? sorted[sorted.Count / 2] : 0;

    private static string Share<T>(IEnumerable<T> all, Func<T, bool> which) => all.ToList() is var list ? Share(list.Count(which), list.Count) : string.Empty;

    private static string Share(int part, int whole) => whole == 0 ? "none" : string.Create(CultureInfo.InvariantCulture, $"{100.0 * part / whole:0.#} %");

    private static string N(double value) => value.ToString("0", CultureInfo.InvariantCulture);

    private static string N2(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
