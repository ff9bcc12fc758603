using Generator.Domain;

namespace Generator.Rules.Bodies;

/// <summary>
/// What a move does with somebody's place, in numbers: the way in before an attack, and where the technique sends them or lays them down. Bearings and turns in half hours, distances in
/// centimetres, moments in half counts.
/// </summary>
public readonly record struct Motion
{
    /// <summary>Number of the move, from 0.</summary>
    public int Move { get; init; }

    /// <summary>Where they stand before it.</summary>
    public (int Bearing, int Distance) Stands { get; init; }

    /// <summary>The mark from which <see cref="Stands"/> and <see cref="Meets"/> are seen.</summary>
    public Place Origin { get; init; }

    /// <summary>The mark from which <see cref="Ends"/> is seen: another where the hero travels and they go along.</summary>
    public Place EndsFrom { get; init; }

    /// <summary>Where they stand before it to the millimetre; null where that is on its bearing.</summary>
    public Place? Exactly { get; init; }

    /// <summary>They attack: set off at <see cref="Leaves"/>, walk round until <see cref="Rounded"/>, and are at <see cref="Meets"/> at <see cref="Contact"/>.</summary>
    public bool ComesIn { get; init; }

    public int Leaves { get; init; }

    public int Rounded { get; init; }

    /// <summary>Half hours walked round, the shorter way, −11 to 12.</summary>
    public int Round { get; init; }

    public int Contact { get; init; }

    /// <summary>Where they are when the technique begins to act on them; <see cref="Stands"/> for who does not come in.</summary>
    public (int Bearing, int Distance) Meets { get; init; }

    /// <summary>The technique acts on them, from <see cref="Taken"/> until they have come to <see cref="Ends"/> at <see cref="Lands"/>.</summary>
    public bool Reacts { get; init; }

    public int Taken { get; init; }

    public int Lands { get; init; }

    public (int Bearing, int Distance) Ends { get; init; }

    /// <summary>Half counts that nobody can be quicker on that way.</summary>
    public int Least { get; init; }

    /// <summary>Half hours round the clock on which they are sent, signed; half round leads straight past the mark.</summary>
    public int SentRound { get; init; }

    /// <summary>How they go there.</summary>
    public LegKind Kind { get; init; }

    /// <summary>They leave the floor.</summary>
    public bool Gone { get; init; }

    /// <summary>They lie from when they are sent until this moment; <see cref="Never"/> for who does not, <see cref="ForEver"/> for who stays down.</summary>
    public int LiesUntil { get; init; }

    /// <summary>They lay before, and lie as they lay.</summary>
    public bool LiesAsBefore { get; init; }

    /// <summary>The middle of the body is at the place and the body square to the bearing, rather than the feet at the place and the head outwards.</summary>
    public bool Across { get; init; }

    /// <summary>From the middle of the feet to the middle of the head of who lies, in centimetres.</summary>
    public int Axis { get; init; }

    public const int Never = int.MinValue;

    public const int ForEver = int.MaxValue;

    /// <summary>What a move does with somebody who is walked along, or turned with, while it is on another.</summary>
    /// <param name="scene">How fast anybody goes.</param>
    /// <param name="move">Number of the move, from 0.</param>
    /// <param name="start">Moment at which it starts.</param>
    /// <param name="end">Moment at which it ends.</param>
    /// <param name="stands">Bearing and distance before it.</param>
    /// <param name="ends">The same after it.</param>
    /// <param name="lies">They lie meanwhile.</param>
    /// <param name="marks">The marks from which the two are seen.</param>
    /// <param name="exactly">Where they stand to the millimetre, if not on a bearing.</param>
    public static Motion Led(Scene scene, int move, int start, int end, (int Bearing, int Distance) stands, (int Bearing, int Distance) ends, bool lies, (Place Before, Place After) marks = default, Place? exactly = null) => new Motion
    {
        Origin = marks.Before,
        EndsFrom = marks.After,
        Exactly = exactly,
        Move = move,
        Stands = stands,
        Meets = stands,
        Reacts = true,
        Taken = start,
        Lands = end,
        Ends = ends,
        SentRound = new Bearing(stands.Bearing).To(new Bearing(ends.Bearing)).HalfHours,
        Kind = LegKind.Led,
        LiesUntil = lies ? ForEver : Never,
        LiesAsBefore = true,
    }.NoFaster(scene);

    /// <summary>With the time that nobody can be quicker on the way.</summary>
    public Motion NoFaster(Scene scene)
    {
        var least = scene.HalfCountsFor(FloorGeometry.Whole(Way()));
        return this with { Least = least, Lands = Math.Max(Lands, Taken + least) };
    }

    /// <summary>The same so many half counts later.</summary>
    public Motion Later(int by) => this with
    {
        Leaves = Leaves + by,
        Rounded = Rounded + by,
        Contact = Contact + by,
        Taken = Taken + by,
        Lands = Lands + by,
        LiesUntil = LiesUntil is Never or ForEver ? LiesUntil : LiesUntil + by,
    };

    /// <summary>The way in alone.</summary>
    public Motion WayIn => this with { Reacts = false };

    /// <summary>What the technique does, alone.</summary>
    public Motion Sending => this with { ComesIn = false, Stands = Meets, Exactly = Meets == Stands ? Exactly : null };

    /// <summary>Where they stay to the millimetre, of somebody whom the move leaves where they were off its bearing; else null.</summary>
    public Place? Staying => Meets == Stands && (!Reacts || (Ends == Meets && EndsFrom == Origin)) ? Exactly : null;

    private Place StandsAt => Exactly ?? Origin + Place.At(Stands.Bearing, Stands.Distance);

    private Place MeetsAt => Meets == Stands ? StandsAt : Origin + Place.At(Meets.Bearing, Meets.Distance);

    private Place EndsAt => Ends == Meets && EndsFrom == Origin ? MeetsAt : EndsFrom + Place.At(Ends.Bearing, Ends.Distance);

    /// <summary>The legs of this move alone, of somebody who has always stood where it begins.</summary>
    public IEnumerable<Leg> Legs()
    {
        var move = Move;
        return Laid(Leg.Always(StandsAt, int.MinValue)).Chain().Where(l => l.Move == move);
    }

    /// <summary>The legs of this move on top of those before.</summary>
    public Leg Laid(Leg before)
    {
        var way = before;
        if (ComesIn)
        {
            way = End(way, Leaves);
            way = Arc(way, LegKind.Comes, Leaves, Rounded, Stands.Bearing, Round, Stands.Distance, Stands.Distance);
            way = Straight(way, LegKind.Comes, Rounded, Contact, MeetsAt);
        }

        if (!Reacts)
        {
            return ComesIn ? Rest(way, Contact) : way;
        }

        // Who is still under way arrives first, and is sent on from there.
        var since = Math.Max(Taken, way.Arrives);
        var lands = Math.Max(Lands, since + Least);
        var lay = Lying(way, since);
        way = End(way, since);
        var place = EndsAt;
        way = IsRound
            ? Arc(way, Kind, since, lands, Meets.Bearing, SentRound, Meets.Distance, Ends.Distance)
            : Straight(way, Kind, since, lands, place);
        if (Gone)
        {
            return way;
        }

        if (LiesUntil == Never)
        {
            return Rest(way, lands, place);
        }

        var until = LiesUntil == ForEver ? double.PositiveInfinity : Math.Max(LiesUntil, lands);
        if (PlaceOf(way) != place)
        {
            // In a wrong routine somebody may be put down before they are in: they lie where the move has them all the same.
            way = new Leg(LegKind.Rests, Move, since, since, place, place, way);
        }

        way = Down(way, LiesAsBefore ? lay : null, place, since, until);
        return LiesUntil == ForEver ? way : Rest(way, until, place);
    }

    private bool IsRound => Math.Abs(SentRound) is > 0 and < 12 && Ends.Distance > 0 && EndsFrom == Origin;

    /// <summary>Centimetres of the way on which the technique takes them, each half hour of it counted as the longest: they take the same time.</summary>
    private double Way()
    {
        var steps = IsRound ? Math.Abs(SentRound) : 1;
        var (longest, here) = (0.0, MeetsAt);
        for (var i = 1; i <= steps; i++)
        {
            var next = i == steps ? EndsAt : Origin + Place.At(Meets.Bearing + (Math.Sign(SentRound) * i), Meets.Distance + ((double)(Ends.Distance - Meets.Distance) * i / steps));
            (longest, here) = (Math.Max(longest, here.To(next)), next);
        }

        return steps * longest;
    }

    /// <summary>Where they lie at a moment; null for who is upright.</summary>
    private static Leg? Lying(Leg way, double moment)
    {
        for (var leg = way; leg is not null && leg.Reaches(moment); leg = leg.Before)
        {
            if (leg.From <= moment && leg.To > moment)
            {
                return leg.Lies ? leg : null;
            }
        }

        return null;
    }

    private Leg Down(Leg way, Leg? lay, Place place, double from, double until)
    {
        Place feet, head;
        if (lay is not null)
        {
            var moved = place - MeetsAt;
            (feet, head) = (lay.Start + moved, lay.End + moved);
        }
        else if (Across)
        {
            (feet, head) = (place + Place.At(Ends.Bearing - 6, Axis / 2.0), place + Place.At(Ends.Bearing + 6, Axis / 2.0));
        }
        else
        {
            (feet, head) = (place, place + Place.At(Ends.Bearing, Axis));
        }

        return new Leg(LegKind.Lies, Move, from, until, feet, head, way);
    }

    /// <summary>What was on at a moment ends there: who still rests or lies stops, who is still under way arrives by then.</summary>
    private Leg? Ended(Leg? way, double moment)
    {
        if (way is null || !way.Reaches(moment))
        {
            return way;
        }

        var before = Ended(way.Before, moment);
        if (way.To <= moment)
        {
            return ReferenceEquals(before, way.Before) ? way : new Leg(way.Kind, way.Move, way.From, way.To, way.Start, way.End, before);
        }

        // Nobody is under way to a place after they have set off from it.
        var move = way.Start == way.End || way.Lies ? way.Move : Move;
        return way.From >= moment ? before : new Leg(way.Kind, move, way.From, moment, way.Start, way.End, before);
    }

    private Leg End(Leg way, double moment) => Ended(way, moment) ?? new Leg(LegKind.Rests, Move, moment, moment, PlaceOf(way), PlaceOf(way), null);

    private static Place PlaceOf(Leg way) => way.Lies ? way.Start : way.End;

    private Leg Straight(Leg way, LegKind kind, double from, double to, Place place)
    {
        var start = kind != LegKind.Comes ? MeetsAt : Round == 0 ? StandsAt : Origin + Place.At(Meets.Bearing, Stands.Distance);
        return to > from ? new Leg(kind, Move, from, to, start, place, way) : way;
    }

    private Leg Arc(Leg way, LegKind kind, double from, double to, int bearing, int round, int first, int last)
    {
        var steps = Math.Abs(round);
        var (mark, begins) = (Origin, kind == LegKind.Comes || Meets == Stands ? Exactly : null);
        for (var i = 1; i <= steps && to > from; i++)
        {
            way = new Leg(kind, Move, At(i - 1), At(i), On(i - 1), On(i), way);
        }

        return way;

        double At(int step) => from + ((to - from) * step / steps);

        Place On(int step) => step == 0 && begins is { } exactly
            ? exactly
            : mark + Place.At(bearing + (Math.Sign(round) * step), first + ((double)(last - first) * step / steps));
    }

    private Leg Rest(Leg way, double from, Place place) => new(LegKind.Rests, Move, from, double.PositiveInfinity, place, place, way);

    private Leg Rest(Leg way, double from) => Rest(way, from, MeetsAt);
}
