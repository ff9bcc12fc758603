using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Rules.Replaying;

/// <summary>
/// What moves do to props. A prop stays with its holder until a move says otherwise; whoever falls farther than to a knee, or goes out without running off, drops it. Where it lies is worked out: beside the
/// holder, as near as it is clear of all feet.
/// </summary>
internal static class Handling
{
    /// <summary>How far a prop lies from the hero's mark and from everybody else after it has fallen, and from another prop. Common practice, no source.</summary>
    private const int Clear = 60;

    /// <summary>How far from the holder it falls at first, and farther out where that is not clear. Common practice, no source.</summary>
    private static readonly int[] Falls = [90, 130, 170];

    /// <summary>How far beyond whoever it was thrown at it comes to lie. Common practice, no source.</summary>
    private const int Beyond = 130;

    /// <summary>Where every prop is before the first count.</summary>
    public static FixedList<PropState> Open(Scene scene) => scene.Props.Any
        ? new([.. scene.Props.Parts.Select((p, i) => new PropState(p.With ?? PropState.NoOne, p.Hand, scene.Props.PlaceOf(i).Rounded(), Broken: false))])
        : PropState.None;

    /// <summary>Number of the prop with which a record of the step is done; −1 where none is where it must be.</summary>
    public static int Find(Scene scene, Step step, PropNeed need, bool byAttacker)
    {
        var attackers = step.Before.Attackers;
        var user = byAttacker ? attackers[step.Row.Attacker].Place : scene.Marks[step.Before.Mark];
        for (var p = 0; p < step.Before.Props.Count; p++)
        {
            var prop = step.Before.Props[p];
            var there = need.Holder switch
            {
                PropHolder.Hero => prop.Holder == -1,
                PropHolder.Attacker => step.HasTarget && prop.Holder == step.Row.Attacker,
                _ => prop.Lies && prop.Place.To(user) <= HandProps.TakesUpWithin,
            };
            if (there && (need.Hand is null || prop.Hand == need.Hand) && scene.Props.Serves(p, need))
            {
                return p;
            }
        }

        return -1;
    }

    /// <summary>Every prop after the move; the same list where nothing has become of any.</summary>
    public static FixedList<PropState> After(Scene scene, Step step, AttackerState[] attackers)
    {
        if (step.Before.Props.Count == 0)
        {
            return step.Before.Props;
        }

        var props = step.Before.Props.ToArray();
        var handled = new Handled(scene, step, attackers, props);
        if (step.HasTarget && step.Attack?.Prop is { } thrown && Find(scene, step, thrown, byAttacker: true) is var own and >= 0)
        {
            handled.Apply(own, thrown, step.Row.Attacker);
        }

        if (step.Technique?.Prop is { } done && Find(scene, step, done, byAttacker: false) is var used and >= 0)
        {
            handled.Apply(used, done, -1);
        }

        if (step.HasTarget && step.Technique is not null && step.Reaction?.Prop is { } sold && Find(scene, step, sold, byAttacker: true) is var held and >= 0 && props[held].Holder == step.Row.Attacker)
        {
            handled.Apply(held, sold, step.Row.Attacker);
        }

        handled.Fall();
        return handled.Changed ? new FixedList<PropState>(props) : step.Before.Props;
    }

    /// <summary>Whoever falls so lets go of what they hold.</summary>
    public static bool LetsGo(FallClass fall) => fall is not (FallClass.None or FallClass.ToKnee);

    private sealed class Handled(Scene scene, Step step, AttackerState[] attackers, PropState[] props)
    {
        public bool Changed { get; private set; }

        public void Apply(int prop, PropNeed need, int user)
        {
            var was = props[prop];
            var now = need.Then switch
            {
                PropFate.Drops => Dropped(prop, was.Holder),
                PropFate.Throws => Down(prop, BeyondOf(user), was.Hand, BeyondOf(user) - PlaceOf(user)),
                PropFate.Takes => was with { Holder = user, Hand = need.Into ?? was.Hand },
                PropFate.Passes => was with { Hand = need.Into ?? was.Hand },
                PropFate.Breaks => was with { Holder = PropState.NoOne, Broken = true, Place = PlaceOf(was.Holder >= 0 || !step.HasTarget ? -1 : step.Row.Attacker).Rounded() },
                _ => was,
            };
            Set(prop, now);
        }

        /// <summary>Whoever falls, or goes out on the spot, lets go.</summary>
        public void Fall()
        {
            for (var p = 0; p < props.Length; p++)
            {
                var holder = props[p].Holder;
                if (holder == -1 ? step.Technique is { } technique && LetsGo(technique.HeroFall) : holder >= 0 && Lets(holder))
                {
                    Set(p, Dropped(p, holder));
                }
            }
        }

        private bool Lets(int attacker)
        {
            var (was, now) = (step.Before.Attackers[attacker], attackers[attacker]);
            return step.Concerns(attacker) && !now.Gone && ((step.Reaction is { } reaction && step.Technique is not null && LetsGo(reaction.Fall)) || (now.Posture == Posture.Out && was.Posture != Posture.Out));
        }

        private void Set(int prop, PropState now)
        {
            if (now != props[prop])
            {
                (props[prop], Changed) = (now, true);
            }
        }

        private PropState Dropped(int prop, int holder)
        {
            var (place, hand) = (PlaceOf(holder), props[prop].Hand);
            var ahead = holder >= 0 ? Hero - place : Place.At(step.FacingStart + (step.Technique?.Turn.HalfHours ?? 0), 1);
            return Down(prop, place, hand, hand == PropHand.Left ? new Place(-ahead.Y, ahead.X) : new Place(ahead.Y, -ahead.X));
        }

        /// <summary>Lies beside a place, first on one side of it, then farther round and farther out, wherever it is clear.</summary>
        private PropState Down(int prop, Place beside, PropHand hand, Place side)
        {
            var toSide = side == default ? 0 : Math.Atan2(side.X, side.Y);
            var turn = hand == PropHand.Left ? -1 : 1;
            Place? first = null;
            foreach (var away in Falls)
            {
                for (var i = 0; i < 12; i++)
                {
                    // To the hand's own side, then by thirty degrees farther from the other and nearer to them in turn, to either hand alike.
                    var angle = toSide + (turn * (i % 2 == 0 ? -1 : 1) * ((i + 1) / 2) * Math.PI / 6);
                    var there = (beside + new Place(away * Math.Sin(angle), away * Math.Cos(angle))).Rounded();
                    first ??= there;
                    if (IsClear(prop, there))
                    {
                        return new PropState(PropState.NoOne, hand, there, Broken: false);
                    }
                }
            }

            return new PropState(PropState.NoOne, hand, first!.Value, Broken: false);
        }

        private bool IsClear(int prop, Place place)
        {
            if (!scene.Floor.Holds(place) || place.To(Hero) < Clear)
            {
                return false;
            }

            for (var p = 0; p < props.Length; p++)
            {
                if (p != prop && props[p].Lies && props[p].Place.To(place) < Clear)
                {
                    return false;
                }
            }

            for (var a = 0; a < attackers.Length; a++)
            {
                if (!attackers[a].Gone && LiesOn(attackers[a], place, Clear))
                {
                    return false;
                }
            }

            return true;
        }

        private Place Hero => scene.Marks[step.Travels < 0 ? step.Before.Mark : step.Travels];

        private Place PlaceOf(int holder) => holder < 0 ? Hero : attackers[holder].Place;

        private Place BeyondOf(int user)
        {
            var (from, at) = (PlaceOf(user), user < 0 ? (step.HasTarget ? attackers[step.Row.Attacker].Place : Hero + Place.At(step.FacingStart, 100)) : Hero);
            var way = from.To(at);
            return way < 1 ? at : from.Towards(at, (way + Beyond - Falls[0]) / way);
        }
    }

    /// <summary>Somebody stands or lies nearer to a place than so many centimetres where they are left.</summary>
    public static bool LiesOn(AttackerState who, Place place, int within)
    {
        if (who.Place.To(place) < within)
        {
            return true;
        }

        for (var leg = who.Leg; leg is not null && leg.Move == who.Leg!.Move; leg = leg.Before)
        {
            if (leg.IsTheEnd && place.ToLine(leg.Start, leg.End) < within)
            {
                return true;
            }
        }

        return false;
    }
}
