using Generator.Domain;
using Generator.Rules.Replaying;
using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>The state after a row: the target as the reaction leaves them, the others as they were unless the hero's turn takes them along.</summary>
internal static class AfterPart
{
    public static void Build(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var i = slot.Index;
        var last = cp.Int(0, model.Cast, $"last[{i + 1}]");
        cp.Model.Add(last == slot.Target).OnlyEnforceIf(slot.NoTarget.Not());
        cp.Model.Add(last == slot.Before.LastTarget).OnlyEnforceIf(slot.NoTarget);
        slot.RunsOff = model.ReactionIs(slot, r => r.RunsOff, $"runsoff[{i}]");
        var hit = Target(model, slot);
        slot.TargetAfter = hit;
        SecondPart.Build(model, slot);
        var certain = i < model.Options.FewestRows ? slot.FixedTarget : -2;
        var after = Enumerable.Range(0, model.Cast).Select(a => certain == a ? hit with { Gone = Gone(model, slot, a, slot.Before.Attackers[a].Gone) } : Person(model, slot, hit, a)).ToList();
        slot.After = new BoundaryVars
        {
            Time = slot.End,
            Stance = slot.StanceEnd,
            Facing = slot.FacingEnd,
            Left = slot.LeftEnd,
            Right = slot.RightEnd,
            Bound = slot.BoundEnd,
            LastTarget = last,
            Followed = DistancePart.Followed(model, slot),
            Attackers = after,
        };
    }

    private static AttackerVars Target(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var i = slot.Index;
        var scene = model.Scene;
        var round = cp.ClassOf([.. slot.Reactions, slot.NoReaction], [.. model.Vocabulary.Reactions.Select(r => scene.Book.Reactions[r].Round), 0], $"rround[{i}]");
        var carry = cp.ClassOf(slot.Uses, [.. model.Vocabulary.Uses.Select(u => (int)(u.Technique?.Carry ?? Carry.None))], $"carry[{i}]");
        var right = model.AttackIs(slot, k => k.Line.Side == LineSide.Right, $"fromright[{i}]");
        var shift = cp.Int(0, 23, $"shift[{i}]");
        cp.Table([round, carry, right, shift], model.Tables.Shift);
        var bearing = cp.Round(slot.TargetBearing + shift, $"lands[{i}]");
        var distance = DistancePart.After(model, slot);
        var open = cp.Int(-1, model.LatestReady, $"open[{i}]");
        cp.Model.Add(open == slot.End + model.OverReactions(slot, r => scene.OpenFor(r)));
        var ready = cp.Int(0, model.LatestReady, $"ready[{i}]");
        var threat = cp.Int(0, model.LatestThreat, $"threat[{i}]");
        for (var a = 0; a < model.Cast; a++)
        {
            if (ReferenceEquals(slot.Targets[a], cp.False))
            {
                continue;
            }

            cp.Model.Add(ready == slot.End + slot.Linger + model.OverReactions(slot, r => scene.ReadyAfter(r, a))).OnlyEnforceIf(slot.Targets[a]);
            cp.Model.Add(threat == ready + DistancePart.WalkTime(model, a, distance, $"walk[{i},{a}]")).OnlyEnforceIf(slot.Targets[a]);
        }

        cp.Model.Add(ready == 0).OnlyEnforceIf(slot.NoTarget);
        cp.Model.Add(threat == 0).OnlyEnforceIf(slot.NoTarget);
        var posture = slot.PostureEnd;
        var grip = Grip(model, slot);
        var isOut = cp.Is(posture, (int)Posture.Out, $"goesout[{i}]");
        var gripping = cp.Is(slot.Fate, 2, $"grips[{i}]");
        var controlled = cp.Is(slot.Fate, 1, $"controls[{i}]");
        var active = cp.Bool($"active[{i}]");
        cp.Model.Add(active + isOut + gripping + controlled == 1);
        return new AttackerVars
        {
            Bearing = bearing,
            Distance = distance,
            Posture = posture,
            OpenUntil = open,
            ReadyAt = ready,
            Threat = threat,
            Grip = grip,
            Active = active,
            Out = isOut,
            Controlled = controlled,
            Gripping = gripping,
            Gone = slot.RunsOff,
        };
    }

    public static IEnumerable<long[]> ShiftRows(MoveModel model)
    {
        foreach (var round in model.Vocabulary.Reactions.Select(r => model.Scene.Book.Reactions[r].Round).Append(0).Distinct())
        {
            foreach (var carry in Enum.GetValues<Carry>())
            {
                for (var right = 0; right <= 1; right++)
                {
                    yield return [round, (int)carry, right, new Bearing(Effects.CarriedRound(carry, round, right == 1)).HalfHours];
                }
            }
        }
    }

    /// <summary>The line of a grip: the attack's when the row has a grab, else the one there was.</summary>
    private static IntVar Grip(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var was = model.OfTarget(slot, a => a.Grip, 0, $"tgrip[{slot.Index}]");
        var grip = cp.Int(0, AttackLine.Count, $"grip[{slot.Index}]");
        cp.Model.Add(grip == was).OnlyEnforceIf(slot.NoAttack);
        cp.Model.Add(grip == model.OverAttacks(slot, k => model.Scene.Book.Attacks[k].Line.Index)).OnlyEnforceIf(slot.HasAttack);
        return grip;
    }

    private static AttackerVars Person(MoveModel model, SlotVars slot, AttackerVars hit, int a)
    {
        var hits = slot.Targets[a];
        var was = SecondPart.After(model, slot, hit, a);
        var bearing = Taken(model, slot, a, slot.Before.Attackers[a]);
        var gone = Gone(model, slot, a, was.Gone);
        if (ReferenceEquals(hits, model.Cp.False))
        {
            return was with { Bearing = bearing, Gone = gone };
        }

        var name = $"[{slot.Index + 1},{a}]";
        return new AttackerVars
        {
            Bearing = Choose(model, hits, hit.Bearing, bearing, "bearing" + name),
            Distance = Choose(model, hits, hit.Distance, was.Distance, "distance" + name),
            Posture = Choose(model, hits, hit.Posture, was.Posture, "posture" + name),
            OpenUntil = Choose(model, hits, hit.OpenUntil, was.OpenUntil, "open" + name),
            ReadyAt = Choose(model, hits, hit.ReadyAt, was.ReadyAt, "ready" + name),
            Threat = Choose(model, hits, hit.Threat, was.Threat, "threat" + name),
            Grip = Choose(model, hits, hit.Grip, was.Grip, "grip" + name),
            Active = Choose(model, hits, hit.Active, was.Active, "active" + name),
            Out = Choose(model, hits, hit.Out, was.Out, "out" + name),
            Controlled = Choose(model, hits, hit.Controlled, was.Controlled, "controlled" + name),
            Gripping = Choose(model, hits, hit.Gripping, was.Gripping, "gripping" + name),
            Gone = gone,
        };
    }

    /// <summary>Whoever has run off stays off.</summary>
    private static BoolVar Gone(MoveModel model, SlotVars slot, int a, BoolVar was)
    {
        var cp = model.Cp;
        if (ReferenceEquals(slot.RunsOff, cp.False))
        {
            return was;
        }

        var name = $"gone[{slot.Index + 1},{a}]";
        var ways = new List<ILiteral>();
        if (!ReferenceEquals(was, cp.False))
        {
            ways.Add(was);
        }

        if (!ReferenceEquals(slot.Targets[a], cp.False))
        {
            ways.Add(cp.And(name + ".runs", slot.RunsOff, slot.Targets[a]));
        }

        if (!ReferenceEquals(slot.SecondsOut[a], cp.False))
        {
            ways.Add(cp.And(name + ".second", slot.RunsOff, slot.SecondsOut[a]));
        }

        return ways.Count switch { 0 => cp.False, 1 when ways[0] is BoolVar only => only, _ => cp.Or(name, [.. ways]) };
    }

    /// <summary>One who grips the hero goes round with the hero's turn; one whom the hero holds is walked to the target by techniques made for it.</summary>
    private static IntVar Taken(MoveModel model, SlotVars slot, int a, AttackerVars was)
    {
        var cp = model.Cp;
        var turning = !ReferenceEquals(was.Gripping, cp.False) && model.GripsHappen && model.Vocabulary.Uses.Any(TurnsWhileGripped);
        var walking = model.Vocabulary.Uses.Any(u => u.Technique is { CarriesHeld: true }) && !ReferenceEquals(was.Controlled, cp.False);
        if (!turning && !walking)
        {
            return was.Bearing;
        }

        var name = $"taken[{slot.Index},{a}]";
        var carries = model.UseIs(slot, u => u.Technique is { CarriesHeld: true }, name + ".carries");
        var walked = cp.And(name + ".walked", carries, was.Controlled);
        var bearing = cp.Int(0, 23, name);
        var turned = cp.Round(was.Bearing + model.OverUses(slot, u => u.Technique?.Turn.HalfHours ?? 0), name + ".turned");
        cp.Model.Add(bearing == turned).OnlyEnforceIf(was.Gripping);
        cp.Model.Add(bearing == slot.TargetBearing).OnlyEnforceIf(walked);
        cp.Model.Add(bearing == was.Bearing).OnlyEnforceIf([was.Gripping.Not(), walked.Not()]);
        return bearing;
    }

    /// <summary>Turns the hero and can be done while somebody else has hold of the hero.</summary>
    private static bool TurnsWhileGripped(Use use) => use.Technique is { } t && t.Turn.HalfHours != 0
        && (MayBeHeld(t.LeftNeed) || MayBeHeld(t.RightNeed) || (t.Supported && t.Bounds != BoundSet.Free));

    private static bool MayBeHeld(HandNeed need) => need is HandNeed.Any or HandNeed.NotHolding or HandNeed.HeldByOther;

    /// <summary>A variable equal to one of two values, as the literal says.</summary>
    public static IntVar Choose(MoveModel model, BoolVar hits, IntVar then, IntVar otherwise, string name)
    {
        var (low, high) = (Engine.Cp.Range(then), Engine.Cp.Range(otherwise));
        var chosen = model.Cp.Int(Math.Min(low.Low, high.Low), Math.Max(low.High, high.High), name);
        model.Cp.Model.Add(chosen == then).OnlyEnforceIf(hits);
        model.Cp.Model.Add(chosen == otherwise).OnlyEnforceIf(hits.Not());
        return chosen;
    }

    private static BoolVar Choose(MoveModel model, BoolVar hits, BoolVar then, BoolVar otherwise, string name)
    {
        if (ReferenceEquals(then, otherwise))
        {
            return then;
        }

        var chosen = model.Cp.Bool(name);
        model.Cp.Model.Add(chosen == then).OnlyEnforceIf(hits);
        model.Cp.Model.Add(chosen == otherwise).OnlyEnforceIf(hits.Not());
        return chosen;
    }
}
