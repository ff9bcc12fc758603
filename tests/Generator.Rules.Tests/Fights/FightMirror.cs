using Generator.Domain;

namespace Generator.Rules.Tests.Fights;

/// <summary>A fight as a mirror shows it: left and right swap, the clock runs the other way.</summary>
internal static class FightMirror
{
    public static Fight Of(Fight fight) => new(
        fight.Brief with
        {
            Hero = fight.Brief.Hero with { Lead = fight.Brief.Hero.Lead?.Other(), Kneels = fight.Brief.Hero.Kneels?.Other(), Limits = Sides(fight.Brief.Hero.Limits) },
            Attackers = [.. fight.Brief.Attackers.Select(a => a with { Bearing = a.Bearing?.Mirrored, Kneels = a.Kneels?.Other(), Limits = Sides(a.Limits) })],
            Cameras = [.. fight.Brief.Cameras.Select(c => c with { Bearing = c.Bearing.Mirrored })],
            Floor = Of(fight.Brief.Floor),
        },
        [.. fight.Placements.Select(p => p with { Bearing = p.Bearing.Mirrored })],
        [.. fight.Moves.Select(Of)]);

    private static FloorPlan Of(FloorPlan floor) => floor with
    {
        MarkX = floor.Width - floor.MarkX,
        Mats = [.. floor.Mats.Select(m => m with { X = floor.Width - m.X - m.Width })],
        Obstacles = [.. floor.Obstacles.Select(o => o with { X = floor.Width - o.X - o.Width })],
    };

    private static Move Of(Move move) => move with
    {
        From = move.From?.Mirrored,
        Attack = move.Attack is null ? null : Mirror.Of(TheBook.Book.Attack(move.Attack)).Id,
        Technique = move.Technique is null ? null : Mirror.Of(TheBook.Book.Technique(move.Technique)).Id,
        Hurts = move.Hurts is { } hurts ? hurts with { Part = Sides([hurts.Part])[0] } : null,
    };

    private static IReadOnlyList<string> Sides(IReadOnlyList<string> limits) =>
        [.. limits.Select(l => l.Replace("left", "LEFT", StringComparison.Ordinal).Replace("right", "left", StringComparison.Ordinal).Replace("LEFT", "right", StringComparison.Ordinal))];
}
