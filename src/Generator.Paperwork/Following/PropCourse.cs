using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Following;

/// <summary>Where one prop is in every half count, as Replay says: what becomes of it in a move has become of it at the end of the move.</summary>
/// <param name="Name">As the brief has it.</param>
/// <param name="Kind">Null where the library no longer knows it.</param>
/// <param name="Spells">In order of time, at least one.</param>
public sealed record PropCourse(string Name, PropKind? Kind, IReadOnlyList<PropSpell> Spells)
{
    /// <summary>Every prop of the brief, in its order.</summary>
    public static IReadOnlyList<PropCourse> Of(PaperSource source, int from) => [.. Enumerable.Range(0, source.Brief.Props.Count).Select(p => Of(source, from, p))];

    /// <summary>Where and when it lies on the floor between two moments; infinite for good.</summary>
    public IEnumerable<(PropSpell Spell, double To)> Lying(int from, int to) =>
        Spells.Select((s, i) => (Spell: s, To: i + 1 < Spells.Count ? Spells[i + 1].From : double.PositiveInfinity)).Where(s => s.Spell.State.Lies && s.Spell.From < Math.Max(to, from + 1) && s.To > from);

    private static PropCourse Of(PaperSource source, int from, int prop)
    {
        var open = source.Steps.Count > 0 ? source.Steps[0].Before : Replay.Open(source.Scene, source.Routine);
        List<PropSpell> spells = [Spell(from, open)];
        foreach (var step in source.Steps.Where(s => s.After.Props[prop] != s.Before.Props[prop]))
        {
            var at = Math.Max(spells[^1].From, step.Technique is null ? step.Over : step.End);
            if (at == spells[^1].From)
            {
                spells.RemoveAt(spells.Count - 1);
            }

            spells.Add(Spell(at, step.After));
        }

        return new PropCourse(PropLines.NameOf(source.Scene, prop), source.Scene.Props.KindOf(prop), spells);

        PropSpell Spell(int time, FightState state) => new(time, state.Props[prop], PropLines.Where(source.Scene, state, state.Props[prop]));
    }
}
