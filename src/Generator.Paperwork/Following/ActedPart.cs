using Generator.Figures.Bodies;

namespace Generator.Paperwork.Following;

/// <summary>One performer in space through a whole routine.</summary>
/// <param name="Name">As in the brief.</param>
/// <param name="Attacker">Number in the brief, from 0; −1 for the hero.</param>
/// <param name="Stature">Metres.</param>
/// <param name="Keys">In order of time, at least one; between two of them every joint turns evenly and the hips go straight.</param>
public sealed record ActedPart(string Name, int Attacker, double Stature, IReadOnlyList<ActedKey> Keys)
{
    /// <summary>The last key before a moment, or at it; before the first the first.</summary>
    public ActedKey KeyAt(double time) => Keys.LastOrDefault(k => k.Time <= time, Keys[0]);

    /// <summary>Where the hips are and how every joint is turned at a moment in half counts.</summary>
    public (Vec Hips, IReadOnlyList<Rotation> Rotations) At(double time)
    {
        var next = Keys.TakeWhile(k => k.Time <= time).Count();
        if (next == 0 || next == Keys.Count)
        {
            var only = Keys[Math.Max(0, next - 1)];
            return (only.Body[Joint.Hips], only.Rotations);
        }

        var (one, two) = (Keys[next - 1], Keys[next]);
        var share = (time - one.Time) / (two.Time - one.Time);
        var hips = one.Body[Joint.Hips] + ((two.Body[Joint.Hips] - one.Body[Joint.Hips]) * share);
        return (hips, [.. one.Rotations.Zip(two.Rotations, (a, b) => a.Towards(b, share))]);
    }
}
