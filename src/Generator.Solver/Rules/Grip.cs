using Generator.Rules.Replaying;
using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>Nobody acts through a grip that stops them, no hold is forgotten or let go of while it is acted, and every grip ends.</summary>
public sealed class Grip : RuleModule
{
    public override string Id => "grip";

    public override void Post(MoveModel model)
    {
        var solver = model.Cp.Model;
        foreach (var slot in model.Slots)
        {
            solver.Add(slot.LeftFault != 2);
            solver.Add(slot.RightFault != 2);
            solver.Add(slot.BoundFault == 0);
            var staysHeld = model.Cp.Is(slot.Fate, 1, $"controls[{slot.Index}]");
            for (var a = 0; a < model.Cast; a++)
            {
                var attacker = slot.Before.Attackers[a];
                solver.AddBoolOr([slot.Targets[a].Not(), slot.HasAttack.Not(), attacker.Controlled.Not()]);
                solver.AddBoolOr([slot.Targets[a].Not(), slot.HasAttack.Not(), attacker.Gripping.Not()]);

                // Who stays held is held by a hand.
                var holding = HandPart.Code(new Hand(HandKind.Holding, a), model.Cast);
                solver.AddBoolOr([slot.Targets[a].Not(), staysHeld.Not(), model.Cp.Is(slot.LeftEnd, holding, $"lefton[{slot.Index},{a}]"), model.Cp.Is(slot.RightEnd, holding, $"righton[{slot.Index},{a}]")]);
            }
        }

        if (model.Options.Ends)
        {
            solver.Add(model.End.Left <= 1);
            solver.Add(model.End.Right <= 1);
            solver.Add(model.End.Bound == 0);
        }
    }
}
