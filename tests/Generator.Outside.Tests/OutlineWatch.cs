using Generator.Paperwork;
using Generator.Paperwork.Following;

namespace Generator.Outside.Tests;

/// <summary>Everybody's outline at every quarter count of a routine as the papers play it; knows nothing of the rules.</summary>
internal sealed class OutlineWatch
{
    /// <summary>Places are whole or tenths of centimetres; nobody is nearer by that much.</summary>
    private const double Rounding = 2;

    /// <summary>The fastest walk, of men in their twenties, in centimetres a second (Bohannon 1997, Age and Ageing 26:15): nobody is sent, led or thrown faster.</summary>
    private const double Walk = 253.3;

    /// <summary>A sprint over 5 m from a rolling start takes 1.09 s (Altmann et al. 2015, J Strength Cond Res 29:2361): nobody comes in, or back to where they set off from, faster.</summary>
    private const double Sprint = 500 / 1.09;

    /// <summary>The last step before a blow, in centimetres.</summary>
    private const double Lunge = 117;

    private readonly PaperSource source;
    private readonly Course course;
    private readonly OutlineCount count;
    private readonly string name;
    private readonly IReadOnlySet<string> across;

    /// <param name="source">The routine.</param>
    /// <param name="across">Ids of the reactions that leave somebody lying square to the line from the mark.</param>
    /// <param name="name">Stands before each fault.</param>
    /// <param name="count">Is told of everything.</param>
    public OutlineWatch(PaperSource source, IReadOnlySet<string> across, string name, OutlineCount count)
    {
        (this.source, this.across, this.name, this.count) = (source, across, name, count);
        course = Course.Of(source);
    }

    public void Run()
    {
        var attackers = course.Performers.Where(p => !p.IsHero).ToList();
        var told = new HashSet<(int, int, int)>();
        for (var half = course.From; half < course.To; half++)
        {
            foreach (var a in attackers)
            {
                See(a, half);
            }

            for (var quarter = 0; quarter < 2; quarter++)
            {
                foreach (var a in attackers)
                {
                    Alone(told, a, half, half + (0.5 * quarter));
                }

                var bodies = attackers.Select(a => Bodies(a, half, half + (0.5 * quarter))).ToList();
                for (var a = 0; a < attackers.Count; a++)
                {
                    Compare(told, half, -1, a, [HeroAt(half + (0.5 * quarter))], bodies[a]);
                    for (var b = a + 1; b < attackers.Count; b++)
                    {
                        Compare(told, half, a, b, bodies[a], bodies[b]);
                    }
                }
            }
        }
    }

    private Outline HeroAt(double time) => course.Hero.PlaceAt(time) is var place ? Outline.Upright(place.X, place.Y) : default;

    private void See(PerformerCourse attacker, int half)
    {
        var doing = attacker.DoingAt(half);
        if (attacker.FigureAt(half) == Figure.Away || doing == Doing.NotIn)
        {
            return;
        }

        count.See(doing switch
        {
            Doing.Held or Doing.Grips => "held",
            Doing.Fall => "falling",
            Doing.Enters => "entering",
            Doing.ComesIn => "coming in",
            _ => attacker.FigureAt(half) switch { Figure.Lying => "lying", Figure.Kneeling => "kneeling", _ => "standing" },
        });
    }

    /// <summary>Nothing for somebody who is off the floor, two outlines for somebody who is falling: where they are, and where they will lie.</summary>
    private List<Outline> Bodies(PerformerCourse attacker, int half, double time)
    {
        var (doing, figure) = (attacker.DoingAt(half), attacker.FigureAt(half));
        if (figure == Figure.Away || doing == Doing.NotIn)
        {
            return [];
        }

        var here = attacker.PlaceAt(time);
        if (doing == Doing.Fall)
        {
            var end = half;
            while (end < course.To && attacker.DoingAt(end) == Doing.Fall && attacker.Moves[end - course.From] == attacker.Moves[half - course.From])
            {
                end++;
            }

            while (end < course.To && attacker.FigureAt(end) == Figure.Lying && attacker.PlaceAt(end).To(attacker.PlaceAt(end - 1)) > 0.5)
            {
                end++;
            }

            return attacker.FigureAt(end - 1) == Figure.Lying ? [Outline.Upright(here.X, here.Y), Lying(attacker, end - 1)] : [Outline.Upright(here.X, here.Y)];
        }

        return figure == Figure.Lying ? [Lying(attacker, half)] : [Outline.Upright(here.X, here.Y)];
    }

    /// <summary>As the fall before left them, wherever they have come to since.</summary>
    private Outline Lying(PerformerCourse attacker, int half)
    {
        var down = half;
        while (down > course.From && attacker.FigureAt(down - 1) == Figure.Lying)
        {
            down--;
        }

        var landed = down;
        while (landed < half && attacker.DoingAt(landed) == Doing.Fall)
        {
            landed++;
        }

        // A fall may be followed up at once; who is pressed down from the knees has none.
        var (fell, now) = (attacker.PlaceAt(landed), attacker.PlaceAt(half));
        var move = new[] { down, down - 1 }.Where(t => attacker.DoingAt(t) == Doing.Fall).Select(t => attacker.Moves[t - course.From]).FirstOrDefault();
        var stature = (double)source.Brief.Attackers[attacker.Attacker].Height.Value;
        var reaction = move > 0 ? source.Routine.Moves[move - 1].Reaction : null;
        var body = reaction is not null && across.Contains(reaction) ? Outline.Across(fell.X, fell.Y, stature) : Outline.FeetNear(fell.X, fell.Y, stature);
        return body.MovedBy(now.X - fell.X, now.Y - fell.Y);
    }

    /// <summary>Nobody is in what stands on the floor, or off it, or anywhere sooner than they can be.</summary>
    private void Alone(HashSet<(int, int, int)> told, PerformerCourse who, int half, double time)
    {
        foreach (var body in Bodies(who, half, time))
        {
            foreach (var (thing, room) in Things(body, comes: who.DoingAt(half) is Doing.Enters or Doing.ComesIn or Doing.Out))
            {
                count.See("beside things");
                if (room < Outline.Radius - Rounding && told.Add((who.Attacker, -2, half / 8)))
                {
                    count.Faults.Add($"{name}: half count {half}, {Who(who.Attacker, half)} {(body.Lies ? "lies" : "upright")}, {room:0} cm from {thing}");
                }
            }
        }

        var speed = who.PlaceAt(time).To(who.PlaceAt(time + 0.5)) * source.Brief.Tempo.CountsPerMinute / 15;
        if (speed > (who.DoingAt(half) is Doing.Fall or Doing.Reaction or Doing.Held ? Walk * 1.03 : time < half + 0.25 ? Hurry(who, half) : Sprint) && told.Add((who.Attacker, -3, half / 8)))
        {
            count.Faults.Add($"{name}: half count {half}, {Who(who.Attacker, half)} goes {speed:0} cm a second");
        }
    }

    /// <summary>
    /// Somebody who comes in, or back to where they set off from, goes as fast as the brief lets them, or as people walk at most, save for the last step, which the blow takes with it: a lunge of 1.17 m (elite
    /// fencers; Kinematic Analysis of Fencing Lunge, Univ. of Tehran). With that they sprint at most.
    /// </summary>
    private double Hurry(PerformerCourse who, int half)
    {
        var (from, to) = (half, half);
        while (from > course.From && Goes(who, from - 1))
        {
            from--;
        }

        while (to < course.To && Goes(who, to))
        {
            to++;
        }

        var way = Enumerable.Range(from, to - from).Sum(t => who.PlaceAt(t).To(who.PlaceAt(t + 1)));
        var seconds = (to - from) * 30.0 / source.Brief.Tempo.CountsPerMinute;
        var own = Math.Max(Walk, source.Brief.Attackers[who.Attacker].Speed);
        return way - Lunge > own * seconds ? 0 : Sprint;
    }

    private static bool Goes(PerformerCourse who, int half) => who.DoingAt(half) is not (Doing.Fall or Doing.Reaction or Doing.Held) && who.PlaceAt(half).To(who.PlaceAt(half + 1)) > 0.5;

    /// <summary>How far either end of a body is from each thing on the floor, from cameras with their operators, and, unless they come or leave, from the floor's edge.</summary>
    private IEnumerable<(string Thing, double Room)> Things(Outline body, bool comes)
    {
        var floor = source.Brief.Floor;
        foreach (var (east, north) in new[] { (body.X1, body.Y1), (body.X2, body.Y2) })
        {
            var (x, y) = (east + floor.MarkX.Value, north + floor.MarkY.Value);
            foreach (var thing in floor.Obstacles)
            {
                yield return (thing.Name, Length(Beyond(x, thing.X.Value, thing.Width.Value), Beyond(y, thing.Y.Value, thing.Depth.Value)));
            }

            foreach (var camera in source.Brief.Cameras.Where(c => c.IsOnTheGround))
            {
                var angle = camera.Bearing.Degrees * Math.PI / 180;
                yield return ("a camera", Length(east - (camera.Distance.Value * Math.Sin(angle)), north - (camera.Distance.Value * Math.Cos(angle))) - 50);
            }

            if (!comes)
            {
                yield return ("the edge", Math.Min(Math.Min(x, floor.Width.Value - x), Math.Min(y, floor.Depth.Value - y)));
            }
        }

        static double Beyond(double at, int start, int length) => Math.Max(0, Math.Max(start - at, at - start - length));

        static double Length(double x, double y) => Math.Sqrt((x * x) + (y * y));
    }

    private void Compare(HashSet<(int, int, int)> told, int half, int first, int second, List<Outline> ones, List<Outline> others)
    {
        foreach (var (one, other) in ones.SelectMany(o => others.Select(p => (o, p))))
        {
            if (Together(first, second, half))
            {
                count.See("pairs of one move");
                continue;
            }

            count.See("pairs");
            var apart = one.Apart(other);
            if (apart < (2 * Outline.Radius) - Rounding && told.Add((first, second, half / 8)))
            {
                count.Faults.Add($"{name}: half count {half}, {Who(first, half)} {(one.Lies ? "lies" : "upright")} and {Who(second, half)} {(other.Lies ? "lies" : "upright")}, {apart:0} cm");
            }
        }
    }

    private string Who(int attacker, int half) => attacker < 0 ? "the hero" : $"{course.Performers[attacker + 1].Name} ({course.Performers[attacker + 1].DoingAt(half)})";

    /// <summary>The technique is made for bodies so close: both are in the move that is on, just over or about to start, or one holds the other.</summary>
    private bool Together(int first, int second, int half)
    {
        if (first < 0)
        {
            return course.Performers[second + 1].DoingAt(half) is Doing.Held or Doing.Grips or Doing.Attack || Around(half).Any(m => Takes(second, m));
        }

        return Around(half).Any(m => Takes(first, m) && Takes(second, m));
    }

    private IEnumerable<int> Around(int half) =>
        Enumerable.Range(0, source.Steps.Count).Where(m => source.Steps[m].Start - 4 <= half && half <= Math.Max(source.Steps[m].End, source.Steps[m].Contact) + 2);

    private bool Takes(int attacker, int move) => source.Steps[move].Row.Attacker == attacker || source.Steps[move].Second == attacker;
}
