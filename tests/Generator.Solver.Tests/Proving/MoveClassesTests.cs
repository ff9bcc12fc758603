using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Proving;
using Generator.Solver.Repertoires;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Proving;

public class MoveClassesTests
{
    /// <summary>
    /// Moves out of the blue by performers with whatever limits, skill and wardrobe: each that the rules allow is in a class that says its attacker, attack, posture
    /// before and after, and no narrower times and distance than its own.
    /// </summary>
    [Fact]
    public void Whatever_the_rules_allow_is_a_move_of_proofs()
    {
        var (allowed, kinds, limited) = (0, new HashSet<(int, int, Posture)>(), 0);
        for (var seed = 1; seed <= 24; seed++)
        {
            var chance = new Chance(seed);
            var brief = Any(seed, chance);
            var open = new Scene(brief, Drafts.Book);
            var choices = Choices(open, chance);
            var scene = new Scene(brief with { Moments = [.. choices.Select(c => new Moment([Wanted(open, c.Choice)], null, null))] }, Drafts.Book);
            var classes = new MoveClasses(scene);
            foreach (var ((choice, attacker, posture), bit) in choices.Select((c, i) => (c, i)))
            {
                for (var tries = 0; tries < 40; tries++)
                {
                    if (RandomStep.Of(scene, choice, attacker, posture, chance) is not { } step)
                    {
                        continue;
                    }

                    Assert.True(classes.All.Any(c => (c.Traits.Wanted & (1UL << bit)) != 0 && Holds(c, scene, step)), $"seed {seed}: {Wanted(open, choice)} on {posture}, leaves {step.After.Attackers[attacker].Posture}");
                    allowed++;
                    kinds.Add((choice.Attack, choice.Technique, posture));
                    limited += brief.Hero.Limits.Count + brief.Attackers[attacker].Limits.Count > 0 ? 1 : 0;
                }
            }
        }

        Assert.True(allowed > 4000 && kinds.Count > 500 && limited > 1000, $"{allowed} moves, {kinds.Count} kinds, {limited} by people with limits");
    }

    /// <summary>A tackle holds on without being a grab, and what opens its grip opens others too.</summary>
    [Theory]
    [InlineData("tackled-down")]
    [InlineData("hugged-from-behind")]
    [InlineData("knee-shove-off")]
    public void Being_held_and_getting_out_of_it_are_moves_of_proofs(string technique)
    {
        var brief = Drafts.Plain(new Moment([new MomentMove(technique, null, null, null)], null, null)) with { Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt } };
        Assert.NotEqual(Fit.Impossible, new Prover().RoundMoments(new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book), CancellationToken.None));
    }

    private static Brief Any(int seed, Chance chance)
    {
        var brief = RandomBrief.Of(seed, Drafts.Book);
        return brief with
        {
            Floor = new FloorPlan { Surface = chance.Percent(70) ? Surface.Matted : brief.Floor.Surface },
            Cameras = [],
            Moments = [],
            Setbacks = null,
            Pauses = null,
            Ending = null,
            Safety = Safety.Default,
            Hero = brief.Hero with { Skill = chance.Percent(60) ? Skill.Stunt : brief.Hero.Skill, Limits = chance.Some(Limit.All, 3), Wardrobe = [], FallsPerRun = null },
            Attackers = [.. brief.Attackers.Take(3).Select(a => a with { Skill = chance.Percent(60) ? Skill.Stunt : a.Skill, Limits = chance.Some(Limit.All, 3), Wardrobe = [], FallsPerRun = null, Entrance = null, Bearing = null, Distance = null })],
        };
    }

    /// <summary>Some choices of each kind, 60 in all at most, with an attacker and the posture in which they find them.</summary>
    private static List<(Choice Choice, int Attacker, Posture Posture)> Choices(Scene scene, Chance chance)
    {
        var chosen = new List<(Choice, int, Posture)>();
        var menus = new Repertoire(scene).Menus;
        for (var i = 0; i < 60; i++)
        {
            var attacker = chance.Whole(0, scene.Cast - 1);
            var (menu, posture) = (menus[attacker], chance.One([Posture.Ready, Posture.Folded, Posture.HeadBack, Posture.Turned, Posture.OffBalance, Posture.Kneeling, Posture.OnBack, Posture.FaceDown, Posture.HeldArm, Posture.HeldBody, Posture.Pinned]));
            var (from, finds) = chance.Whole(0, 3) switch
            {
                0 => (menu.Answers, MoveClasses.IsFree(posture) ? posture : Posture.Ready),
                1 => (menu.Setbacks, Posture.Ready),
                2 => (menu.FollowUps[(int)posture], posture),
                _ => (menu.Escapes[chance.Whole(0, AttackLine.Count - 1)], Posture.Gripping),
            };
            if (from.Length > 0)
            {
                var technique = chance.One([.. from.Select(c => c.Technique).Distinct()]);
                chosen.Add((chance.One([.. from.Where(c => c.Technique == technique)]), attacker, finds));
            }
        }

        return chosen;
    }

    private static MomentMove Wanted(Scene scene, Choice choice) =>
        new(scene.Book.Techniques[choice.Technique].Id, null, choice.Attack < 0 ? MomentMove.NoAttack : scene.Book.Attacks[choice.Attack].Id, null);

    private static bool Holds(MoveClass move, Scene scene, Step step)
    {
        var (attacker, length) = (step.Row.Attacker, step.End - step.Start);
        var (before, after) = (step.Before.Attackers[attacker], step.After.Attackers[attacker]);
        var comes = move.Traits.By switch
        {
            ComesBy.Attack => step.Attack is not null,
            ComesBy.Opening => step.Attack is null && step.Start <= (MoveClasses.IsFree(before.Posture) ? before.OpenUntil : int.MaxValue),
            _ => step.Attack is null && step.Start >= before.ReadyAt,
        };
        return comes && move.Traits.Attacker == attacker && move.From.Contains(before.Posture) && (move.Traits.To ?? before.Posture) == after.Posture
            && move.Shortest <= length && move.Longest >= length && step.Distance <= (step.Opens ? move.Farthest : move.Farthest + scene.Settle.FollowMost.Value)
            && (step.Second < 0) == (move.Traits.Second == SecondRole.None) && (step.Second < 0 || (move.Traits.AbleSeconds & (1 << step.Second)) != 0)
            && (step.Second < 0 || (move.Traits.SecondLeaves == step.After.Attackers[step.Second].Posture && after.SetsOffAt - step.End >= 0))
            && (step.Reaction is null || after.Posture == Posture.Out || !MoveClasses.IsFree(after.Posture)
                || (after.ReadyAt - step.End >= move.Recover && after.OpenUntil - step.End <= move.Open && Replay.ThreatTime(scene, step.After, attacker) - step.End >= move.Back));
    }
}
