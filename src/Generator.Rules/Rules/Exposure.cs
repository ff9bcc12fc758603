using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// Falls and head-height hits of each performer in a run stay under the caps of the day shared out over the planned runs, and nobody works
/// flat out for more than ten seconds on end (a note only).
/// </summary>
public sealed class Exposure : Rule
{
    /// <summary>Longest unbroken high effort, in seconds. Common practice, no source.</summary>
    public const decimal LongestEffort = 10m;

    /// <summary>Weight from which a move counts as high effort. Common practice, no source.</summary>
    public const int HeavyFrom = 3;

    public override string Id => "exposure";

    public override string Title => "Falls and head-height hits stay under the brief's caps; high effort lasts at most 10 s on end.";

    public override Severity Worst => Severity.Unsafe;

    public override Whose Looks => Whose.Both;

    public override object? Begin(Scene scene, FightState open, Tally tally) => new ExposureMemory(0, 0, new int[scene.Cast], null, false);

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (ExposureMemory)memory!;
        if (step.Technique is not { } technique)
        {
            return was;
        }

        if (step.IsByAlly)
        {
            // What attackers take is counted together, what hero and ally do each for themselves.
            var own = Seen(scene, step, technique, (was.Ally ?? new ExposureMemory(0, 0, was.HeadHits, null, false)) with { HeadHits = was.HeadHits }, tally);
            return was with { HeadHits = own.HeadHits, Ally = own };
        }

        return Seen(scene, step, technique, was, tally);
    }

    private ExposureMemory Seen(Scene scene, Step step, Technique technique, ExposureMemory was, Tally tally)
    {
        if (step.HasTarget)
        {
            JudgeFalls(scene, step, step.Row.Attacker, tally);
            if (step.Second >= 0)
            {
                JudgeFalls(scene, step, step.Second, tally);
            }
        }

        return Effort(scene, step, technique, HeadHits(scene, step, technique, HeroFalls(scene, step, technique, was, tally), tally), tally);
    }

    /// <summary>Most falls of a performer in one run.</summary>
    public static int FallCap(Brief brief, Performer performer) => performer.FallsPerRun ?? brief.Safety.FallsPerDay / brief.Safety.Runs;

    /// <summary>Most head-height hits of a performer in one run.</summary>
    public static int HeadHitCap(Brief brief) => brief.Safety.HeadHitsPerDay / brief.Safety.Runs;

    /// <summary>The attacker takes a hit at head height: counted from the hit itself and not from the reaction that sells it, unless that one answers the blow, and for both where one hit takes two.</summary>
    public static bool HitsHead(Step step, int attacker) =>
        step is { HasTarget: true, Technique.IsHeadHit: true, IsAnswered: false } && (step.Row.Attacker == attacker || (step.Technique.TakesTwo && step.Second == attacker));

    /// <summary>The hero takes this attack to the head.</summary>
    public static bool HitsHeroHead(Technique technique, Attack? attack) => technique.Family == Family.Setback && attack is { Line.IsAtHead: true };

    private void JudgeFalls(Scene scene, Step step, int attacker, Tally tally)
    {
        var falls = step.After.Attackers[attacker].Falls;
        var cap = FallCap(scene.Brief, scene.Brief.Attackers[attacker]);
        if (falls > step.Before.Attackers[attacker].Falls && falls > cap && tally.Count(Severity.Unsafe))
        {
            tally.Tell(Over(scene, step, attacker, falls, cap, "falls"));
        }
    }

    private ExposureMemory HeroFalls(Scene scene, Step step, Technique technique, ExposureMemory was, Tally tally)
    {
        if (technique.HeroFall == FallClass.None)
        {
            return was;
        }

        var falls = was.HeroFalls + 1;
        var cap = FallCap(scene.Brief, scene.Brief.Hero);
        if (falls > cap && tally.Count(Severity.Unsafe))
        {
            tally.Tell(Over(scene, step, -1, falls, cap, "falls"));
        }

        return was with { HeroFalls = falls };
    }

    private ExposureMemory HeadHits(Scene scene, Step step, Technique technique, ExposureMemory was, Tally tally)
    {
        var cap = HeadHitCap(scene.Brief);
        if (HitsHeroHead(technique, step.Attack))
        {
            was = was with { HeroHeadHits = was.HeroHeadHits + 1 };
            if (was.HeroHeadHits > cap && tally.Count(Severity.Unsafe))
            {
                tally.Tell(Over(scene, step, -1, was.HeroHeadHits, cap, "head-height hits"));
            }
        }

        for (var a = 0; a < scene.Cast && technique.IsHeadHit; a++)
        {
            if (!HitsHead(step, a))
            {
                continue;
            }

            var hits = was.HeadHits.ToArray();
            var count = ++hits[a];
            was = was with { HeadHits = hits };
            if (count > cap && tally.Count(Severity.Unsafe))
            {
                tally.Tell(Over(scene, step, a, count, cap, "head-height hits"));
            }
        }

        return was;
    }

    private ExposureMemory Effort(Scene scene, Step step, Technique technique, ExposureMemory was, Tally tally)
    {
        if (technique.Family == Family.Pause || technique.Weight < HeavyFrom)
        {
            return was.EffortFrom is null ? was : was with { EffortFrom = null, EffortTold = false };
        }

        var goesOn = was.EffortFrom is not null && step.Gap < HalfCounts.PerCount;
        var from = goesOn ? was.EffortFrom!.Value : step.Start;
        var told = goesOn && was.EffortTold;
        var seconds = scene.Pulse.SecondsBetween(from, step.End);
        if (seconds > LongestEffort && !told)
        {
            told = true;
            if (tally.Count(Severity.Note))
            {
                tally.Tell(TooLong(scene, step, from, seconds));
            }
        }

        return was.EffortFrom == from && was.EffortTold == told ? was : was with { EffortFrom = from, EffortTold = told };
    }

    private Finding TooLong(Scene scene, Step step, int from, decimal seconds) =>
        At(scene, step, Severity.Note, $"{scene.Brief.Hero.Name} works flat out for {Words.Seconds(seconds)} from count {new HalfCounts(from).ToCountText()} on.") with
        {
            Who = scene.Brief.Hero.Name,
            Measured = seconds,
            Allowed = LongestEffort,
            Unit = "s",
            Advice = "Put a lighter move, a pause or a gap of a count into the run.",
        };

    private Finding Over(Scene scene, Step step, int who, int measured, int allowed, string what) =>
        At(scene, step, Severity.Unsafe, $"{Words.Name(scene, who)} is asked for {measured} {what} in one run; the cap is {allowed}.") with
        {
            Who = Words.Name(scene, who),
            Measured = measured,
            Allowed = allowed,
            Unit = what,
            Advice = "Choose other reactions, share them among the cast, or plan fewer runs.",
        };
}
