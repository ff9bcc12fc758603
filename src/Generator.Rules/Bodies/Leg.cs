namespace Generator.Rules.Bodies;

/// <summary>
/// A stretch of time in which somebody rests, goes straight ahead, or lies. Everybody's way is a chain of legs, the last first; only who is falling has two at once: the
/// way, and the place where they will lie.
/// </summary>
public sealed class Leg
{
    private readonly double latest;

    /// <param name="kind">How.</param>
    /// <param name="move">Number of the move that brought it about, from 0; −1 for the opening.</param>
    /// <param name="from">Moment at which it begins, in half counts.</param>
    /// <param name="to">Moment at which it ends; infinite while nothing is known that ends it.</param>
    /// <param name="start">Where it begins; the feet of somebody who lies.</param>
    /// <param name="end">Where it ends; the head of somebody who lies.</param>
    /// <param name="before">The leg before; null at the first.</param>
    public Leg(LegKind kind, int move, double from, double to, Place start, Place end, Leg? before)
    {
        (Kind, Move, From, To, Start, End, Before) = (kind, move, from, to, start, end, before);
        latest = Math.Max(to, before?.latest ?? double.NegativeInfinity);
    }

    /// <summary>Somebody who has always been in one place and stays there.</summary>
    /// <param name="place">Where.</param>
    /// <param name="move">Of the move that the leg belongs to.</param>
    public static Leg Always(Place place, int move = -1) => new(LegKind.Rests, move, double.NegativeInfinity, double.PositiveInfinity, place, place, null);

    public LegKind Kind { get; }

    public int Move { get; }

    public double From { get; }

    public double To { get; }

    public Place Start { get; }

    public Place End { get; }

    public Leg? Before { get; }

    public bool Lies => Kind == LegKind.Lies;

    /// <summary>Where they are left: lying, or at rest until something else begins.</summary>
    public bool IsTheEnd => Lies || double.IsInfinity(To);

    /// <summary>This leg and those before it, the last first.</summary>
    public IEnumerable<Leg> Chain()
    {
        for (var leg = this; leg is not null; leg = leg.Before)
        {
            yield return leg;
        }
    }

    /// <summary>This leg or one before it is still on at a moment.</summary>
    public bool Reaches(double moment) => latest > moment;

    /// <summary>The moment at which whoever is under way arrives; the beginning of time for who has never gone.</summary>
    public double Arrives
    {
        get
        {
            var leg = this;
            while (leg is not null && (leg.Lies || leg.Start == leg.End))
            {
                leg = leg.Before;
            }

            return leg?.To ?? double.NegativeInfinity;
        }
    }

    /// <summary>The nearest that the middles of two bodies come to one another while both legs are on, in centimetres; infinite where they are on at different times.</summary>
    public double Apart(Leg other) => Apart(other, double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>The same within a span of time in half counts.</summary>
    public double Apart(Leg other, double soonest, double latest)
    {
        var (from, to) = (Math.Max(soonest, Math.Max(From, other.From)), Math.Min(latest, Math.Min(To, other.To)));
        if (from >= to)
        {
            return double.PositiveInfinity;
        }

        if (Lies || other.Lies)
        {
            var (one, two) = (Part(from, to), other.Part(from, to));
            return Place.Between(one.Start, one.End, two.Start, two.End);
        }

        // Seen from the other, this one goes straight, too.
        var ((start, end), (first, last)) = (Part(from, to), other.Part(from, to));
        return default(Place).ToLine(start - first, end - last);
    }

    /// <summary>All of the other leg is that far from all of this one along one of the two axes, so that <see cref="Apart(Leg)"/> is not less: quickly told, and true of most.</summary>
    /// <param name="other">The other leg.</param>
    /// <param name="distance">In centimetres.</param>
    public bool IsClearOf(Leg other, double distance) =>
        Math.Min(Start.X, End.X) - Math.Max(other.Start.X, other.End.X) >= distance || Math.Min(other.Start.X, other.End.X) - Math.Max(Start.X, End.X) >= distance
        || Math.Min(Start.Y, End.Y) - Math.Max(other.Start.Y, other.End.Y) >= distance || Math.Min(other.Start.Y, other.End.Y) - Math.Max(Start.Y, End.Y) >= distance;

    /// <summary>Where a move has left them lying; null where it has not.</summary>
    public Leg? LastingBody(int move)
    {
        for (var leg = this; leg is not null && leg.Move == move; leg = leg.Before)
        {
            if (leg.Lies)
            {
                return leg;
            }
        }

        return null;
    }

    /// <summary>The moment at which what a move brings about for them begins; infinite where it does nothing.</summary>
    public double Begins(int move)
    {
        var first = double.PositiveInfinity;
        for (var leg = this; leg is not null && leg.Move == move; leg = leg.Before)
        {
            first = Math.Min(first, leg.From);
        }

        return first;
    }

    /// <summary>On this leg or one before it they lie, or are falling, at a moment.</summary>
    public bool LiesAt(double moment) => LyingAt(moment) is not null;

    /// <summary>Where they lie, or will when they have fallen, at a moment; null for who is upright.</summary>
    public Leg? LyingAt(double moment)
    {
        for (var leg = this; leg is not null && leg.Reaches(moment); leg = leg.Before)
        {
            if (leg.Lies && leg.From <= moment && leg.To > moment)
            {
                return leg;
            }
        }

        return null;
    }

    /// <summary>Where they are at a moment of the leg.</summary>
    public Place At(double moment) =>
        Start == End || double.IsInfinity(To) || To <= From ? (moment < To ? Start : End) : Start.Towards(End, Math.Clamp((moment - From) / (To - From), 0, 1));

    private (Place Start, Place End) Part(double from, double to) => Lies || Start == End ? (Start, End) : (At(from), At(to));
}
