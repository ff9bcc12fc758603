using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>The contacts of two attackers are at least one count apart; rows follow one another, so neighbours and the memory suffice,
/// and whoever answers an attack for a count or longer keeps the next one away.</summary>
public sealed class OneContact : RuleModule
{
    public override string Id => "one-contact";

    public override void Post(MoveModel model)
    {
        var cp = model.Cp;
        var shortest = model.Vocabulary.Uses.Where(u => u.CarriesAttack).Select(u => u.Technique!.Length.Value).DefaultIfEmpty(HalfCounts.PerCount).Min();
        for (var i = 1; i < model.Slots.Count; i++)
        {
            var (before, slot) = (model.Slots[i - 1], model.Slots[i]);
            if (shortest < HalfCounts.PerCount)
            {
                cp.Model.Add(slot.Start >= before.Start + HalfCounts.PerCount).OnlyEnforceIf([before.HasAttack, slot.HasAttack, slot.Same.Not()]);
            }
        }

        if (model.Options.Memory?.MemoryOf(Id) is not ContactsMemory memory || model.Slots.Count == 0)
        {
            return;
        }

        var first = model.Slots[0];
        for (var a = 0; a < model.Cast; a++)
        {
            var soonest = memory.Last[a] + HalfCounts.PerCount - model.Scene.Settle.ContactAfter.Value;
            if (soonest > 0)
            {
                cp.Model.Add(first.Start >= soonest).OnlyEnforceIf([first.HasAttack, first.Targets[a].Not()]);
            }
        }
    }
}
