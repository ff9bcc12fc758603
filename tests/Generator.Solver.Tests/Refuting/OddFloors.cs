using Generator.Domain;
using Generator.Testing;

namespace Generator.Solver.Tests.Refuting;

/// <summary>Short fights on floors that are small, narrow, or full of things.</summary>
internal static class OddFloors
{
    private static readonly string[] Names = ["Bruno", "Wanda", "Piet", "Lotte"];

    public static Brief Brief(Chance chance)
    {
        var cast = chance.Whole(1, 4);
        var (width, depth) = (chance.Whole(100, 700), chance.Whole(250, 700));
        var mark = (X: chance.Whole(width / 8, width - (width / 8)), Y: chance.Whole(depth / 8, depth - (depth / 8)));
        return new Brief
        {
            Length = new Length(null, chance.Whole(3 * cast, 6 * cast), 2),
            Floor = new FloorPlan
            {
                Width = new Centimetres(width),
                Depth = new Centimetres(depth),
                MarkX = new Centimetres(mark.X),
                MarkY = new Centimetres(mark.Y),
                Obstacles = chance.List(0, 3, i => new Obstacle("crate " + i, new Centimetres(chance.Whole(0, width)), new Centimetres(chance.Whole(0, depth)), new Centimetres(chance.Whole(5, 120)), new Centimetres(chance.Whole(5, 120)))),
            },
            Cameras = chance.List(0, 2, i => new Camera("camera " + i, new Bearing(chance.Whole(0, 23)), new Centimetres(chance.Whole(150, 500)), new Centimetres(150))),
            Attackers = [.. Names.Take(cast).Select(n => new AttackerPart { Name = n, Skill = chance.Any<Skill>(), Distance = chance.Maybe(() => new Centimetres(chance.Whole(100, 260))), Entrance = chance.Percent(30) ? new HalfCounts(chance.Whole(0, 12)) : null })],
        };
    }
}
