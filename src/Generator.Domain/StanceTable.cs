namespace Generator.Domain;

/// <summary>
/// How long every change of stance takes. A change that no record names goes over one other stance and takes the sum of both times,
/// unless it starts on the floor: getting up takes its table's time and no short cut.
/// </summary>
public sealed class StanceTable
{
    /// <summary>No gap is long enough.</summary>
    public const int Never = 1000;

    private readonly int[,,] times;

    public StanceTable(IReadOnlyList<StanceInfo> stances)
        : this(stances, t => t)
    {
    }

    private StanceTable(IReadOnlyList<StanceInfo> stances, Func<HalfCounts, HalfCounts> lasting)
    {
        Stances = stances;
        var count = Enum.GetValues<Stance>().Length;
        times = new int[2, count, count];
        foreach (var novice in (ReadOnlySpan<int>)[0, 1])
        {
            Fill(novice, count, lasting);
        }
    }

    public IReadOnlyList<StanceInfo> Stances { get; }

    /// <summary>Half counts that a hero of this skill needs from one stance to another: 0 for the same, <see cref="Never"/> when there is no way.</summary>
    public int Time(Stance from, Stance to, Skill skill) => times[skill == Skill.Novice ? 1 : 0, (int)from, (int)to];

    /// <summary>The stance in words.</summary>
    public string NameOf(Stance stance) => Stances.FirstOrDefault(s => s.Stance == stance)?.Name ?? stance.ToString();

    /// <summary>What standing so asks of the body.</summary>
    public Load LoadOf(Stance stance) => Stances.FirstOrDefault(s => s.Stance == stance)?.Load ?? default;

    /// <summary>What getting there between two moves asks of the body, the new stance with it.</summary>
    public Load LoadOf(Stance from, Stance to) =>
        (Stances.FirstOrDefault(s => s.Stance == from)?.Changes.FirstOrDefault(c => c.To == to)?.Load ?? default).Or(LoadOf(to));

    /// <summary>The same changes where each of their half counts lasts as long as the settings want at this tempo.</summary>
    public StanceTable At(Tempo tempo, Settle settle) => new(Stances, t => settle.Lasting(t, tempo));

    private void Fill(int novice, int count, Func<HalfCounts, HalfCounts> lasting)
    {
        for (var from = 0; from < count; from++)
        {
            for (var to = 0; to < count; to++)
            {
                times[novice, from, to] = from == to ? 0 : Never;
            }
        }

        foreach (var stance in Stances)
        {
            foreach (var change in stance.Changes)
            {
                times[novice, (int)stance.Stance, (int)change.To] = lasting(novice == 1 ? change.Novice : change.Trained).Value;
            }
        }

        var direct = (int[,,])times.Clone();
        for (var from = 0; from < count; from++)
        {
            for (var to = 0; to < count && !((Stance)from).IsFloor(); to++)
            {
                for (var over = 0; over < count; over++)
                {
                    if (!((Stance)over).IsFloor() && !((Stance)to).IsFloor())
                    {
                        times[novice, from, to] = Math.Min(times[novice, from, to], Math.Min(Never, direct[novice, from, over] + direct[novice, over, to]));
                    }
                }
            }
        }
    }
}
