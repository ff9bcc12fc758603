using Generator.Domain;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>
/// The second attacker whom a row concerns: the one whom a reaction bumps into, or whom a technique takes along with the target. As in the replay
/// it is the one whose bearing is nearest, and of equals the first in the cast. Built only where the vocabulary has such uses.
/// </summary>
internal static class SecondPart
{
    public static void Build(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var i = slot.Index;
        slot.TakesTwo = model.UseIs(slot, u => u.Technique is { TakesTwo: true }, $"takestwo[{i}]");
        slot.Bumps = model.ReactionIs(slot, r => r.HitsSecond, $"bumps[{i}]");
        slot.Seconds = [.. Enumerable.Repeat(cp.False, model.Cast)];
        slot.SecondsOut = [.. Enumerable.Repeat(cp.False, model.Cast)];
        if (!slot.HasSeconds(cp))
        {
            return;
        }

        if (model.Cast > 1)
        {
            Choose(model, slot);
        }
    }

    /// <summary>What the row leaves of somebody other than its target.</summary>
    public static AttackerVars After(MoveModel model, SlotVars slot, AttackerVars hit, int a)
    {
        var cp = model.Cp;
        var was = slot.Before.Attackers[a];
        var second = slot.Seconds[a];
        if (!Happens(model, second))
        {
            return was;
        }

        var name = $"[{slot.Index},{a}].second";
        var recovered = cp.Int(0, model.LatestReady, "recovered" + name);
        cp.Model.Add(recovered == slot.End + slot.SecondLinger + model.OverReactions(slot, r => model.Scene.ReadyAfter(r, a)));
        var later = cp.Int(0, model.LatestReady, "later" + name);
        cp.Model.AddMaxEquality(later, [recovered, was.ReadyAt]);
        var ready = Either(model, slot, recovered, later, "ready" + name);
        var distance = LeftAt(model, slot, hit, was, name);
        var threat = cp.Int(0, model.LatestThreat, "threat" + name);
        cp.Model.Add(threat == ready + DistancePart.WalkTime(model, a, distance, "walk" + name));
        var (isOut, active) = (was.Out, was.Active);
        if (Happens(model, slot.TakesTwo))
        {
            slot.SecondsOut[a] = cp.And("goesout" + name, second, slot.TakesTwo, hit.Out);
            isOut = cp.Or("out" + name, was.Out, slot.SecondsOut[a]);
            active = cp.Bool("active" + name);
            cp.Model.Add(active + slot.SecondsOut[a] == was.Active);
        }

        return was with
        {
            Distance = AfterPart.Choose(model, second, distance, was.Distance, "distance" + name),
            Posture = AfterPart.Choose(model, second, slot.SecondPosture, was.Posture, "posture" + name),
            OpenUntil = AfterPart.Choose(model, second, hit.OpenUntil, was.OpenUntil, "open" + name),
            ReadyAt = AfterPart.Choose(model, second, ready, was.ReadyAt, "ready" + name),
            Threat = AfterPart.Choose(model, second, threat, was.Threat, "threat" + name),
            Out = isOut,
            Active = active,
        };
    }

    /// <summary>Where the second one is left: sent straight back by what is shared, or carried on beyond the target by a bump.</summary>
    private static IntVar LeftAt(MoveModel model, SlotVars slot, AttackerVars hit, AttackerVars was, string name)
    {
        var (cp, scene) = (model.Cp, model.Scene);
        var beyond = !Happens(model, slot.Bumps) ? was.Distance : Greater(DistancePart.Farthest + scene.Settle.LaneBeside.Value, hit.Distance + scene.Settle.LaneBeside.Value, was.Distance, "beyond" + name);
        if (!Happens(model, slot.TakesTwo))
        {
            return beyond;
        }

        var clear = cp.Int(0, DistancePart.Farthest, "clearof" + name);
        cp.Model.Add(clear == model.OverReactions(slot, r => scene.Book.Reactions[r].Posture is { } posture ? scene.NearestFor(posture) : 0));
        var back = cp.Int(-DistancePart.Farthest, 2 * DistancePart.Farthest, "back" + name);
        cp.Model.Add(back == was.Distance + model.OverReactions(slot, r => scene.Book.Reactions[r].Back.Value));
        var sent = Greater(2 * DistancePart.Farthest, back, clear, "sentback" + name);
        return Either(model, slot, sent, beyond, "leftat" + name);

        IntVar Greater(long most, LinearExpr one, LinearExpr other, string called)
        {
            var greater = cp.Int(0, most, called);
            cp.Model.AddMaxEquality(greater, [one, other]);
            return greater;
        }
    }

    private static bool Happens(MoveModel model, BoolVar literal) => !ReferenceEquals(literal, model.Cp.False);

    private static void Choose(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var i = slot.Index;
        var bumpsOnly = Happens(model, slot.TakesTwo) && Happens(model, slot.Bumps) ? cp.And($"bumpsonly[{i}]", slot.Bumps, slot.TakesTwo.Not()) : slot.Bumps;
        var place = Either(model, slot, slot.TargetBearing, slot.TargetAfter.Bearing, $"secondplace[{i}]");
        slot.SecondPosture = Either(model, slot, slot.PostureEnd, cp.Const((int)Posture.OffBalance), $"secondposture[{i}]");
        slot.SecondLinger = Either(model, slot, slot.Linger, cp.Const(0), $"secondlinger[{i}]");
        var apart = new IntVar[model.Cast];
        var fits = new BoolVar[model.Cast];
        for (var a = 0; a < model.Cast; a++)
        {
            if (slot.FixedTarget == a)
            {
                fits[a] = cp.False;
                continue;
            }

            apart[a] = model.Apart(place, slot.Before.Attackers[a].Bearing, $"secondapart[{i},{a}]");
            fits[a] = Fits(model, slot, a, apart[a], bumpsOnly);
        }

        if (model.Cast == 2)
        {
            slot.Seconds = fits;
            return;
        }

        Nearest(model, slot, apart, fits);
    }

    /// <summary>Not the target, in play, near enough, and in the state that is asked for.</summary>
    private static BoolVar Fits(MoveModel model, SlotVars slot, int a, IntVar apart, BoolVar bumpsOnly)
    {
        var cp = model.Cp;
        var other = slot.Before.Attackers[a];
        var name = $"second[{slot.Index},{a}]";
        var entered = cp.AtMost(model.Entrances[a], slot.Start, name + ".entered");
        var ways = new List<BoolVar>();
        if (Happens(model, slot.Bumps))
        {
            var near = cp.AtMost(apart, LinearExpr.Constant(model.Scene.Settle.SecondWithin), name + ".near");
            ways.Add(cp.And(name + ".bumped", bumpsOnly, slot.Targets[a].Not(), near, entered, other.Active, OnFeet(cp, slot, other, name)));
        }

        var needs = Happens(model, slot.TakesTwo) ? model.Vocabulary.Uses.Select(u => u.Technique?.Two).OfType<SecondNeed>().Distinct().ToList() : [];
        foreach (var (need, k) in needs.Select((n, k) => (n, k)))
        {
            var asked = model.UseIs(slot, u => u.Technique?.Two == need, $"{name}.asks[{k}]");
            ways.Add(cp.And($"{name}.taken[{k}]", asked, slot.Targets[a].Not(), entered, IsThere(cp, need, apart, other, $"{name}[{k}]"), IsFound(cp, slot, need, other, $"{name}[{k}]")));
        }

        return ways.Count == 1 ? ways[0] : cp.Or(name + ".fits", [.. ways]);
    }

    private static BoolVar IsThere(Cp cp, SecondNeed need, IntVar apart, AttackerVars other, string name) => cp.And(
        name + ".there",
        cp.AtMost(LinearExpr.Constant(need.FewestApart), apart, name + ".beside"),
        cp.AtMost(apart, LinearExpr.Constant(need.MostApart), name + ".near"),
        cp.AtMost(LinearExpr.Constant(need.Nearest.Value), other.Distance, name + ".clear"),
        cp.AtMost(other.Distance, LinearExpr.Constant(need.Farthest.Value), name + ".inreach"));

    /// <summary>In a posture that is asked for and still open; where somebody ready will do, also recovered from any of which one recovers.</summary>
    private static BoolVar IsFound(Cp cp, SlotVars slot, SecondNeed need, AttackerVars other, string name)
    {
        var open = cp.AtMost(slot.Start, other.OpenUntil, name + ".open");
        var ways = need.Needs.Members.Select(p => cp.And($"{name}.{p}", cp.Is(other.Posture, (int)p, $"{name}.is.{p}"), open)).ToList();
        if (need.Needs.Contains(Posture.Ready))
        {
            ways.Add(cp.And(name + ".ready", other.Active, open.Not(), cp.AtMost(other.ReadyAt, slot.Start, name + ".recovered")));
        }

        return cp.Or(name + ".found", [.. ways]);
    }

    /// <summary>Neither on the floor nor still getting up when the row starts.</summary>
    private static BoolVar OnFeet(Cp cp, SlotVars slot, AttackerVars other, string name)
    {
        var down = Enum.GetValues<Posture>().Where(p => p.IsDown()).Select(p => cp.Is(other.Posture, (int)p, $"{name}.{p}")).ToArray();
        var standing = cp.Bool(name + ".standing");
        cp.Model.Add(Cp.Sum(down) + standing == 1);
        var knelt = cp.Is(other.Posture, (int)Posture.Knelt, name + ".knelt");
        var up = cp.Or(name + ".onfeet", standing, cp.AtMost(other.ReadyAt, slot.Start, name + ".recovered"));
        return ReferenceEquals(knelt, cp.False) ? up : cp.And(name + ".upright", up, knelt.Not());
    }

    private static void Nearest(MoveModel model, SlotVars slot, IntVar[] apart, BoolVar[] fits)
    {
        var cp = model.Cp;
        for (var a = 0; a < model.Cast; a++)
        {
            slot.Seconds[a] = Happens(model, fits[a]) ? cp.Bool($"second[{slot.Index},{a}]") : cp.False;
        }

        for (var a = 0; a < model.Cast; a++)
        {
            if (!Happens(model, fits[a]))
            {
                continue;
            }

            cp.Model.AddImplication(slot.Seconds[a], fits[a]);
            cp.Model.AddBoolOr([fits[a].Not(), .. slot.Seconds]);
            for (var b = 0; b < model.Cast; b++)
            {
                if (b != a && Happens(model, fits[b]))
                {
                    cp.Model.Add((LinearExpr)apart[b] >= apart[a] + (b < a ? 1 : 0)).OnlyEnforceIf([slot.Seconds[a], fits[b]]);
                }
            }
        }
    }

    /// <summary>One value where the technique takes two, another where a reaction bumps into somebody.</summary>
    private static IntVar Either(MoveModel model, SlotVars slot, IntVar taken, IntVar bumped, string name) =>
        !Happens(model, slot.TakesTwo) ? bumped : !Happens(model, slot.Bumps) ? taken : AfterPart.Choose(model, slot.TakesTwo, taken, bumped, name);
}
