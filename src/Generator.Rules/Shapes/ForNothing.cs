using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>What happens without a reason that an audience could see: moves by their number, from 1.</summary>
/// <param name="Unseen">Attacks that come from outside the hero's sight.</param>
/// <param name="PunchBags">Exchanges that open with a hit on somebody who stands ready and does nothing, or only walks in.</param>
/// <param name="Holds">Holds let go again without a blow, a throw or a finish from them, and without fighting anybody else meanwhile: the move that lets go.</param>
/// <param name="Beyond">Of the unseen attacks those by which more than two in five of all so far come from there.</param>
public sealed record ForNothing(IReadOnlyList<int> Unseen, IReadOnlyList<int> PunchBags, IReadOnlyList<int> Holds, IReadOnlyList<int> Beyond)
{
    /// <summary>Of a hundred attacks those that may come from out of sight. Common practice, no source.</summary>
    public const int MostUnseen = 40;

    public static ForNothing Of(Scene scene, IReadOnlyList<Step> steps) => new(
        [.. steps.Where(s => IsUnseen(scene, s)).Select(s => s.Index + 1)],
        [.. steps.Where(IsPunchBag).Select(s => s.Index + 1)],
        [.. Enumerable.Range(0, scene.Cast).SelectMany(a => LetGo(a, steps)).Order()],
        [.. Over(scene, steps)]);

    internal static bool IsUnseen(Scene scene, Step step) => step.Attack is not null && step.HasTarget && Math.Abs(step.SeenFrom) > scene.Settle.SightHalfAngle;

    internal static bool TooManyUnseen(int unseen, int attacks) => 100 * unseen > MostUnseen * attacks;

    /// <summary>Somebody who is held is struck, thrown or finished, falls, or is held while another is fought.</summary>
    internal static bool Uses(Step step, int held) => step.HasTarget && (step.Row.Attacker != held || LeadsOn(step));

    private static IEnumerable<int> Over(Scene scene, IReadOnlyList<Step> steps)
    {
        var (attacks, unseen) = (0, 0);
        foreach (var step in steps.Where(s => s.Attack is not null && s.HasTarget))
        {
            attacks++;
            if (IsUnseen(scene, step) && TooManyUnseen(++unseen, attacks))
            {
                yield return step.Index + 1;
            }
        }
    }

    internal static bool IsPunchBag(Step step) =>
        step is { Opens: true, Mode: MoveMode.FollowUp or MoveMode.OpensOnWalkIn, TargetPosture: Posture.Ready, Hits: true };

    private static IEnumerable<int> LetGo(int attacker, IReadOnlyList<Step> steps)
    {
        var used = false;
        foreach (var step in steps)
        {
            var (was, now) = (step.Before.Attackers[attacker].Posture.IsControlled(), step.After.Attackers[attacker].Posture.IsControlled());
            if (!was)
            {
                used = false;
                continue;
            }

            used |= Uses(step, attacker);
            if (!now && !used)
            {
                yield return step.Index + 1;
            }
        }
    }

    /// <summary>A blow, a throw, a finish, a fall, or one attacker sent into another.</summary>
    private static bool LeadsOn(Step step) =>
        step.Technique is { } technique && (technique.IsHit || technique.Family is Family.Throw or Family.Finish)
        || step.Reaction is { Fall: not FallClass.None } or { HitsSecond: true };
}
