using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Constructing;

/// <summary>
/// Fits a choice to a state: the soonest start at which feet, hands and turn allow it. Sifts cheaply what the rules would refuse anyway.
/// </summary>
internal sealed class RowFitting(Scene scene, Repertoire repertoire)
{
    /// <summary>An attack of so many half counts leaves time to react to its cue.</summary>
    private readonly int react = scene.Brief.Tempo.AtLeast(scene.Settle.ReactionSeconds).Value;

    private readonly PropFitting props = new(scene);

    /// <summary>
    /// The start, or −1 when it does not fit between the two gaps.
    /// </summary>
    /// <param name="state">What is true before.</param>
    /// <param name="attacker">The target; −1 for none.</param>
    /// <param name="choice">What is to be done.</param>
    /// <param name="bearing">Where the target comes from.</param>
    /// <param name="least">Shortest gap.</param>
    /// <param name="most">Longest gap.</param>
    /// <param name="cue">The cue that it needs.</param>
    /// <param name="heading">Of a travel move without a target, the bearing of the mark to which it leads; −1 for none.</param>
    public int StartOf(FightState state, int attacker, Choice choice, int bearing, int least, int most, out Cue cue, int heading = -1)
    {
        cue = Cue.None;
        var technique = scene.Book.Techniques[choice.Technique];
        var attack = choice.Attack < 0 ? null : scene.Book.Attacks[choice.Attack];
        var closes = attack is { IsGrab: true } && technique.Family == Family.Escape;
        var target = technique.HasNoTarget ? -1 : attacker;
        if (!BoundFits(state, technique, attack, target, closes))
        {
            return -1;
        }

        if (technique.Uses is { Where: ThingPlace.BehindHero or ThingPlace.Between } need && scene.Things.At(need, state.Mark, bearing).Thing is null)
        {
            return -1;
        }

        if (!props.Fits(state, target, technique, attack))
        {
            return -1;
        }

        var (stance, stanceTime) = StanceFor(state, choice.Technique, attack, closes);
        if (stanceTime > 0 && (closes || state.Bound != Bound.Free || technique.Recovery))
        {
            // A bound hero changes no stance, and nobody goes down in a gap only to get up again.
            return -1;
        }

        var gap = Math.Max(least, stanceTime);
        if (target >= 0)
        {
            var seen = new Bearing(state.Facing).To(new Bearing(bearing)).HalfHours;
            var turn = technique.Window.TurnFor(new Turn(seen)).HalfHours;
            gap = Math.Max(gap, GapForTurn(state, Math.Abs(turn)));
            if (attack is not null && (!Comes(attack, stance, new Bearing(state.Facing + turn), bearing) || !IsCued(attack, seen, out cue)))
            {
                return -1;
            }
        }

        if (target < 0 && heading >= 0 && technique.Travel is { } travel)
        {
            gap = Math.Max(gap, GapForTurn(state, Math.Abs(travel.Heads.TurnFor(new Bearing(state.Facing).To(new Bearing(heading))).HalfHours)));
        }

        if (!HandsFit(state, technique, attack, target, gap, closes))
        {
            gap = Math.Max(gap, scene.Settle.HandBack.Value);
            if (!HandsFit(state, technique, attack, target, gap, closes))
            {
                return -1;
            }
        }

        return gap > most ? -1 : state.Time + gap;
    }

    private (Stance Stance, int Time) StanceFor(FightState state, int technique, Attack? attack, bool closes)
    {
        var stance = closes ? StanceChoice.Pulled(state.Stance, attack!) : state.Stance;
        return (repertoire.StanceTo(stance, technique), repertoire.StanceTime(stance, technique));
    }

    private int GapForTurn(FightState state, int turn)
    {
        if (turn == 0)
        {
            return 0;
        }

        var held = state.Left.Kind == HandKind.Held || state.Right.Kind == HandKind.Held;
        return state.Bound != Bound.Free || (held && turn > scene.Settle.TurnWhileHeld) ? StanceTable.Never : repertoire.GapForTurn[turn];
    }

    private static bool Comes(Attack attack, Stance stance, Bearing facing, int bearing) =>
        attack.HeroStances.Contains(stance) && attack.From.Contains(facing.To(new Bearing(bearing)));

    private bool IsCued(Attack attack, int seen, out Cue cue)
    {
        cue = Math.Abs(seen) > scene.Settle.SightHalfAngle ? Cue.Voice : Cue.None;
        return cue == Cue.None || attack.Length.Value >= react;
    }

    private static bool BoundFits(FightState state, Technique technique, Attack? attack, int target, bool closes)
    {
        if (state.Bound == Bound.Free)
        {
            var bound = closes && attack!.GripsBound is { } grips ? grips : Bound.Free;
            return WorksIn(technique, bound);
        }

        return WorksIn(technique, state.Bound) && (target < 0 || state.BoundBy == target || technique.Supported);
    }

    private static bool WorksIn(Technique technique, Bound bound) => (technique.Bounds & (BoundSet)(1 << (int)bound)) != BoundSet.None;

    private bool HandsFit(FightState state, Technique technique, Attack? attack, int target, int gap, bool closes)
    {
        var longEnough = gap >= scene.Settle.HandBack.Value;
        var left = HandStates.Settled(state.Left, longEnough);
        var right = HandStates.Settled(state.Right, longEnough);
        if (closes)
        {
            left = HandStates.Seized(left, attack!.GripsLeft, target);
            right = HandStates.Seized(right, attack.GripsRight, target);
        }

        return HandFit.Accepts(left, technique.LeftNeed, target) && HandFit.Accepts(right, technique.RightNeed, target);
    }
}
