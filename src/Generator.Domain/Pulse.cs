namespace Generator.Domain;

/// <summary>How fast the counts of a fight go by: at one tempo, or through passages and ramps, with counts that are held.</summary>
public sealed class Pulse
{
    private readonly Tempo tempo;
    private readonly IReadOnlyList<Passage> passages;

    /// <param name="tempo">The one tempo; where there are passages they say it.</param>
    /// <param name="music">Passages and holds; null for none.</param>
    public Pulse(Tempo tempo, Music? music = null)
    {
        this.tempo = tempo;
        passages = music?.Passages ?? [];
        Holds = music?.Holds ?? [];
    }

    public static implicit operator Pulse(Tempo tempo) => new(tempo);

    /// <summary>In order.</summary>
    public IReadOnlyList<MusicHold> Holds { get; }

    /// <summary>One tempo throughout, and nothing is held.</summary>
    public bool IsEven => passages.Count == 0 && Holds.Count == 0;

    public Tempo Slowest => passages.Count == 0 ? tempo : passages.MinBy(p => p.Tempo.CountsPerMinute)!.Tempo;

    public Tempo Fastest => passages.Count == 0 ? tempo : passages.MaxBy(p => p.Tempo.CountsPerMinute)!.Tempo;

    /// <summary>
    /// The tempo of the half count that begins at a moment. A ramp goes up or down evenly by the counts; each of its half counts has the tempo of its own middle, to the nearest
    /// whole one. Before count 1 it is that of count 1.
    /// </summary>
    /// <param name="moment">Half counts from count 1.</param>
    public Tempo At(int moment)
    {
        var i = passages.Count - 1;
        while (i > 0 && passages[i].From.Value > moment)
        {
            i--;
        }

        if (i <= 0)
        {
            return passages.Count == 0 ? tempo : passages[0].Tempo;
        }

        var (now, before) = (passages[i], passages[i - 1].Tempo.CountsPerMinute);
        var (into, over) = (moment - now.From.Value, now.Over.Value);
        return into >= over ? now.Tempo : new Tempo((int)Math.Round(before + ((now.Tempo.CountsPerMinute - before) * ((2 * into) + 1) / (2m * over)), MidpointRounding.AwayFromZero));
    }

    /// <summary>The spans of one tempo between two moments, in order: half counts and tempo.</summary>
    public IEnumerable<(int HalfCounts, Tempo Tempo)> Spans(int from, int to)
    {
        for (var moment = from; moment < to;)
        {
            var (begins, now) = (moment, At(moment));
            while (moment < to && (passages.Count == 0 || At(moment) == now))
            {
                moment = passages.Count == 0 ? to : moment + 1;
            }

            yield return (moment - begins, now);
        }
    }

    /// <summary>Seconds in which people move between two moments: without what is held.</summary>
    public decimal SecondsBetween(int from, int to) => passages.Count == 0 ? tempo.SecondsIn(new HalfCounts(to - from)) : Spans(from, to).Sum(s => s.Tempo.SecondsIn(new HalfCounts(s.HalfCounts)));

    /// <summary>The hold on a moment; null for none.</summary>
    public MusicHold? HoldAt(int moment) => Holds.FirstOrDefault(h => h.At.Value == moment);

    /// <summary>The holds from one moment on and before another.</summary>
    public IEnumerable<MusicHold> HoldsIn(int from, int to) => Holds.Where(h => h.At.Value >= from && h.At.Value < to);

    /// <summary>How long a hold lasts, in seconds.</summary>
    public decimal SecondsOf(MusicHold hold) => hold.Seconds ?? At(hold.At.Value).SecondsIn(HalfCounts.FromCounts(hold.Counts ?? 0));

    /// <summary>Seconds from one moment to another, what is held from the first on and before the second among them.</summary>
    public decimal SecondsWithHolds(int from, int to) => SecondsBetween(from, to) + HoldsIn(from, to).Sum(SecondsOf);
}
