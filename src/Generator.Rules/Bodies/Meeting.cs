using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Bodies;

/// <summary>Two who come too near to one another on the ways that a step has brought about: how near, and on which legs.</summary>
/// <param name="First">Whom the step moves.</param>
/// <param name="Second">The other.</param>
/// <param name="Mine">Leg of the first.</param>
/// <param name="Other">Leg of the second.</param>
/// <param name="Apart">From middle to middle, or to the middle line of who lies, in centimetres.</param>
/// <param name="Room">What it should be at least.</param>
public readonly record struct Meeting(int First, int Second, Leg Mine, Leg Other, int Apart, int Room)
{
    /// <summary>One of them lies: a matter of what is underfoot.</summary>
    public bool IsUnderfoot => Mine.Lies || Other.Lies;

    /// <summary>One of them is sent, and nobody lies: a matter of the lane.</summary>
    public bool IsInALane => !IsUnderfoot && (Mine.Kind.IsSent() || Other.Kind.IsSent());

    /// <summary>Both are upright and nobody is sent: a matter of spacing.</summary>
    public bool IsOfSpacing => !IsUnderfoot && !IsInALane;

    /// <summary>
    /// Those of a step, the nearest moment of each two for each of the three. Whoever the step moves is held against everybody else on the ways known so far: whoever has not been called yet is
    /// where they are. Two whom one move concerns are left to the technique, but do not end in one another; whoever is only led meanwhile keeps clear of both.
    /// </summary>
    public static IReadOnlyList<Meeting> Of(Scene scene, Step step)
    {
        List<Meeting> found = [];
        Find(scene, step, found);
        return found;
    }

    /// <summary>There are some.</summary>
    public static bool Any(Scene scene, Step step) => Find(scene, step, null);

    /// <summary>Adds them to a list; without one it ends with the first.</summary>
    private static bool Find(Scene scene, Step step, List<Meeting>? found)
    {
        for (var a = 0; a < scene.Cast; a++)
        {
            var mine = step.After.Attackers[a].Leg;
            if (mine is null || mine.Move != step.Index)
            {
                continue;
            }

            for (var b = 0; b < scene.Cast; b++)
            {
                var other = step.After.Attackers[b];
                var moves = other.Leg?.Move == step.Index;
                if (b != a && (!moves || a < b) && Between(scene.Settle, a, b, mine, other.Way, moves && step.Concerns(a) && step.Concerns(b), step.Index, found))
                {
                    return true;
                }
            }
        }

        return (step.After.HeroWay is not null && WithTheHero.Meetings(scene, step, found)) || (step.Before.Other is not null && WithTheOther.Meetings(scene, step, found)) || Bodies.Entering.Meetings(scene, step, found);
    }

    /// <summary>Adds the nearest of two to a list; true where there is none and they come too near.</summary>
    private static bool Between(Settle settle, int a, int b, Leg mine, Leg others, bool bothMove, int move, List<Meeting>? found)
    {
        var (under, lane, space) = (default(Meeting?), default(Meeting?), default(Meeting?));
        var since = bothMove ? double.PositiveInfinity : others.Begins(move);
        for (var one = mine; one is not null && (one.Move == move || one.Before?.Move == move || one.Reaches(since)); one = one.Before)
        {
            for (var two = others; two is not null && two.Reaches(one.From); two = two.Before)
            {
                if ((one.Move != move && two.Move != move) || one.Kind == LegKind.Enters || two.Kind == LegKind.Enters || (bothMove && !(one.IsTheEnd && two.IsTheEnd)))
                {
                    continue;
                }

                var wanted = bothMove ? 2 * settle.BodyRadius.Value : Wanted(settle, one.Kind, two.Kind);
                if (one.IsClearOf(two, wanted))
                {
                    continue;
                }

                var apart = FloorGeometry.Whole(one.Apart(two));
                if (apart < wanted)
                {
                    if (found is null)
                    {
                        return true;
                    }

                    var meeting = new Meeting(a, b, one, two, apart, wanted);
                    Nearer(ref meeting.IsUnderfoot ? ref under : ref meeting.IsInALane ? ref lane : ref space, meeting);
                }
            }
        }

        Add(under, found);
        Add(lane, found);
        Add(space, found);
        return false;
    }

    /// <summary>Those of one who comes onto the floor with one other, the nearest moment for each of the three.</summary>
    /// <param name="settle">How near is too near.</param>
    /// <param name="who">Who comes, and the other.</param>
    /// <param name="mine">The last leg of who comes.</param>
    /// <param name="others">That of the other.</param>
    /// <param name="move">Number of the move whose legs are looked at from the beginning; the others are within the span.</param>
    /// <param name="span">In half counts; after its end nothing is looked at.</param>
    /// <param name="found">Is added to; true where there is none and they come too near.</param>
    internal static bool Entering(Settle settle, (int One, int Other) who, Leg mine, Leg others, int move, (double Since, double Until) span, List<Meeting>? found)
    {
        var (under, lane, space) = (default(Meeting?), default(Meeting?), default(Meeting?));
        for (var one = mine; one is not null && who.One != who.Other; one = one.Before)
        {
            for (var two = one.Kind == LegKind.Enters && one.From < span.Until ? others : null; two is not null && two.Reaches(one.From); two = two.Before)
            {
                var wanted = Wanted(settle, one.Kind, two.Kind);
                if ((two.Kind == LegKind.Enters && who.Other < who.One) || one.IsClearOf(two, wanted))
                {
                    continue;
                }

                var apart = FloorGeometry.Whole(one.Apart(two, two.Move == move ? double.NegativeInfinity : span.Since, span.Until));
                if (apart < wanted)
                {
                    if (found is null)
                    {
                        return true;
                    }

                    var meeting = new Meeting(who.One, who.Other, one, two, apart, wanted);
                    Nearer(ref meeting.IsUnderfoot ? ref under : ref meeting.IsInALane ? ref lane : ref space, meeting);
                }
            }
        }

        Add(under, found);
        Add(lane, found);
        Add(space, found);
        return false;
    }

    /// <summary>Centimetres that two keep from one another on legs of these kinds.</summary>
    internal static int Wanted(Settle settle, LegKind one, LegKind two)
    {
        if (one == LegKind.Lies || two == LegKind.Lies)
        {
            return 2 * settle.BodyRadius.Value;
        }

        return (one == LegKind.Sent || two == LegKind.Sent ? settle.LaneBesideFall : settle.LaneBeside).Value;
    }

    private static void Nearer(ref Meeting? nearest, Meeting other)
    {
        if (nearest is not { } known || other.Room - other.Apart > known.Room - known.Apart)
        {
            nearest = other;
        }
    }

    private static void Add(Meeting? meeting, List<Meeting>? found)
    {
        if (meeting is { } known)
        {
            found?.Add(known);
        }
    }
}
