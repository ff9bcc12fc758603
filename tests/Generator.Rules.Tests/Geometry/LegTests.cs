using Generator.Rules.Bodies;
using Generator.Rules.Tests.Symmetry;
using Generator.Testing;

namespace Generator.Rules.Tests.Geometry;

/// <summary>How near two legs come to one another, quickly told and as sampled moment by moment.</summary>
public class LegTests
{
    /// <summary>
    /// Nobody is sent, turned or led faster than people walk at most, nor comes onto the floor faster than the brief lets them; whoever still falls at the next move arrives first. Nor is anybody who attacks
    /// before they have arrived where they were sent, save where reset-window says so.
    /// </summary>
    [Fact]
    public void Each_kind_of_movement_has_its_cap()
    {
        var (seen, hurried) = (new Dictionary<LegKind, int>(), 0);
        for (var seed = 1; seed <= 400; seed++)
        {
            var fight = RandomFight.Of(seed);
            foreach (var step in fight.Steps())
            {
                var isHurried = step.Attack is not null && !(step.SoonestContact <= step.Contact);
                hurried += isHurried ? 1 : 0;
                for (var a = 0; a < step.After.Attackers.Count; a++)
                {
                    var since = isHurried && step.Concerns(a) ? step.Contact : double.NegativeInfinity;
                    var enters = step.Index == 0 ? step.Before.Attackers[a].Way.Chain().Where(l => l.Kind == LegKind.Enters) : [];
                    foreach (var leg in enters.Concat(step.After.Attackers[a].Way.Chain().Where(l => l.Move == step.Index && l.From >= since && l.Kind is > LegKind.Comes and < LegKind.Lies)))
                    {
                        var most = leg.Kind == LegKind.Enters ? fight.Brief.Attackers[a].Speed : step.Scene.Settle.FastestSent.Value;
                        var speed = leg.Start.To(leg.End) * fight.Brief.Tempo.CountsPerMinute / (30 * (leg.To - leg.From));
                        Assert.True(speed <= most * 1.01, $"seed {seed}, move {step.Index + 1}: {leg.Kind} at {speed:0} cm a second");
                        seen[leg.Kind] = seen.GetValueOrDefault(leg.Kind) + 1;
                    }
                }
            }
        }

        Assert.True(hurried > 20, $"{hurried} attacks that come too soon");
        Assert.All(new[] { LegKind.Enters, LegKind.Led, LegKind.Shifts, LegKind.Guided, LegKind.Sent }, k => Assert.True(seen.GetValueOrDefault(k) > 20, $"{k} {seen.GetValueOrDefault(k)}"));
    }

    [Fact]
    public void What_is_told_quickly_is_what_is_seen_moment_by_moment()
    {
        var (clear, near, apart) = (0, 0, 0);
        var chance = new Chance(14);
        for (var i = 0; i < 3000; i++)
        {
            var (one, two) = (Any(chance), Any(chance));
            var (from, to) = (Math.Max(one.From, two.From), Math.Min(one.To, two.To));
            var seen = one.Apart(two);
            if (from >= to)
            {
                Assert.True(double.IsInfinity(seen));
                apart++;
                continue;
            }

            const int Samples = 400;
            var least = Enumerable.Range(0, Samples + 1).Min(s => Sampled(one, two, from + ((to - from) * s / Samples)));
            Assert.InRange(seen, least - 4, least + 1e-9);
            var wanted = chance.Whole(40, 120);
            if (one.IsClearOf(two, wanted))
            {
                clear++;
                Assert.True(seen >= wanted - 1e-9, $"{seen} cm are not {wanted}");
            }
            else if (seen < wanted)
            {
                near++;
            }
        }

        Assert.True(clear > 500 && near > 200 && apart > 200, $"{clear} clear, {near} near, {apart} at different times");
    }

    private static Leg Any(Chance chance)
    {
        var from = chance.Whole(0, 12);
        var start = Place.At(chance.Whole(0, 23), chance.Whole(50, 200));
        var end = chance.Percent(30) ? start : Place.At(chance.Whole(0, 23), chance.Whole(50, 200));
        return new Leg(start == end ? LegKind.Rests : LegKind.Comes, 0, from, from + chance.Whole(1, 12), start, end, null);
    }

    private static double Sampled(Leg one, Leg two, double moment) => On(one, moment).To(On(two, moment));

    private static Place On(Leg leg, double moment)
    {
        var share = (moment - leg.From) / (leg.To - leg.From);
        return new Place(leg.Start.X + ((leg.End.X - leg.Start.X) * share), leg.Start.Y + ((leg.End.Y - leg.Start.Y) * share));
    }
}
