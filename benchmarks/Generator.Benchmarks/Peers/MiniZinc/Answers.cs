using Google.OrTools.Sat;

namespace Generator.Benchmarks.Peers.MiniZinc;

/// <summary>Which variables tell the routine.</summary>
internal static class Answers
{
    /// <summary>Everything that reading rows and placements off a model looks at.</summary>
    public static IEnumerable<IntVar> Asked(PlainModel plain) =>
        plain.Model.Slots.SelectMany(s => new[] { s.Used, s.Target, s.WalkRound, s.Start, s.TargetBearing, s.SeenFrom, s.Linger }.Concat(s.Uses).Concat(s.Attacks).Concat(s.Reactions))
            .Concat(plain.Model.Start.Attackers.SelectMany(a => new[] { a.Bearing, a.Distance })).Concat(plain.Model.Entrances);
}
