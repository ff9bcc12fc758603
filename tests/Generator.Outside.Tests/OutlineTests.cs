using Generator.Domain;
using Generator.Paperwork;
using Generator.Rules;
using Generator.Solver;
using Generator.Solver.Questions;
using Generator.Testing;
using Newtonsoft.Json.Linq;
using Xunit.Abstractions;

namespace Generator.Outside.Tests;

/// <summary>Bodies have a size: drafts played half count by half count, with trigonometry of its own and no word of the rules.</summary>
public sealed class OutlineTests(ITestOutputHelper output)
{
    /// <summary>A twelfth of the drafts that are looked at with GENERATOR_OUTLINES=300, which takes a minute and a half of processor time.</summary>
    private static readonly int Drafts = int.TryParse(Environment.GetEnvironmentVariable("GENERATOR_OUTLINES"), System.Globalization.CultureInfo.InvariantCulture, out var asked) ? asked : 25;

    private static readonly string[] Names = ["Ada", "Bram", "Cleo", "Dries", "Esra"];

    [Fact]
    public void Nobody_stands_in_another_or_on_a_body()
    {
        var (count, across, drafted) = (new OutlineCount(), Across(), 0);
        for (var seed = 1; drafted < Drafts && seed <= 2 * Drafts; seed++)
        {
            var draft = Drafting.Draft(Brief(seed), Outside.Book, new DraftOptions { Seed = seed, Rounds = 1, Time = TimeSpan.FromHours(1) });
            if (draft.Routine is not { } routine)
            {
                continue;
            }

            drafted++;
            new OutlineWatch(PaperSource.Of(new Scene(routine.Brief, Outside.Book), routine), across, $"seed {seed}", count).Run();
        }

        output.WriteLine($"{drafted} drafts: {count}");
        output.WriteLine(string.Join("\n", count.Faults.Take(60)));
        Assert.True(drafted == Drafts, $"only {drafted} drafts");
        Assert.All(count.Covered, c => Assert.True(c.Value > 0, $"nobody was seen {c.Key}"));
        Assert.True(count.Faults.Count == 0, $"{count.Faults.Count} pairs in one place, the first: {string.Join("; ", count.Faults.Take(5))}");
    }

    /// <summary>The outlines themselves, by hand.</summary>
    [Theory]
    [InlineData(100, 0, 150, 0, 50)]
    [InlineData(0, 100, 0, 100, 0)]
    [InlineData(30, 40, 0, 0, 50)]
    public void Two_upright(double x1, double y1, double x2, double y2, double apart) => Assert.Equal(apart, Outline.Upright(x1, y1).Apart(Outline.Upright(x2, y2)), 6);

    [Fact]
    public void One_who_lies()
    {
        // Feet at 1 m towards 12, 1.80 m tall: the line goes from 1 m to 2.3 m.
        var body = Outline.FeetNear(0, 100, 180);
        Assert.Equal(100, body.Apart(Outline.Upright(0, 0)), 6);
        Assert.Equal(60, body.Apart(Outline.Upright(60, 150)), 6);
        Assert.Equal(20, body.Apart(Outline.Upright(0, 250)), 6);

        // Across the same place it reaches 65 cm to either side, and crosses the other body.
        var square = Outline.Across(0, 100, 180);
        Assert.Equal(100, square.Apart(Outline.Upright(0, 0)), 6);
        Assert.Equal(35, square.Apart(Outline.Upright(100, 100)), 6);
        Assert.Equal(0, square.Apart(Outline.FeetNear(0, 40, 180)), 6);
    }

    /// <summary>Two in one place: where an attack is thrown from, over a body, on the way onto the floor, in a fall.</summary>
    [Theory]
    [InlineData("Bruno@12/250/0 Wanda@2/300/0", "0 Bruno swing-right outside-block-left limb-stopped ; 3 Bruno - cross-right head-back ; 12 Wanda@12 swing-left outside-block-right limb-stopped", "Bruno", "Wanda")]
    [InlineData("Bruno@12/150/0 Wanda@12:30/300/0", "0 Bruno swing-right outside-block-left limb-stopped ; 2 Bruno - step-punch-right back-fall ; 8 Wanda swing-right outside-block-left limb-stopped", "Bruno", "Wanda")]
    [InlineData("Bruno@1:30/283/0 Wanda@3/300/20 Ada@9/250/0", "22 Ada swing-right outside-block-left limb-stopped", "Bruno", "Wanda")]
    [InlineData("Bruno@12/150/0 Wanda@12:30/180/0", "0 Bruno swing-right outside-block-left limb-stopped ; 2 Bruno - step-punch-right back-fall ; 20 Bruno swing-right outside-block-left limb-stopped", "Bruno", "Wanda")]
    public void Two_planted_in_one_place_are_found(string cast, string moves, string one, string other)
    {
        var count = Watched(cast, moves);
        Assert.Contains(count.Faults, f => f.Contains(one, StringComparison.Ordinal) && f.Contains(other, StringComparison.Ordinal));
    }

    /// <summary>The first of these again, with Wanda coming from where nobody stands.</summary>
    [Fact]
    public void Nothing_is_found_where_nothing_is() =>
        Assert.Empty(Watched("Bruno@12/250/0 Wanda@2/300/0", "0 Bruno swing-right outside-block-left limb-stopped ; 3 Bruno - cross-right head-back ; 12 Wanda swing-left outside-block-right limb-stopped").Faults);

    /// <summary>A routine as it is, on a large floor with a way in at 12.</summary>
    private static OutlineCount Watched(string cast, string moves)
    {
        var floor = new FloorPlan { Width = new(1200), Depth = new(1200), MarkX = new(600), MarkY = new(600), WaysIn = [new WayIn("the door", new(600), new(1200))] };
        var routine = WrittenFight.Of(new Brief { Floor = floor, Attackers = [] }, Outside.Book, cast, moves);
        var count = new OutlineCount();
        new OutlineWatch(PaperSource.Of(new Scene(routine.Brief, Outside.Book), routine), Across(), "planted", count).Run();
        return count;
    }

    private static HashSet<string> Across()
    {
        var file = Directory.EnumerateFiles(AppContext.BaseDirectory, "reactions.json", SearchOption.AllDirectories).First();
        return [.. JObject.Parse(File.ReadAllText(file))["reactions"]!.Where(r => (string?)r["lies"] == "across").Select(r => (string)r["id"]!)];
    }

    /// <summary>Mostly small: sizes, casts, tempos, floors, things on them, cameras, entrances.</summary>
    internal static Brief Brief(int seed)
    {
        var chance = new Chance(seed);
        var cast = chance.Whole(2, 5);
        var (width, depth) = (chance.Whole(70, 120) * 10, chance.Whole(70, 120) * 10);
        return new Brief
        {
            Tempo = new Tempo(chance.Whole(80, 110)),
            Length = new Length(null, (cast * chance.Whole(3, 6)) + 2, 2),
            Floor = new FloorPlan
            {
                Width = new Centimetres(width),
                Depth = new Centimetres(depth),
                MarkX = new Centimetres(width / 2),
                MarkY = new Centimetres(depth / 2),
                Obstacles = chance.List(0, 2, i => new Obstacle("crate " + i, new Centimetres(i * (width - 80)), new Centimetres(chance.Whole(0, depth - 60)), new Centimetres(80), new Centimetres(60))),
            },
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt, Height = new Centimetres(chance.Whole(155, 190)) },
            Attackers = [.. Names.Take(cast).Select(n => new AttackerPart
            {
                Name = n,
                Skill = chance.One([Skill.Trained, Skill.Stunt]),
                Height = new Centimetres(chance.Whole(155, 195)),
                Speed = chance.Whole(150, 350),
                Entrance = chance.Percent(20) ? new HalfCounts(chance.Whole(4, 16)) : null,
            })],
            Cameras = chance.List(0, 2, i => new Camera("camera " + i, new Bearing(chance.Whole(0, 23)), new Centimetres(600), new Centimetres(150))),
            Setbacks = chance.Maybe(() => chance.Whole(0, 1)),
        };
    }
}
