using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>Moves that belong together: each new attack, and each change of attacker, begins another. A move without a target goes with those before it.</summary>
/// <param name="First">Number of its first move, from 1.</param>
/// <param name="Moves">How many moves it has, 1 or more.</param>
/// <param name="Attacker">Against whom, from 0; −1 where the routine begins with moves that have no target.</param>
/// <param name="Start">Start of its first move, in half counts.</param>
public readonly record struct Exchange(int First, int Moves, int Attacker, int Start)
{
    /// <summary>Exchanges in a row that may have one length (the rule of three; common practice, no source).</summary>
    public const int MostAlike = 3;

    /// <summary>Moves that make a long one. Common practice, no source.</summary>
    public const int LongFrom = 5;

    public static IReadOnlyList<Exchange> Of(IReadOnlyList<Step> steps)
    {
        var exchanges = new List<Exchange>();
        foreach (var step in steps)
        {
            if (exchanges.Count == 0 || step.Opens)
            {
                exchanges.Add(new Exchange(step.Index + 1, 0, step.Target, step.Start));
            }

            exchanges[^1] = exchanges[^1] with { Moves = exchanges[^1].Moves + 1 };
        }

        return exchanges;
    }

    /// <summary>Exchanges that are the fourth or more of one length in a row.</summary>
    public static int TooAlike(IReadOnlyList<Exchange> exchanges)
    {
        var (over, run) = (0, 0);
        for (var i = 0; i < exchanges.Count; i++)
        {
            run = i > 0 && exchanges[i].Moves == exchanges[i - 1].Moves ? run + 1 : 1;
            over += run > MostAlike ? 1 : 0;
        }

        return over;
    }

    /// <summary>The longest run of exchanges of the same length: its first exchange (from 0) and how many they are; none gives 0.</summary>
    public static (int At, int Count) LongestAlike(IReadOnlyList<Exchange> exchanges)
    {
        var (best, at) = (0, 0);
        for (var from = 0; from < exchanges.Count;)
        {
            var to = from;
            while (to < exchanges.Count && exchanges[to].Moves == exchanges[from].Moves)
            {
                to++;
            }

            (best, at) = to - from > best ? (to - from, from) : (best, at);
            from = to;
        }

        return (at, best);
    }
}
