using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Solver.Constructing;
using Generator.Solver.Refuting;
using Generator.Solver.Tests.Constructing;
using Generator.Solver.Tests.Twin;
using Generator.Testing;

namespace Generator.Solver.Tests.Refuting;

public class SoundnessTests
{
    /// <summary>Arithmetic never speaks against a brief that a clean routine satisfies, asked for exactly what that routine has.</summary>
    [Fact]
    public void What_a_clean_routine_has_is_never_called_impossible()
    {
        var (cases, outs, setbacks) = (0, 0, 0);
        for (var seed = 0; seed < 14; seed++)
        {
            if (Drafts.OfSmall(seed).Routine is not { } routine)
            {
                continue;
            }

            foreach (var exact in Exactly.As(routine, Drafts.Book))
            {
                Assert.Empty(Refutations.Reasons(new Scene(exact, Drafts.Book)));
                cases++;
                outs += exact.Ending!.Out.Count;
                setbacks += exact.Setbacks!.Value;
            }
        }

        Assert.True(cases >= 30 && outs > 30 && setbacks > 0, $"{cases} cases, {outs} out, {setbacks} setbacks");
    }

    /// <summary>Whom nothing leaves where a finish can follow is never put out by a draft either by the quick pass, which does no arithmetic; limits are drawn by chance.</summary>
    [Fact]
    public void Who_can_get_into_no_posture_from_which_a_finish_follows_is_never_put_out()
    {
        var (denied, allowed) = (0, 0);
        for (var seed = 0; seed < 80 && (denied < 6 || allowed < 4); seed++)
        {
            var chance = new Chance(seed);
            var brief = new Brief
            {
                Length = new Length(24, null, 4),
                Floor = new FloorPlan { Surface = chance.Any<Surface>() },
                Hero = new HeroPart { Name = "Ines", Skill = chance.Any<Skill>(), Limits = chance.Some([.. Demand.All.Select(Limit.On)], 60) },
                Attackers = [new AttackerPart { Name = "Bruno", Skill = chance.Any<Skill>(), Limits = chance.Some([.. Demand.All.Select(Limit.On)], 25) }],
                Ending = new Ending(["Bruno"], null),
                Setbacks = 0,
            };
            if (PostureRoutes.CanGoOut(new Workings(new Scene(brief, Drafts.Book)), 0))
            {
                allowed++;
                continue;
            }

            denied++;
            if (denied > 6)
            {
                continue;
            }

            new ConstructivePass().Run(new Scene(brief, Drafts.Book), new DraftOptions { Rounds = 1 }, (_, _) => Assert.Fail($"{seed}: drafted"), CancellationToken.None, CancellationToken.None);
        }

        Assert.True(denied > 3 && allowed > 3, $"{denied} denied, {allowed} allowed");
    }

    /// <summary>Two posts close all bearings but 12; Ada at 1 m and Bram at 2 m have just room there, and a centimetre less is none.</summary>
    [Fact]
    public void The_last_centimetres_of_a_floor_count_as_the_spacing_measures_them()
    {
        const string Text = """{ "length": { "moves": 8, "tolerance": 4 }, "floor": { "width": 1, "depth": 2.6, "mark": [0.5, 0.3], "obstacles": [{ "name": "left post", "x": 0, "y": 0.9, "width": 0.05, "depth": 0.05 }, { "name": "right post", "x": 0.95, "y": 0.9, "width": 0.05, "depth": 0.05 }] }, "attackers": [{ "name": "Ada", "bearing": "12", "distance": 1, "skill": "stunt" }, { "name": "Bram", "bearing": "12", "distance": 2, "skill": "stunt" }] }""";
        var brief = BriefReader.Parse(new SourceFile("b.json", Text), Drafts.Book).Value!;
        Assert.True(Packing.Fits(brief, Drafts.Book.Settle));
        Assert.False(Packing.Fits(brief with { Floor = brief.Floor with { Depth = new(259) } }, Drafts.Book.Settle));
    }

    /// <summary>Small, narrow and oddly shaped floors with obstacles, cameras and a mark near an edge: what a draft has there is possible there, to the centimetre.</summary>
    [Fact]
    public void What_a_clean_routine_has_on_an_odd_floor_is_never_called_impossible()
    {
        var (cases, tight, obstacles, cameras) = (0, 0, 0, 0);
        for (var seed = 0; seed < 30; seed++)
        {
            var brief = OddFloors.Brief(new Chance(seed));
            var drafted = Drafts.Rounds(brief, seed, 1);
            if (drafted.Routine is not { } routine)
            {
                continue;
            }

            var exact = Exactly.As(routine, Drafts.Book);
            Assert.All(exact, e => Assert.Empty(Refutations.Reasons(new Scene(e, Drafts.Book))));
            cases++;
            tight += brief.Floor.Width.Value < 400 || brief.Floor.Depth.Value < 400 ? 1 : 0;
            obstacles += brief.Floor.Obstacles.Count > 0 ? 1 : 0;
            cameras += brief.Cameras.Count > 0 ? 1 : 0;
        }

        Assert.True(cases >= 6 && tight >= 2 && obstacles >= 3 && cameras >= 3, $"{cases} cases, {tight} on tight floors, {obstacles} with obstacles, {cameras} with cameras");
    }

    /// <summary>A made-up library so small that every routine is tried: what the arguments deny none of them has, and what one of them has they do not deny.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void What_is_denied_no_routine_of_a_tiny_world_has(bool seconds)
    {
        var (denied, asked) = (0, 0);
        for (var seed = 1; seed <= 60; seed++)
        {
            var world = new TinyWorld(seed, seconds);
            if (Refutations.First(world.Scene) is not null)
            {
                Assert.Empty(Exhaustive.Clean(world));
                denied++;
            }

            var routines = Exhaustive.Routines(world);
            foreach (var exact in routines.Where((_, i) => i % Math.Max(1, routines.Count / 4) == 0).SelectMany(r => Exactly.As(r, world.Book)))
            {
                Assert.Empty(Refutations.Reasons(new Scene(exact, world.Book)));
                asked++;
            }
        }

        Assert.True(denied >= 2 && asked >= 20, $"{denied} denied, {asked} asked for exactly");
    }
}
