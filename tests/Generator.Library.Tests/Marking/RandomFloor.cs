using System.Globalization;
using Generator.Domain;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Tests.Marking;

/// <summary>A brief on a floor that is drawn, with its marks as they are asked for; and what is true of marks on it, worked out point by point and without the program's own geometry.</summary>
internal static class RandomFloor
{
    private static readonly string?[] Kinds = ["table", "wall", "chair", "rail", null];

    /// <summary>A brief with things, ways in, props and cameras on some floors; a door and a crate on each.</summary>
    public static JObject Brief(int seed)
    {
        var dice = new Random(seed);
        double width = dice.Next(5, 13), depth = dice.Next(5, 11);
        var things = Enumerable.Range(0, dice.Next(0, 5)).Select(i =>
        {
            var thing = Thing("thing " + i.ToString(CultureInfo.InvariantCulture), dice.Next((int)(10 * width)) / 10.0, dice.Next((int)(10 * depth)) / 10.0, dice.Next(2, 25) / 10.0, dice.Next(2, 15) / 10.0);
            if (Kinds[dice.Next(Kinds.Length)] is { } kind)
            {
                thing["kind"] = kind;
            }

            return thing;
        });
        var brief = new JObject
        {
            ["length"] = new JObject { ["counts"] = 48 },
            ["attackers"] = new JArray(new JObject { ["name"] = "Bruno" }, new JObject { ["name"] = "Wanda" }),
            ["floor"] = new JObject
            {
                ["width"] = width,
                ["depth"] = depth,
                ["obstacles"] = new JArray(things.Append(Thing("crate", width - 1, depth - 1, 0.8, 0.8))),
                ["waysIn"] = new JArray(new JObject { ["name"] = "door", ["x"] = 0, ["y"] = depth / 3 }),
            },
        };
        if (seed % 3 == 0)
        {
            brief["cameras"] = new JArray(new JObject { ["name"] = "A", ["bearing"] = "4:30", ["distance"] = 2.5, ["height"] = 1.5 });
        }

        if (seed % 4 == 0)
        {
            brief["props"] = new JArray(new JObject { ["kind"] = "stick", ["x"] = width / 4, ["y"] = depth / 4 });
        }

        return brief;
    }

    /// <summary>What is wrong with marks; nothing for good ones.</summary>
    public static IEnumerable<string> Faults(Brief brief, Book book)
    {
        var marks = brief.Marks;
        for (var i = 0; i < marks.Count; i++)
        {
            if (!IsClear(brief, marks[i].X.Value, marks[i].Y.Value, 30, 75, 40))
            {
                yield return $"{marks[i]} is not clear";
            }

            foreach (var other in marks.Skip(i + 1).Where(o => Far(marks[i], o) < 50))
            {
                yield return $"{marks[i]} and {other} are one place";
            }

            if (i > 0 && !Leads(brief, marks[i - 1], marks[i]))
            {
                yield return $"from {marks[i - 1]} to {marks[i]} the way is not clear";
            }

            if (i > 0 && !book.Techniques.Any(t => t.Travel is { How: TravelKind.ByWill } travel && t.Uses is null && travel.Least.Value <= Far(marks[i - 1], marks[i]) && Far(marks[i - 1], marks[i]) <= travel.Most.Value))
            {
                yield return $"no travel move leads from {marks[i - 1]} to {marks[i]}";
            }
        }

        if (marks.Select(m => m.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count() != marks.Count || marks.Count == 0 || (brief.Floor.MarkX, brief.Floor.MarkY) != (marks[0].X, marks[0].Y))
        {
            yield return "two names are one, or the fight begins elsewhere";
        }
    }

    /// <summary>Centimetres between two marks.</summary>
    public static double Far(HeroMark one, HeroMark other) => double.Hypot(one.X.Value - other.X.Value, one.Y.Value - other.Y.Value);

    private static bool Leads(Brief brief, HeroMark from, HeroMark to)
    {
        var steps = (int)Far(from, to) / 5;
        return Enumerable.Range(0, steps + 1).All(s => IsClear(brief, from.X.Value + ((to.X.Value - from.X.Value) * s / (double)steps), from.Y.Value + ((to.Y.Value - from.Y.Value) * s / (double)steps), 30, 75, 35));
    }

    private static bool IsClear(Brief brief, double x, double y, double things, double cameras, double props)
    {
        var floor = brief.Floor;
        const double Slack = 0.001;
        return x >= things - Slack && y >= things - Slack && x <= floor.Width.Value - things + Slack && y <= floor.Depth.Value - things + Slack
            && floor.Obstacles.All(o => Math.Max(Math.Abs(x - o.X.Value - (o.Width.Value / 2.0)) - (o.Width.Value / 2.0), Math.Abs(y - o.Y.Value - (o.Depth.Value / 2.0)) - (o.Depth.Value / 2.0)) >= things - Slack)
            && brief.Cameras.Where(c => c.IsOnTheGround).All(c => Far(c.Bearing, c.Distance.Value) is var (dx, dy) && double.Hypot(floor.MarkX.Value + dx - x, floor.MarkY.Value + dy - y) >= cameras - Slack)
            && brief.Props.All(p => double.Hypot(p.X.Value - x, p.Y.Value - y) >= props - Slack);
    }

    private static (double X, double Y) Far(Bearing bearing, int distance) => (distance * Math.Sin(bearing.HalfHours * Math.PI / 12), distance * Math.Cos(bearing.HalfHours * Math.PI / 12));

    private static JObject Thing(string name, double x, double y, double width, double depth) => new() { ["name"] = name, ["x"] = x, ["y"] = y, ["width"] = width, ["depth"] = depth };
}
