using Generator.Domain;
using Generator.Library;
using Generator.Rules.Bodies;

namespace Generator.Rules;

/// <summary>
/// The things of a floor that records may use, and from which bearings and distances they can be used: worked out once for each need and mark. A thing is where it must be when
/// it is the first that a straight line from the mark meets.
/// </summary>
public sealed class FloorThings
{
    /// <summary>How far off the line a thing may lie behind the hero, in half hours. Common practice, no source.</summary>
    private const int BehindWithin = 2;

    /// <summary>The same before the hero: a step of theirs puts it between. Common practice, no source.</summary>
    private const int BetweenWithin = 3;

    private readonly FloorPlan floor;
    private readonly ThingTable table;
    private readonly Place[] marks;
    private readonly Dictionary<ThingNeed, Fit[,]> fits = [];
    private readonly bool none;

    public FloorThings(Brief brief, ThingTable table, IEnumerable<ThingNeed> needs)
    {
        (floor, this.table) = (brief.Floor, table);
        marks = brief.Ally is { } ally ? [new Place(floor.MarkX.Value, floor.MarkY.Value), new Place(floor.MarkX.Value + ally.Mark.X, floor.MarkY.Value + ally.Mark.Y)]
            : brief.Travels ? [.. brief.Marks.Select(m => new Place(m.X.Value, m.Y.Value))] : [new Place(floor.MarkX.Value, floor.MarkY.Value)];
        none = floor.Obstacles.All(o => o.Kind is null);
        foreach (var need in none ? [] : needs.Where(n => n.Where != ThingPlace.OnTheWay).Distinct())
        {
            var fit = new Fit[marks.Length, Bearing.Circle];
            for (var m = 0; m < marks.Length; m++)
            {
                for (var b = 0; b < Bearing.Circle; b++)
                {
                    fit[m, b] = FitOf(need, m, b);
                }
            }

            fits[need] = fit;
        }
    }

    /// <summary>For everything that a library's records use.</summary>
    public static FloorThings Of(Brief brief, Book book) =>
        new(brief, book.Things, book.Techniques.Select(t => t.Uses).Concat(book.Attacks.Select(a => a.Uses)).Concat(book.Reactions.Select(r => r.Uses)).OfType<ThingNeed>());

    /// <summary>Something on this floor is of a kind that may be used.</summary>
    public bool Any => !none;

    /// <summary>Why nothing on this floor serves a need, wherever anybody stands; null where something does, or for no need.</summary>
    /// <param name="need">What a record uses.</param>
    /// <param name="name">The record's name.</param>
    public string? WhyNot(ThingNeed? need, string name) =>
        need is null || Serves(need) ? null : $"{Words.Cap(name)} needs {Wanted(need)}, and none stands where it could be used";

    /// <summary>Something on this floor serves a need, from somewhere.</summary>
    public bool Serves(ThingNeed need) =>
        need.Where == ThingPlace.OnTheWay ? Ways().Any(w => On(need, w.From, w.To) is not null) : Places(need).Any(p => p.Thing is not null);

    /// <summary>Bearing and distances at which whoever uses it that way must be; none where nothing serves.</summary>
    /// <param name="need">What a record uses, not on the way.</param>
    /// <param name="mark">The mark from which it is seen.</param>
    /// <param name="bearing">Bearing of the attacker in half hours, any whole number.</param>
    public Fit At(ThingNeed need, int mark, int bearing) => fits.TryGetValue(need, out var fit) ? fit[mark, new Bearing(bearing).HalfHours] : Fit.None;

    /// <summary>The same from a mark to a place that need not lie on a bearing.</summary>
    /// <param name="need">A thing behind the attacker.</param>
    /// <param name="mark">The mark.</param>
    /// <param name="seen">The place as seen from the mark.</param>
    public Fit At(ThingNeed need, int mark, Place seen) => seen.X * seen.X + (seen.Y * seen.Y) is var square && square < 1 ? Fit.None : Behind(need, mark, seen.X / Math.Sqrt(square), seen.Y / Math.Sqrt(square));

    /// <summary>How far the nearest of a thing is from a mark, in centimetres.</summary>
    public double Away(Obstacle thing, int mark) => thing.To(marks[mark].X, marks[mark].Y);

    /// <summary>The thing that is gone over from one mark to another; null where none or something else stands on the way.</summary>
    public Obstacle? On(ThingNeed need, int from, int to)
    {
        var (start, end) = (marks[from], marks[to]);
        var way = start.To(end);
        if (none || way < 1)
        {
            return null;
        }

        var met = floor.Obstacles.Where(o => Meets(o, start, (end.X - start.X) / way, (end.Y - start.Y) / way) is { } at && at <= way).ToList();
        return met.Count == 1 && table.Allows(met[0], need.Use) ? met[0] : null;
    }

    /// <summary>Bearings from a mark at which a need is served, in half hours.</summary>
    public IEnumerable<int> BearingsOf(ThingNeed need, int mark) => Enumerable.Range(0, Bearing.Circle).Where(b => At(need, mark, b).Thing is not null);

    /// <summary>What is wanted, in words: "something to be driven against behind the attacker".</summary>
    public static string Wanted(ThingNeed need) => ThingWords.Of(need.Use) + " " + ThingWords.Of(need.Where);

    private IEnumerable<Fit> Places(ThingNeed need) => fits.TryGetValue(need, out var fit) ? fit.Cast<Fit>() : [];

    private IEnumerable<(int From, int To)> Ways() => from a in Enumerable.Range(0, marks.Length) from b in Enumerable.Range(0, marks.Length) where a != b select (a, b);

    private Fit FitOf(ThingNeed need, int mark, int bearing) => need.Where switch
    {
        ThingPlace.BehindAttacker => Behind(need, mark, Place.At(bearing, 1).X, Place.At(bearing, 1).Y),
        ThingPlace.BehindHero => Near(need, mark, bearing + (Bearing.Circle / 2), BehindWithin),
        ThingPlace.Between => Near(need, mark, bearing, BetweenWithin),
        _ => Near(need, mark, 0, Bearing.Circle / 2),
    };

    private Fit Behind(ThingNeed need, int mark, double dx, double dy) =>
        First(mark, dx, dy) is var (thing, at) && table.Allows(thing, need.Use) ? new Fit(thing, (int)Math.Ceiling(at - need.Within.Value - 1e-6), (int)Math.Floor(at + 1e-6)) : Fit.None;

    private Fit Near(ThingNeed need, int mark, int bearing, int within)
    {
        for (var off = 0; off <= within; off++)
        {
            foreach (var side in off == 0 ? (ReadOnlySpan<int>)[0] : [off, -off])
            {
                var step = Place.At(bearing + side, 1);
                if (First(mark, step.X, step.Y) is var (thing, at) && at <= need.Within.Value + 1e-6 && table.Allows(thing, need.Use))
                {
                    return new Fit(thing, 0, int.MaxValue);
                }
            }
        }

        return Fit.None;
    }

    private (Obstacle Thing, double At)? First(int mark, double dx, double dy)
    {
        (Obstacle Thing, double At)? first = null;
        foreach (var thing in floor.Obstacles)
        {
            if (Meets(thing, marks[mark], dx, dy) is { } at && (first is null || at < first.Value.At - 1e-6))
            {
                first = (thing, at);
            }
        }

        return first;
    }

    /// <summary>Distance along a line to a thing itself; null where the line passes it by.</summary>
    private static double? Meets(Obstacle thing, Place from, double dx, double dy)
    {
        var (enterX, leaveX) = StraightWay.Slab(dx, thing.X.Value - from.X, thing.X.Value + thing.Width.Value - from.X);
        var (enterY, leaveY) = StraightWay.Slab(dy, thing.Y.Value - from.Y, thing.Y.Value + thing.Depth.Value - from.Y);
        var (enter, leave) = (Math.Max(enterX, enterY), Math.Min(leaveX, leaveY));
        return enter <= leave + 1e-6 && leave >= 0 ? Math.Max(0, enter) : null;
    }

    /// <summary>A thing that serves, and how far from the mark whoever uses it must be, in centimetres.</summary>
    public readonly record struct Fit(Obstacle? Thing, int Least, int Most)
    {
        /// <summary>Nothing serves.</summary>
        public static readonly Fit None = new(null, int.MaxValue, int.MinValue);

        /// <summary>Somebody so far from the mark is at it.</summary>
        public bool Holds(int distance) => Thing is not null && Least <= distance && distance <= Most;
    }
}
