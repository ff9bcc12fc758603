using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Bodies;

namespace Generator.Paperwork.Following;

/// <summary>What one performer does, and where, in every half count of a routine.</summary>
public sealed class PerformerCourse
{
    /// <summary>Number in the brief, from 0; −1 for the hero.</summary>
    public required int Attacker { get; init; }

    public required string Name { get; init; }

    /// <summary>First half count that the lists below speak of.</summary>
    public required int From { get; init; }

    /// <summary>One entry a half count.</summary>
    public required IReadOnlyList<Doing> Doings { get; init; }

    /// <summary>Number of the move to which each half count belongs; 0 for none.</summary>
    public required IReadOnlyList<int> Moves { get; init; }

    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>In order of time, at least one.</summary>
    public required IReadOnlyList<Keyframe> Ways { get; init; }

    /// <summary>The hero's facing; empty for attackers, who face the mark.</summary>
    public required IReadOnlyList<TurnFrame> Turns { get; init; }

    /// <summary>Where they lie, in order of time.</summary>
    public required IReadOnlyList<LyingBody> Bodies { get; init; }

    public required IReadOnlyList<Contact> Contacts { get; init; }

    /// <summary>The hero's own way, for attackers: the mark of the moment; empty while that is the first for good.</summary>
    public IReadOnlyList<Keyframe> Marks { get; init; } = [];

    public bool IsHero => Attacker < 0;

    /// <summary>What stands in the marker: H for the hero, A1, A2 … for attackers in the order of the brief.</summary>
    public string Sign => Text.Words.Sign(Attacker);

    /// <summary>The same half counts without gaps: neighbours that do the same thing in the same move are one span.</summary>
    public IEnumerable<Span> Spans(int from, int to)
    {
        var start = Math.Max(from, From);
        var end = Math.Min(to, From + Doings.Count);
        for (var time = start; time < end;)
        {
            var next = time + 1;
            while (next < end && Doings[next - From] == Doings[time - From] && Moves[next - From] == Moves[time - From])
            {
                next++;
            }

            yield return new Span(time, next, Doings[time - From], Moves[time - From]);
            time = next;
        }
    }

    public Figure FigureAt(int time) => Figures[Math.Clamp(time - From, 0, Figures.Count - 1)];

    /// <summary>Null for who does not lie; the last where two are on at once.</summary>
    public LyingBody? BodyAt(double time) => Bodies.Where(b => b.From <= time && b.To > time).Select(b => (LyingBody?)b).LastOrDefault();

    public Doing DoingAt(int time) => Doings[Math.Clamp(time - From, 0, Doings.Count - 1)];

    public Place PlaceAt(double time) => On(Ways, time);

    /// <summary>Where the hero is, round whom an attacker's bearings and distances are.</summary>
    public Place MarkAt(double time) => Marks.Count == 0 ? Place.Mark : On(Marks, time);

    private static Place On(IReadOnlyList<Keyframe> ways, double time)
    {
        for (var i = ways.Count - 1; i >= 0; i--)
        {
            if (ways[i].Time > time)
            {
                continue;
            }

            return i == ways.Count - 1 ? ways[i].Place : ways[i].Place.Towards(ways[i + 1].Place, (time - ways[i].Time) / (ways[i + 1].Time - ways[i].Time));
        }

        return ways[0].Place;
    }

    /// <summary>"3 o'clock, 1.20 m": the nearest bearing, and how far from the mark.</summary>
    public string WhereAt(double time)
    {
        var place = PlaceAt(time) - MarkAt(time);
        var bearing = new Bearing((int)Math.Round(Math.Atan2(place.X, place.Y) * Bearing.Circle / (2 * Math.PI)));
        return $"{Words.Clock(bearing)}, {new Centimetres((int)Math.Round(Place.Mark.To(place)))}";
    }

    /// <summary>Degrees clockwise from 12 that the hero faces, 0 to 359; attackers face the mark.</summary>
    public int FacingAt(int time)
    {
        if (!IsHero)
        {
            var place = PlaceAt(time) - MarkAt(time);
            var towards = Math.Atan2(-place.X, -place.Y) * 180 / Math.PI;
            return ((int)Math.Round(towards) + 360) % 360;
        }

        var degrees = Turns.LastOrDefault(t => t.Time <= time, Turns[0]).Degrees;
        return ((degrees % 360) + 360) % 360;
    }

    /// <summary>Places passed from one moment to another, both ends included.</summary>
    public IReadOnlyList<Place> Path(int from, int to) =>
        [PlaceAt(from), .. Ways.Where(w => w.Time > from && w.Time < to).Select(w => w.Place), PlaceAt(to)];
}
