using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>
/// Whether the attackers fight differently: what the kind of an attack says of who throws it. Mutual information in bits (Shannon 1948), beside
/// what the same attacks give when their throwers are shuffled, since few attacks share something by chance alone.
/// </summary>
/// <param name="Attacks">How many attacks.</param>
/// <param name="Bits">Mutual information of attacker and kind, 0 and more.</param>
/// <param name="Shuffled">Its mean over shuffles.</param>
/// <param name="Spread">Standard deviation over shuffles.</param>
/// <param name="Told">Attacks whose thrower is told by their kind: for each kind those of whoever throws most of it (the guess behind lambda of Goodman and Kruskal 1954, from memory).</param>
public sealed record Manners(int Attacks, double Bits, double Shuffled, double Spread, int Told)
{
    private const int Shuffles = 200;

    private const int Seed = 17;

    /// <summary>How many standard deviations above chance; 0 where shuffling changes nothing.</summary>
    public double Score => Spread < 1e-9 ? 0 : (Bits - Shuffled) / Spread;

    public static Manners Of(IReadOnlyList<Step> steps) => Of([.. steps.Where(s => s.Attack is not null && s.HasTarget).Select(s => (s.Row.Attacker, (int)s.Attack!.Kind))]);

    /// <param name="attacks">Thrower and kind of each.</param>
    public static Manners Of(IReadOnlyList<(int Who, int Kind)> attacks)
    {
        var who = attacks.Select(a => a.Who).ToArray();
        var kinds = attacks.Select(a => a.Kind).ToArray();
        var random = new Random(Seed);
        var shuffled = new double[Shuffles];
        var mixed = who.ToArray();
        for (var i = 0; i < Shuffles; i++)
        {
            random.Shuffle(mixed);
            shuffled[i] = BitsOf(mixed, kinds);
        }

        var mean = shuffled.Average();
        var told = attacks.GroupBy(a => a.Kind).Sum(g => g.GroupBy(a => a.Who).Max(w => w.Count()));
        return new Manners(attacks.Count, BitsOf(who, kinds), mean, Math.Sqrt(shuffled.Sum(s => (s - mean) * (s - mean)) / Shuffles), told);
    }

    private static double BitsOf(int[] who, int[] kinds)
    {
        var n = (double)who.Length;
        var (byWho, byKind, both) = (new Dictionary<int, int>(), new Dictionary<int, int>(), new Dictionary<(int, int), int>());
        for (var i = 0; i < who.Length; i++)
        {
            byWho[who[i]] = byWho.GetValueOrDefault(who[i]) + 1;
            byKind[kinds[i]] = byKind.GetValueOrDefault(kinds[i]) + 1;
            both[(who[i], kinds[i])] = both.GetValueOrDefault((who[i], kinds[i])) + 1;
        }

        return Math.Max(0, both.Sum(b => b.Value / n * Math.Log2(b.Value * n / ((double)byWho[b.Key.Item1] * byKind[b.Key.Item2]))));
    }
}
