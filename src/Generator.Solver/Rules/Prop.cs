using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;
using Generator.Solver.Filling;
using Google.OrTools.Sat;
using Figures = Generator.Rules.Rules.Prop;

namespace Generator.Solver.Rules;

/// <summary>
/// Props are where a row needs them. Posted is only that somebody who has nothing that serves must have taken it before; all else is refuted where an answer breaks it, by what decides where its props are: every choice
/// up to the row, and all places besides where something lies on the floor. Less posted only allows more.
/// </summary>
public sealed class Prop : RuleModule
{
    public override string Id => "prop";

    public override void Post(MoveModel model)
    {
        if (!model.Scene.Props.Any)
        {
            return;
        }

        var start = model.Options.From is { } from ? from.Props : Replay.Open(model.Scene, []).Props;
        var needs = model.Vocabulary.Uses.Select(u => u.Technique?.Prop).OfType<PropNeed>().Where(n => n.Holder == PropHolder.Hero).Distinct().Where(n => !HasAny(model, start, -1, n)).ToList();
        var takes = model.Slots.Select(s => model.UseIs(s, u => u.Technique?.Prop is { Then: PropFate.Takes }, $"takesprop[{s.Index}]")).ToList();
        var snatches = model.Slots.Select(s => model.AttackIs(s, k => k.Prop is { Then: PropFate.Takes }, $"snatchesprop[{s.Index}]")).ToList();
        var book = model.Scene.Book;
        var thrown = model.Vocabulary.Attacks.Select(k => book.Attacks[k].Prop).OfType<PropNeed>().Where(n => n.Holder == PropHolder.Attacker).Distinct().ToList();
        foreach (var slot in model.Slots)
        {
            foreach (var need in needs)
            {
                Before(model, takes, slot, [model.UseIs(slot, u => u.Technique?.Prop == need, $"withprop[{slot.Index}]")]);
            }

            foreach (var need in thrown)
            {
                var comes = model.AttackIs(slot, k => k.Prop == need, $"comeswith[{slot.Index}]");
                for (var a = 0; a < model.Cast; a++)
                {
                    if (!HasAny(model, start, a, need))
                    {
                        Before(model, snatches, slot, [comes, slot.Targets[a]]);
                    }
                }
            }
        }
    }

    /// <summary>The first row of an answer at which a prop is not where it must be: something up to there must be otherwise.</summary>
    public override IEnumerable<IReadOnlyList<ILiteral>> Refute(ModelAnswer answer)
    {
        var model = answer.Model;
        if (!model.Scene.Props.Any)
        {
            yield break;
        }

        var state = model.Options.From ?? Replay.Open(model.Scene, RowReader.Placements(model, answer.Value));
        if (state.Moves == 0 && OpensOn(state) is { } first)
        {
            var opening = new FloorClause(answer);
            opening.Same(model.Start.Attackers[first].Bearing);
            opening.Same(model.Start.Attackers[first].Distance);
            yield return opening.Literals;
            yield break;
        }

        var used = model.Slots.Where(s => answer.Value(s.Used) == 1).ToList();
        var rows = RowReader.Rows(model, answer.Value);
        for (var i = 0; i < rows.Count; i++)
        {
            var step = Replay.Step(model.Scene, state, rows[i]);
            var (hands, floor) = (Mishandled(step), OnTheFloor(step) || InShards(step));
            if (hands || floor)
            {
                // Where something lies depends on places; who holds what does not, unless it was taken up from the floor.
                var places = !hands || used.Take(i + 1).Any(s => TakesUp(model, answer, s));
                yield return Otherwise(answer, used.Take(i + 1), places);
                yield break;
            }

            state = step.After;
        }
    }

    /// <summary>Somebody who opens on what lies on the floor; null for nobody.</summary>
    private static int? OpensOn(FightState open)
    {
        for (var a = 0; a < open.Attackers.Count; a++)
        {
            if (Enumerable.Range(0, open.Props.Count).Any(p => open.Props[p].Lies && open.Attackers[a].Place.To(open.Props[p].Place) < Figures.Underfoot))
            {
                return a;
            }
        }

        return null;
    }

    private static bool HasAny(MoveModel model, FixedList<PropState> props, int who, PropNeed need) => Enumerable.Range(0, props.Count).Any(p => props[p].Holder == who && model.Scene.Props.Serves(p, need));

    private static void Before(MoveModel model, List<BoolVar> takes, SlotVars slot, ILiteral[] when)
    {
        if (!Array.Exists(when, model.Cp.IsFalse))
        {
            model.Cp.Model.AddBoolOr([.. takes.Take(slot.Index), .. when.Select(w => w.Not())]);
        }
    }

    private static bool TakesUp(MoveModel model, ModelAnswer answer, SlotVars slot)
    {
        var book = model.Scene.Book;
        return Array.FindIndex(slot.Uses, u => answer.Value(u) == 1) is var use && model.Vocabulary.Uses[use].Technique?.Prop is { Holder: PropHolder.Floor }
            || Array.FindIndex(slot.Attacks, k => answer.Value(k) == 1) is var attack and >= 0 && book.Attacks[model.Vocabulary.Attacks[attack]].Prop is { Holder: PropHolder.Floor };
    }

    /// <summary>Something is needed that is not there, a full hand is asked to take or to work.</summary>
    private static bool Mishandled(Step step)
    {
        var (target, props) = (step.Target, step.Before.Props);
        var who = step.Row.Attacker;
        var own = step.Technique is null ? null : Held(step, step.Technique.Prop, -1);
        if (step.Technique is { } technique && (own == -1 || Works(props, -1, technique.Demands, own) || Crowds(props, technique.Prop, own, -1)))
        {
            return true;
        }

        var theirs = target < 0 || step.Attack is null ? null : Held(step, step.Attack.Prop, who);
        if (target >= 0 && step.Attack is { } attack && (theirs == -1 || Works(props, who, attack.Demands, theirs) || Crowds(props, attack.Prop, theirs, who)))
        {
            return true;
        }

        return target >= 0 && step.Technique is not null && step.Reaction is { Prop: { } sold } && Held(step, sold, who) == -1;
    }

    /// <summary>Number of what a record is done with; −1 where it is not there, null where nothing is needed or no prop of the brief would do.</summary>
    private static int? Held(Step step, PropNeed? need, int user)
    {
        if (need is null || !step.Scene.Props.Serving(need).Any())
        {
            return null;
        }

        foreach (var p in step.Scene.Props.Serving(need))
        {
            var prop = step.Before.Props[p];
            if (need.Holder == PropHolder.Floor ? prop.Lies && prop.Place.To(user < 0 ? step.Mark : step.Before.Attackers[user].Place) <= HandProps.TakesUpWithin
                : prop.Holder == (need.Holder == PropHolder.Hero ? -1 : step.Target >= 0 ? step.Target : int.MinValue) && (need.Hand ?? prop.Hand) == prop.Hand)
            {
                return p;
            }
        }

        return -1;
    }

    private static bool Works(FixedList<PropState> props, int who, IReadOnlyList<string> demands, int? used)
    {
        for (var p = 0; p < props.Count; p++)
        {
            if (p != used && ((props[p].IsIn(who, Side.Left) && demands.Contains(Demand.LeftHand)) || (props[p].IsIn(who, Side.Right) && demands.Contains(Demand.RightHand))))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Crowds(FixedList<PropState> props, PropNeed? need, int? used, int user)
    {
        if (need?.Into is not { } into || used is not { } prop)
        {
            return false;
        }

        var holder = need.Then == PropFate.Passes ? props[prop].Holder : user;
        return Enumerable.Range(0, props.Count).Any(p => p != prop && props[p].Holder == holder && props[p].Hand.Meets(into));
    }

    /// <summary>Somebody is left on what lies on the floor and stays there.</summary>
    private static bool OnTheFloor(Step step)
    {
        for (var p = 0; p < step.Before.Props.Count; p++)
        {
            var place = step.Before.Props[p].Place;
            if (!step.Before.Props[p].Lies || !step.After.Props[p].Lies)
            {
                continue;
            }

            if ((step.Mark + step.StepsTo).To(place) < Figures.Underfoot)
            {
                return true;
            }

            for (var a = 0; a < step.Before.Attackers.Count; a++)
            {
                var now = step.After.Attackers[a];
                if (!now.Gone && step.LegsOf(a).Any() && (now.Place.To(place) < Figures.Underfoot || step.LegsOf(a).Any(l => l.IsTheEnd && place.ToLine(l.Start, l.End) < Figures.Underfoot)))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Somebody goes to a knee or farther where a break-away has broken.</summary>
    private static bool InShards(Step step)
    {
        var (here, there) = (step.Mark + step.StepsTo, step.Scene.Marks[step.After.Mark]);
        var downBefore = step.StanceStart.IsDown();
        var downAfter = step.After.Stance.IsDown() || step.Technique is { HeroFall: not FallClass.None };
        for (var p = 0; p < step.After.Props.Count; p++)
        {
            var (place, broken) = (step.After.Props[p].Place, step.After.Props[p].Broken);
            if (!broken)
            {
                continue;
            }

            var stays = step.After.Mark == step.Before.Mark;
            if ((here.To(place) < Figures.Shards && (downBefore || (downAfter && stays))) || (downAfter && there.To(place) < Figures.Shards))
            {
                return true;
            }

            foreach (var (who, _) in step.Falls)
            {
                if (who >= 0 && step.After.Attackers[who] is { Gone: false } down && (down.Place.To(place) < Figures.Shards || step.LegsOf(who).Any(l => l.IsTheEnd && place.ToLine(l.Start, l.End) < Figures.Shards)))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static List<ILiteral> Otherwise(ModelAnswer answer, IEnumerable<SlotVars> slots, bool places)
    {
        var clause = new FloorClause(answer);
        foreach (var slot in slots)
        {
            clause.Chosen([.. slot.Uses, .. slot.Attacks, slot.NoAttack, .. slot.Reactions, slot.NoReaction, .. slot.Targets, slot.NoTarget, .. slot.Seconds]);
            if (places)
            {
                clause.Same(slot.TargetBearing);
                clause.Same(slot.Distance);
                clause.Same(slot.Start);
            }
        }

        foreach (var attacker in places ? answer.Model.Start.Attackers : [])
        {
            clause.Same(attacker.Bearing);
            clause.Same(attacker.Distance);
        }

        return clause.Literals;
    }
}
