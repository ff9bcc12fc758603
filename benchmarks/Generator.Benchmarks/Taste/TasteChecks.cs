using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Benchmarks.Taste;

/// <summary>
/// Seventeen checks by which a practitioner judges a draft. They are the judge of the rough rules and not their figures: each reads the moves by itself, and where rule
/// and check ask the same they may differ in the letter. Thresholds are common practice, no source. A check that has nothing to look at (nobody else to tell
/// an attacker from, no setback to return to) is passed only where its line says so.
/// </summary>
internal static class TasteChecks
{
    public static IReadOnlyList<(string Name, Func<TasteDraft, bool> Passes)> All { get; } =
    [
        ("1 exchange lengths differ: sd at least 1, one of 5 and more, at most 3 alike in a row", Lengths),
        ("2 two flurries of 3 contacts within a count each, and a rest of 2½ counts after one", Flurries),
        ("3 contacts in the last third at least 1.25 times those in the first", d => 4 * Hits(d).Count(t => 3 * t >= 2 * End(d)) >= 5 * Hits(d).Count(t => 3 * t < End(d))),
        ("4 a setback at 50 to 85 %", d => Setbacks(d).Any(s => 100 * s.Start >= 50 * End(d) && 100 * s.Start <= 85 * End(d))),
        ("5 a setback that costs two counts", d => Setbacks(d).Any(s => Next(d, s) - s.End >= 4)),
        ("6 the last finish is the heaviest move, and nobody runs off last", d => LastOut(d) is { Technique: { } last } && last.BaseId != "run-off" && d.Steps.All(s => (s.Technique?.Weight ?? 0) <= last.Weight)),
        ("7 the last attacker gets three closing moves", d => LastOut(d) is { } last && d.Steps.Take(last.Index + 1).Where(s => s.HasTarget).TakeLast(3).All(s => s.Row.Attacker == last.Row.Attacker)),
        ("8 the first is out by 45 %, and outs are not evenly spaced (one attacker: passed)", Outs),
        ("9 kinds of attack by attacker: z above 2 (one attacker: passed)", d => d.Cast == 1 || d.Shape.Manners.Score > 2),
        ("10 everybody has four moves", d => Enumerable.Range(0, d.Cast).All(a => d.Steps.Count(s => s.Concerns(a)) >= 4)),
        ("11 at most 5 % of exchanges open on somebody who stands ready", d => 100 * d.Steps.Count(IsPunchBag) <= 5 * d.Steps.Count(s => s.Opens)),
        ("12 no hold is let go for nothing", d => !d.Steps.Any(LetsGo)),
        ("13 at most eight blows on one head, twelve on the last one's", d => Enumerable.Range(0, d.Cast).All(a => Blows(d, a) <= (LastOut(d)?.Row.Attacker == a ? 12 : 8))),
        ("14 an attacker's combination: two attacks within a count, no hit of the hero between", d => Pairs(d).Any(p => p.First.Row.Attacker == p.Second.Row.Attacker && p.Second.Contact - p.First.Contact <= 2)),
        ("15 the attack of a setback comes again and is beaten", d => Setbacks(d).Any(s => s.Attack is { } a && d.Steps.Skip(s.Index + 1).Any(t => t.Attack?.BaseId == a.BaseId && t.Technique is { Family: not Family.Setback }))),
        ("16 at most 40 % of attacks are shouted", d => 10 * Attacks(d).Count(s => s.Row.Cue is Cue.Voice or Cue.Sound) <= 4 * Attacks(d).Count()),
        ("17 at most one runs off", d => d.Steps.Count(s => s.Technique?.BaseId == "run-off") <= 1),
    ];

    public static IEnumerable<Step> Attacks(TasteDraft draft) => draft.Steps.Where(s => s.Attack is not null && s.HasTarget);

    public static IEnumerable<Step> Setbacks(TasteDraft draft) => draft.Steps.Where(s => s.Technique is { Family: Family.Setback });

    /// <summary>Attacks one after the other, without a hit of the hero between them.</summary>
    public static IEnumerable<(Step First, Step Second)> Pairs(TasteDraft draft)
    {
        Step? last = null;
        foreach (var step in draft.Steps)
        {
            if (step.Attack is not null && last is not null)
            {
                yield return (last, step);
            }

            last = IsHit(step) ? null : step.Attack is not null ? step : last;
        }
    }

    /// <summary>The start of the next hit, throw, lock or finish; the end of the fight where none comes.</summary>
    public static int Next(TasteDraft draft, Step setback) => draft.Steps.Skip(setback.Index + 1)
        .Where(s => s.HasTarget && s.Technique is { Family: Family.Strike or Family.Kick or Family.Throw or Family.Lock or Family.Finish }).Select(s => s.Start).FirstOrDefault(End(draft));

    public static Step? LastOut(TasteDraft draft) => draft.Steps.LastOrDefault(IsOut);

    public static bool IsOut(Step step) => step.Reaction is { Posture: Posture.Out };

    public static bool IsHit(Step step) => step is { HasTarget: true, Technique.IsHit: true };

    public static bool LetsGo(Step step) => step.Technique is { Family: Family.Lock } t && (t.BaseId.StartsWith("release", StringComparison.Ordinal) || t.BaseId is "let-go" or "lets-go-standing" or "leave-pinned");

    public static bool IsPunchBag(Step step) => step.Opens && IsHit(step) && step.TargetPosture == Posture.Ready && (step.Attack is null || step.Attack.IsWalkIn);

    public static int Blows(TasteDraft draft, int attacker) => draft.Steps.Count(s => IsHit(s) && s.Concerns(attacker));

    public static int End(TasteDraft draft) => draft.Steps.Max(s => s.Over);

    /// <summary>Moments at which an attack lands or would, or the hero's hit does, in order.</summary>
    public static IReadOnlyList<int> Hits(TasteDraft draft) =>
        [.. Attacks(draft).Where(s => !s.Attack!.IsWalkIn).Select(s => s.Contact).Concat(draft.Steps.Where(IsHit).Select(s => s.End)).Distinct().Order()];

    public static IReadOnlyList<int> LengthsOf(TasteDraft draft)
    {
        var lengths = new List<int>();
        foreach (var step in draft.Steps)
        {
            if (lengths.Count == 0 || step.Opens)
            {
                lengths.Add(0);
            }

            lengths[^1]++;
        }

        return lengths;
    }

    private static bool Lengths(TasteDraft draft)
    {
        var lengths = LengthsOf(draft);
        var mean = lengths.Average();
        return lengths.Average(l => (l - mean) * (l - mean)) >= 1 && lengths.Any(l => l >= 5)
            && !Enumerable.Range(0, Math.Max(0, lengths.Count - 3)).Any(i => lengths.Skip(i).Take(4).Distinct().Count() == 1);
    }

    private static bool Flurries(TasteDraft draft)
    {
        var (times, flurries, rested, run) = (Hits(draft), 0, false, 1);
        for (var i = 1; i <= times.Count; i++)
        {
            var gap = i < times.Count ? times[i] - times[i - 1] : int.MaxValue;
            if (gap <= 2)
            {
                run++;
                continue;
            }

            flurries += run >= 3 ? 1 : 0;
            rested |= run >= 3 && gap >= 5 && i < times.Count;
            run = 1;
        }

        return flurries >= 2 && rested;
    }

    /// <summary>Not evenly: the times between outs vary by a quarter of their mean (two attackers: only the first out counts).</summary>
    private static bool Outs(TasteDraft draft)
    {
        var outs = draft.Steps.Where(IsOut).Select(s => s.End).ToList();
        var gaps = outs.Zip(outs.Skip(1), (a, b) => (double)(b - a)).ToList();
        return draft.Cast == 1 || (outs.Count > 0 && 100 * outs[0] <= 45 * End(draft)
            && (gaps.Count < 2 || Math.Sqrt(gaps.Average(g => (g - gaps.Average()) * (g - gaps.Average()))) >= gaps.Average() / 4));
    }
}
