using System.Numerics;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Cameras;

/// <summary>The fewest choices that together cover everything that any choice covers; among those the least disliked. Exact, by CP-SAT.</summary>
public static class SetCover
{
    /// <returns>Positions of the chosen, rising; null when the search was stopped before it was proved.</returns>
    public static IReadOnlyList<int>? Of(IReadOnlyList<Coverage> choices, CancellationToken stop = default)
    {
        var all = choices.Aggregate(BigInteger.Zero, (sum, c) => sum | c.Covers);
        if (all.IsZero)
        {
            return [];
        }

        var cp = new Cp();
        var taken = cp.Bools(choices.Count, "taken");
        for (var bit = 0; bit < all.GetBitLength(); bit++)
        {
            if (Has(all, bit))
            {
                cp.Model.AddBoolOr(Enumerable.Range(0, choices.Count).Where(i => Has(choices[i].Covers, bit)).Select(i => (ILiteral)taken[i]));
            }
        }

        var more = 1 + choices.Sum(c => (long)c.Dislike);
        cp.Model.Minimize(Cp.Sum(taken, choices.Select(c => more + c.Dislike)));
        using var session = new CpSession(cp.Model);
        return session.Solve(new SearchSettings { Time = TimeSpan.FromMinutes(1) }, stop: stop) == CpAnswer.Optimal
            ? [.. Enumerable.Range(0, choices.Count).Where(i => session.IsTrue(taken[i]))]
            : null;
    }

    private static bool Has(BigInteger bits, int bit) => !((bits >> bit) & BigInteger.One).IsZero;
}
