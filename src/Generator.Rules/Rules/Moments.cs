using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>Every hero moment stands where the brief fixed it: its moves one after another, the first of them within its counts.</summary>
public sealed class Moments : Rule
{
    public override string Id => "moments";

    public override string Title => "Every hero moment stands where the brief fixed it.";

    public override Severity Worst => Severity.Broken;

    public override Whose Looks => Whose.Hero;

    public override object? Begin(Scene scene, FightState open, Tally tally) =>
        new MomentsMemory([.. scene.Brief.Moments.Select(_ => MomentProgress.Nothing)]);

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (MomentsMemory)memory!;
        MomentProgress[]? next = null;
        for (var m = 0; m < was.Progress.Count; m++)
        {
            var now = Advance(scene, scene.Brief.Moments[m], was.Progress[m], step);
            if (!ReferenceEquals(now, was.Progress[m]))
            {
                next ??= [.. was.Progress];
                next[m] = now;
            }
        }

        return next is null ? was : new MomentsMemory(next);
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var progress = ((MomentsMemory)memory!).Progress;
        for (var m = 0; m < progress.Count; m++)
        {
            if (!progress[m].Done && tally.Count(Severity.Broken))
            {
                tally.Tell(Told(scene, end, scene.Brief.Moments[m]));
            }
        }
    }

    /// <summary>A move of a routine is the one that the moment asks for.</summary>
    public static bool Matches(Scene scene, MomentMove wanted, Step step) =>
        step.Technique is { } technique && technique.GoesBy(wanted.Technique)
        && (wanted.Attacker is null || (step.HasTarget && Equal(wanted.Attacker, scene.Brief.Attackers[step.Row.Attacker].Name)))
        && (wanted.Attack is null || (step.Attack is { } attack ? attack.GoesBy(wanted.Attack) : wanted.WantsNoAttack))
        && (wanted.Reaction is null || (step.Reaction is { } reaction && Equal(wanted.Reaction, reaction.Id)));

    /// <summary>Positions in a routine, from 0, at which a moment stands as the brief fixed it.</summary>
    public static IEnumerable<int> Standing(Scene scene, Moment moment, IReadOnlyList<Step> steps) =>
        Enumerable.Range(0, Math.Max(0, steps.Count - moment.Moves.Count + 1))
            .Where(at => moment.MayStart(new HalfCounts(steps[at].Start)) && Enumerable.Range(0, moment.Moves.Count).All(k => Matches(scene, moment.Moves[k], steps[at + k])));

    private static MomentProgress Advance(Scene scene, Moment moment, MomentProgress was, Step step)
    {
        if (was.Done)
        {
            return was;
        }

        List<int>? begun = null;
        if (moment.MayStart(new HalfCounts(step.Start)) && Matches(scene, moment.Moves[0], step))
        {
            begun = [1];
        }

        foreach (var matched in was.Begun)
        {
            if (Matches(scene, moment.Moves[matched], step))
            {
                (begun ??= []).Add(matched + 1);
            }
        }

        if (begun is null)
        {
            return was.Begun.Count == 0 ? was : MomentProgress.Nothing;
        }

        return begun[^1] == moment.Moves.Count ? new MomentProgress(true, []) : new MomentProgress(false, begun);
    }

    private static bool Equal(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);

    private Finding Told(Scene scene, FightState end, Moment moment)
    {
        var moves = Words.Join([.. moment.Moves.Select(Name)], "then");
        var when = (moment.Earliest, moment.Latest) switch
        {
            ({ } from, { } to) => $" between counts {from.ToCountText()} and {to.ToCountText()}",
            ({ } from, null) => $" from count {from.ToCountText()} on",
            (null, { } to) => $" by count {to.ToCountText()}",
            _ => string.Empty,
        };
        return AtEnd(end, Severity.Broken, moment.Moves[0].Attacker ?? scene.Brief.Hero.Name, $"The hero moment {moves} does not happen{when}.") with
        {
            Advice = "Write it in as the brief fixed it, or change the brief.",
        };
    }

    private static string Name(MomentMove move) => move.Attacker is null ? move.Technique : $"{move.Technique} on {move.Attacker}";
}
