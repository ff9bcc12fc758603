using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Constructing;

public class ArithmeticTests
{
    /// <summary>Arithmetic never speaks against a brief that a clean routine satisfies, asked for exactly what that routine has.</summary>
    [Fact]
    public void What_a_clean_routine_has_is_never_called_impossible()
    {
        var (cases, outs, setbacks) = (0, 0, 0);
        for (var seed = 0; seed < 14; seed++)
        {
            if (Drafts.Draft(Drafts.Small(seed), seed, 3).Routine is not { } routine)
            {
                continue;
            }

            var steps = Replay.Of(new Scene(routine.Brief, Drafts.Book), routine);
            var counts = (steps[^1].After.Time + 1) / 2;
            foreach (var length in (Length[])[new(counts, null, 0), new(counts, routine.Moves.Count, 0), new(null, routine.Moves.Count, 0)])
            {
                var exact = routine.Brief with
                {
                    Length = length,
                    Setbacks = steps.Count(s => s.Technique!.Family == Family.Setback),
                    Pauses = steps.Count(s => s.Technique!.IsStoryPause),
                    Attackers = [.. routine.Brief.Attackers.Select((a, i) => a with { Bearing = routine.Placements[i].Bearing, Distance = routine.Placements[i].Distance, Entrance = routine.Placements[i].Entrance })],
                };
                Assert.Empty(BriefChecks.Clash(new Scene(exact, Drafts.Book)));
                cases++;
                outs += exact.Ending!.Out.Count;
                setbacks += exact.Setbacks.Value;
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
            if (FinishReach.CanGoOut(new Scene(brief, Drafts.Book), 0))
            {
                allowed++;
                continue;
            }

            denied++;
            if (denied > 6)
            {
                continue;
            }

            new ConstructivePass().Run(new Scene(brief, Drafts.Book), new DraftOptions { Rounds = 2 }, (_, _) => Assert.Fail($"{seed}: drafted"), CancellationToken.None, CancellationToken.None);
        }

        Assert.True(denied > 3 && allowed > 3, $"{denied} denied, {allowed} allowed");
    }

    /// <summary>Two posts close all bearings but 12; Ada at 1 m and Bram at 2 m have just room there, and a centimetre less is none.</summary>
    [Fact]
    public void The_last_centimetres_of_a_floor_count_as_the_spacing_measures_them()
    {
        const string Text = """{ "length": { "moves": 8, "tolerance": 4 }, "floor": { "width": 1, "depth": 2.6, "mark": [0.5, 0.3], "obstacles": [{ "name": "left post", "x": 0, "y": 0.9, "width": 0.05, "depth": 0.05 }, { "name": "right post", "x": 0.95, "y": 0.9, "width": 0.05, "depth": 0.05 }] }, "attackers": [{ "name": "Ada", "bearing": "12", "distance": 1, "skill": "stunt" }, { "name": "Bram", "bearing": "12", "distance": 2, "skill": "stunt" }] }""";
        var brief = BriefReader.Parse(new SourceFile("b.json", Text), Drafts.Book).Value!;
        Assert.Equal(2, FloorRoom.For(new Scene(brief, Drafts.Book)));
        Assert.Empty(BriefChecks.Clash(new Scene(brief, Drafts.Book)));
        Assert.Equal(1, FloorRoom.For(new Scene(brief with { Floor = brief.Floor with { Depth = new(259) } }, Drafts.Book)));
    }

    /// <summary>Kinds of brief of which anybody sees that they cannot be.</summary>
    [Theory]
    [InlineData("""{ "length": { "counts": 40 }, "floor": { "width": 2.2, "depth": 2.2, "mark": [1.1, 1.1] }, "attackers": [{"name":"A"},{"name":"B"},{"name":"C"},{"name":"D"},{"name":"E"},{"name":"F"}] }""", "6 attackers do not fit on a floor of 2.20 m by 2.20 m", "at most 4")]
    [InlineData("""{ "length": { "counts": 40 }, "floor": { "width": 2.4, "depth": 2.4, "mark": [1.2, 1.2] }, "attackers": [{"name":"A"},{"name":"B"},{"name":"C"},{"name":"D"},{"name":"E"},{"name":"F"},{"name":"G"},{"name":"H"}] }""", "8 attackers do not fit", "at most 4")]
    [InlineData("""{ "length": { "counts": 20 }, "floor": { "width": 1.2, "depth": 1.2, "mark": [0.6, 0.6] }, "attackers": [{"name":"A"}] }""", "1 attackers do not fit", "room for nobody")]
    [InlineData("""{ "length": { "counts": 10, "moves": 100, "tolerance": 0 }, "attackers": [{"name":"A"}], "ending": { "out": [] } }""", "no room for 100 moves", "10 counts")]
    [InlineData("""{ "length": { "counts": 20, "tolerance": 0 }, "attackers": [{"name":"A", "entrance": 21}], "ending": { "out": ["A"] } }""", "comes in at count 21", "as good as over")]
    public void Impossible_briefs_are_seen_by_arithmetic(string text, string says, string also)
    {
        var read = BriefReader.Parse(new SourceFile("b.json", text), Drafts.Book);
        Assert.True(read.IsGood, read.ToText());
        var clash = string.Join('\n', BriefChecks.Clash(new Scene(read.Value, Drafts.Book)));
        Assert.Contains(says, clash, StringComparison.Ordinal);
        Assert.Contains(also, clash, StringComparison.Ordinal);
    }
}
