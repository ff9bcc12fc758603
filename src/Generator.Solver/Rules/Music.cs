using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Charges for accents of the music without a contact (<see cref="Generator.Rules.Rules.Music.Missed"/> each); no move is under way, and nobody falls, where it holds.</summary>
public sealed class Music : RuleModule
{
    public override string Id => "music";

    public override void Post(MoveModel model)
    {
        if (model.Scene.Brief.Music is not { } music)
        {
            return;
        }

        foreach (var hold in music.Holds)
        {
            foreach (var slot in model.Slots)
            {
                Still(model, slot, hold.At.Value);
            }
        }

        var was = model.Options.Memory?.MemoryOf(Id) as MusicMemory ?? MusicMemory.None;
        var contacts = model.Slots.Select(s => Contacts(model, s)).ToList();
        for (var i = 0; i < music.Accents.Count; i++)
        {
            if (!was.IsSettled(i))
            {
                Accent(model, contacts, music.Accents[i].Value);
            }
        }
    }

    private static void Still(MoveModel model, SlotVars slot, int held)
    {
        var (cp, after) = (model.Cp, model.Scene.Settle.ContactAfter.Value);
        var endsBy = cp.UpTo(slot.End, held);
        cp.Model.AddBoolOr([cp.UpTo(slot.Start, held - 1).Not(), endsBy]);
        foreach (var length in model.Scene.Book.Attacks.Select(k => k.Length.Value).Distinct())
        {
            var attack = model.AttackIs(slot, k => k.Length.Value == length, $"lasts[{slot.Index},{length}]");
            if (!cp.IsFalse(attack))
            {
                var later = cp.UpTo(slot.Start, held - 1 - after + Math.Max(length, after)).Not();
                cp.Model.AddBoolOr([attack.Not(), later, endsBy]);
                cp.Model.AddBoolOr([attack.Not(), later, cp.UpTo(slot.Start, held - after)]);
            }
        }

        var falls = model.ReactionIs(slot, r => r.Fall != FallClass.None, $"fallsafter[{slot.Index}]");
        if (!cp.IsFalse(falls))
        {
            cp.Model.AddBoolOr([falls.Not(), cp.UpTo(slot.End, held - 1).Not(), cp.UpTo(slot.End, held - after)]);
        }
    }

    private static (BoolVar Attack, BoolVar Blow) Contacts(MoveModel model, SlotVars slot) => (
        model.Cp.And($"accentattack[{slot.Index}]", slot.HasAttack, model.AttackIs(slot, k => k.IsWalkIn, $"accentwalk[{slot.Index}]").Not()),
        model.UseIs(slot, u => u is { HasTarget: true, Technique.IsHitOrThrow: true }, $"accentblow[{slot.Index}]"));

    private void Accent(MoveModel model, List<(BoolVar Attack, BoolVar Blow)> contacts, int at)
    {
        var (cp, after) = (model.Cp, model.Scene.Settle.ContactAfter.Value);
        var (lands, past) = (new List<ILiteral>(), new List<ILiteral>());
        foreach (var slot in model.Slots)
        {
            var (attack, blow) = contacts[slot.Index];
            lands.Add(cp.And($"accent[{slot.Index},{at},attack]", attack, cp.UpTo(slot.Start, at - after), cp.UpTo(slot.Start, at - after - 1).Not()));
            lands.Add(cp.And($"accent[{slot.Index},{at},blow]", blow, cp.UpTo(slot.End, at), cp.UpTo(slot.End, at - 1).Not()));
            past.Add(cp.And($"accentpast[{slot.Index},{at}]", slot.Used, cp.UpTo(slot.Start, at).Not()));
        }

        var missed = cp.Or($"accent[{at}]", [.. lands]).Not();
        model.Charge(Id, cp.And($"accentmissed[{at}]", model.Options.Ends ? [missed] : [missed, cp.Or($"accentpast[{at}]", [.. past])]) * Generator.Rules.Rules.Music.Missed);
    }
}
