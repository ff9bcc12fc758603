using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>A clause in the making: that not everything stays as it is in an answer. Each literal is false in the answer.</summary>
internal sealed class FloorClause(ModelAnswer answer)
{
    private readonly MoveModel model = answer.Model;
    private readonly Func<IntVar, long> value = answer.Value;

    public List<ILiteral> Literals { get; } = [];

    /// <summary>A variable keeps its value.</summary>
    public void Same(IntVar variable) => Within(variable, value(variable), value(variable));

    /// <summary>A variable keeps between two values.</summary>
    public void Within(IntVar variable, long least, long most)
    {
        Literals.Add(model.Cp.UpTo(variable, least - 1));
        Literals.Add(model.Cp.UpTo(variable, most).Not());
    }

    /// <summary>A variable keeps at least at a value.</summary>
    public void AtLeast(IntVar variable, long least) => Literals.Add(model.Cp.UpTo(variable, least - 1));

    /// <summary>A literal keeps true.</summary>
    public void True(ILiteral literal) => Literals.Add(literal.Not());

    /// <summary>Those that are true keep true.</summary>
    public void Chosen(IEnumerable<BoolVar> literals)
    {
        foreach (var literal in literals.Where(l => value(l) == 1))
        {
            True(literal);
        }
    }

    /// <summary>A row does with its target's place what it does.</summary>
    /// <param name="deed">A row on its target.</param>
    /// <param name="comes">The way in matters.</param>
    /// <param name="reacts">What the technique does matters.</param>
    public void Acts(FloorDeed deed, bool comes, bool reacts)
    {
        var (slot, a, treatment) = (deed.Slot, deed.Attacker, deed.Treatment!.Value);
        var before = slot.Before.Attackers[a];
        True(slot.Targets[a]);
        if (treatment.Attack is null)
        {
            True(slot.NoAttack);
            Same(before.Bearing);
            Same(before.Distance);
        }
        else
        {
            Same(slot.TargetBearing);
            Same(slot.Distance);
            True(slot.HasAttack);
            if (comes)
            {
                ComesIn(slot, before, deed);
            }
        }

        if (reacts && deed.Motion.Reacts)
        {
            Reacts(slot, deed, treatment);
            if (treatment.Attack is null)
            {
                Arrived(deed);
            }
        }
    }

    /// <summary>Nobody moves somebody between two rows, nor in the second.</summary>
    public void StaysPut(int attacker, int after, SlotVars until)
    {
        foreach (var slot in model.Slots.Where(s => s.Index > after && s.Index <= until.Index))
        {
            Literals.Add(slot.Targets[attacker]);
            Literals.Add(slot.Seconds[attacker]);
            var (was, now) = (slot.Before.Attackers[attacker], slot.After.Attackers[attacker]);
            if (!ReferenceEquals(was.Bearing, now.Bearing))
            {
                Same(now.Bearing);
            }
        }

        Same(until.Before.Attackers[attacker].Bearing);
        Same(until.Before.Attackers[attacker].Distance);
    }

    /// <summary>A row starts as much later than another, or than count 1, give or take; null for any later.</summary>
    public void Between(IntVar start, IntVar? other, int soonest, int? latest)
    {
        var now = value(start) - (other is null ? 0 : value(other));
        Literals.Add(UpTo(now + soonest - 1));
        if (latest is { } most)
        {
            Literals.Add(UpTo(now + most).Not());
        }

        BoolVar UpTo(long half) => other is null ? model.Cp.UpTo(start, half) : model.Cp.AtMost(start - other, LinearExpr.Constant(half), "later");
    }

    /// <summary>A follow-up finds them no sooner after what was done before, so that they have arrived.</summary>
    private void Arrived(FloorDeed deed)
    {
        var last = FloorWays.Of(answer).Last(deed.Attacker, deed.Slot.Index);
        if (last is not null)
        {
            Acts(last, true, true);
        }

        Between(deed.Slot.Start, last?.Slot.Start, 0, null);
    }

    private void ComesIn(SlotVars slot, AttackerVars before, FloorDeed deed)
    {
        var (scene, a) = (model.Scene, deed.Attacker);
        Same(before.Bearing);
        Same(before.Distance);

        // The answer sets off as late as can be; so does every other in which they are free by then, whenever the row starts.
        var free = model.Cp.AtMost(before.ReadyAt, slot.Start - (int)(value(slot.Start) - deed.Motion.Leaves), "free");
        True(free);
        int Takes(Attack attack) => scene.ComingIn(a, attack, deed.Motion.Stands.Distance, Math.Abs(deed.Motion.Round), deed.Motion.Meets.Distance);
        var length = Takes(deed.Treatment!.Value.Attack!);
        True(model.AttackIs(slot, k => Takes(k) == length, $"aslong[{slot.Index},{length}]"));
    }

    private void Reacts(SlotVars slot, FloorDeed deed, Treatment treatment)
    {
        var (scene, a, book) = (model.Scene, deed.Attacker, model.Scene.Book);
        var (technique, reaction) = (treatment.Technique!, book.Reactions[treatment.Reaction]);
        Same(slot.TargetAfter.Bearing);
        Same(slot.TargetAfter.Distance);
        Same(slot.PostureEnd);
        True(model.UseIs(slot, u => u.Technique is { } t && Sends(t) == Sends(technique), $"alike[{slot.Index}]"));
        True(model.ReactionIs(slot, r => Of(r) == Of(reaction), $"sends[{slot.Index}]"));
        if (technique.Carry == Carry.WithAttack && treatment.Attack is { } attack)
        {
            True(model.AttackIs(slot, k => k.Line.Side == attack.Line.Side, $"side[{slot.Index}]"));
        }

        (Carry, int, bool) Sends(Technique t) => (t.Carry, t.Length.Value, t.Kind == ContactKind.Partnered);

        (bool, bool, bool, bool, int, Lying?, int) Of(Reaction r) =>
            (r.Sends, r.Fall == FallClass.None, r.Fall == FallClass.ToKnee, r.RunsOff, r.Round, r.Lies, deed.Motion.LiesUntil is Motion.Never or Motion.ForEver ? 0 : scene.ReadyAfter(book.ReactionIndex(r.Id), a));
    }
}
