using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Posing;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Following;

/// <summary>One prop in space through a whole routine.</summary>
/// <param name="Name">As in the brief.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Stays">In order of time; between two of them, and after the last where it broke, it is nowhere.</param>
public sealed record ActedProp(string Name, PropKind Kind, IReadOnlyList<ActedStay> Stays)
{
    /// <summary>What lies is so high above the floor, so that it is seen; metres.</summary>
    private const double OverFloor = 0.02;

    /// <summary>A prop of a card is in a hand that is no farther off than this; metres.</summary>
    private const double InHand = 0.05;

    /// <summary>How far it reaches; metres.</summary>
    public double Length => Kind.Length.Value / 100.0;

    /// <summary>Of every prop whose kind the library knows.</summary>
    internal static IEnumerable<ActedProp> Of(Course course, IReadOnlyList<ActedPart> parts, IReadOnlyList<ActedMove> moves)
    {
        foreach (var prop in course.Props)
        {
            if (prop.Kind is { } kind)
            {
                var ends = prop.Spells.Skip(1).Select(s => (double)s.From).Append(double.PositiveInfinity);
                yield return new ActedProp(prop.Name, kind, [.. prop.Spells.Zip(ends, (s, to) => Stay(kind, s, to, parts, moves)).OfType<ActedStay>()]);
            }
        }
    }

    private static ActedStay? Stay(PropKind kind, PropSpell spell, double to, IReadOnlyList<ActedPart> parts, IReadOnlyList<ActedMove> moves)
    {
        var state = spell.State;
        if (state.Lies)
        {
            var half = Vec.Left * (kind.Length.Value / 200.0);
            var middle = Stage.Of(state.Place, OverFloor);
            return new ActedStay(spell.From, to, PropState.NoOne, Side.Right, [(spell.From, half * 2)]) { Lies = middle - half };
        }

        if (state.Holder == PropState.NoOne)
        {
            return null;
        }

        var (part, holding) = (parts[state.Holder + 1], new Holding(kind, state.Hand, state.Holder < 0));
        var keys = part.Keys.Where((k, i) => k.Time < to && (i + 1 == part.Keys.Count || part.Keys[i + 1].Time >= spell.From));
        return new ActedStay(spell.From, to, state.Holder, holding.Front, [.. keys.Select(k => (k.Time, Way(k)))]);

        Vec Way(ActedKey key)
        {
            var (_, _, wrist, tip) = Skeleton.Arm(holding.Front);
            var hand = key.Body[tip];
            var aimed = moves.Where(m => m.Contact == key.Time).SelectMany(m => m.Props).FirstOrDefault(p => p.Kind == kind && p.Hand.To(hand) < InHand);
            return Rig.InSpace(key.Rotations, wrist).Inverse * (aimed is null ? holding.Carried(key.Body) : aimed.Far - aimed.Hand);
        }
    }
}
