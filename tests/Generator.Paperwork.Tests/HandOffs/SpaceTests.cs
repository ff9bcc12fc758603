using System.Text;
using Generator.Figures.Bodies;
using Generator.Figures.Painting;
using Generator.Paperwork.Following;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Tests.SafetyPapers;
using Generator.Rules;
using Generator.Testing;

namespace Generator.Paperwork.Tests.HandOffs;

/// <summary>The fight in space, read back by readers that had no part in writing it.</summary>
public sealed class SpaceTests
{
    private static readonly PaperSource Source = Ferry.Source.With(new PaperOptions { Cards = Ferry.Cards });

    private static readonly Acted Fight = Acted.Of(Source, Ferry.Cards);

    private static readonly ShowClock Clock = new(Source.Brief.Tempo);

    [Fact]
    public void A_motion_file_puts_every_joint_where_the_figure_has_it()
    {
        var (keys, frames) = (0, 0);
        foreach (var part in Fight.Parts)
        {
            var read = new BvhReading(BvhFile.Of(part, Source.Brief.Tempo, Fight.To, FrameRate.TwentyFive));
            Assert.Equal(1 / 25.0, read.FrameTime, 6);
            Assert.Equal(Skeleton.Joints + 1, read.Names.Count);
            Assert.Contains("Blocking_picture_not_how_it_is_taught", read.Names);
            for (var frame = 0; frame < read.Count; frame += 3)
            {
                var moment = Clock.MomentAt(frame * read.FrameTime);
                var (hips, rotations) = part.At(moment);
                Near(read.At(frame), Rig.Joints(hips, rotations, part.Stature), $"{part.Name} at {moment:0.0}");
                frames++;
            }

            // Where a frame falls on a key, the figure itself is what must come back.
            foreach (var key in part.Keys)
            {
                var frame = Clock.SecondsAt(key.Time) * 25;
                if (key.Time >= -8 && Math.Abs(frame - Math.Round(frame)) < 1e-6 && frame < read.Count)
                {
                    Near(read.At((int)Math.Round(frame)), [.. Enum.GetValues<Joint>().Take(Skeleton.Joints).Select(j => key.Body[j])], $"{part.Name} at the key {key.Time}");
                    keys++;
                }
            }
        }

        Assert.True(keys > 50 && frames > 500, $"{keys} keys, {frames} frames");

        static void Near(Dictionary<string, (double X, double Y, double Z)> read, IReadOnlyList<Vec> own, string when)
        {
            for (var i = 0; i < Skeleton.Joints; i++)
            {
                var (x, y, z) = read[((Joint)i).ToString()];
                var off = new Vec(x, y, z).To(own[i] * 100);
                Assert.True(off < 0.1, $"{when}: {(Joint)i} is {off:0.00} cm off");
            }
        }
    }

    [Fact]
    public void The_scene_puts_every_joint_where_the_figure_has_it()
    {
        var read = new GlbReading(FightGlb.Of(Source, Fight));
        var seen = 0;
        foreach (var part in Fight.Parts)
        {
            var nodes = Enumerable.Range(0, Skeleton.Joints).Select(i => read.Node($"{part.Name} {(Joint)i}")).ToList();
            foreach (var key in part.Keys.Where(k => k.Time > -8).Where((_, i) => i % 3 == 0))
            {
                for (var i = 0; i < Skeleton.Joints; i++)
                {
                    var world = read.World(nodes[i], Clock.SecondsAt(key.Time)).Translation;
                    var off = new Vec(world.X, world.Y, world.Z).To(key.Body[(Joint)i]);
                    Assert.True(off < 0.002, $"{part.Name} at {key.Time}: {(Joint)i} is {off:0.0000} m off");
                    seen++;
                }
            }
        }

        Assert.True(seen > 1000, $"{seen} joints");
    }

    [Fact]
    public void The_scene_has_the_floor_cameras_obstacles_times_and_the_caution()
    {
        var read = new GlbReading(FightGlb.Of(Source, Fight));
        var floor = read.World(read.Node("floor"), null);
        Assert.Equal(Source.Brief.Floor.Width.Value / 100.0, floor.M11, 3);
        Assert.Equal(Source.Brief.Floor.Depth.Value / 100.0, floor.M33, 3);
        Assert.NotEmpty(Source.Brief.Cameras);
        foreach (var camera in Source.Brief.Cameras)
        {
            var at = read.World(read.Node(camera.Text), null);
            Assert.Equal(camera.Height.Value / 100.0, at.M42, 3);
            Assert.Equal(camera.Distance.Value / 100.0, Math.Sqrt((at.M41 * at.M41) + (at.M43 * at.M43)), 3);

            // It looks along its own −Z at the mark.
            Assert.True((at.M31 * at.M41) + (at.M33 * at.M43) > 0);
        }

        Assert.NotEmpty(Source.Brief.Floor.Obstacles);
        Assert.All(Source.Brief.Floor.Obstacles, o => Assert.Equal(o.Width.Value / 100.0, read.World(read.Node(o.Name), null).M11, 3));

        var scene = read.Json.GetProperty("scenes")[0];
        var remarks = scene.GetProperty("extras");
        Assert.Equal(CardPicture.Caution, remarks.GetProperty("caution").GetString());
        Assert.Equal(CardPicture.Caution, read.Json.GetProperty("asset").GetProperty("copyright").GetString());
        Assert.Equal(Source.Steps.Count, remarks.GetProperty("moves").GetArrayLength());
        var contacts = remarks.GetProperty("moves").EnumerateArray().Select(m => m.GetProperty("contact").GetDouble()).ToList();
        var times = read.Times.ToList();
        Assert.All(contacts, c => Assert.True(times.Exists(t => Math.Abs(t - c) < 0.001), $"nothing is keyed at {c}"));
    }

    /// <summary>The near end of a box is in the hand of whoever holds the prop, and what lies has its middle where Replay has it; in the turn of another stay a box has no size.</summary>
    [Fact]
    public void Props_are_in_the_hand_that_holds_them_and_lie_where_they_fell()
    {
        var source = PropsSheetTests.Armed().With(Source.Options);
        var (fight, clock) = (source.Acted!, new ShowClock(source.Brief.Tempo));
        var read = new GlbReading(FightGlb.Of(source, fight));
        var (held, lying, gone) = (0, 0, 0);
        foreach (var prop in fight.Props)
        {
            foreach (var (i, stay) in prop.Stays.Index())
            {
                var node = read.Node($"{prop.Name} {i + 1}");
                if (stay.Lies is { } lies)
                {
                    var at = read.World(node, clock.SecondsAt(stay.From));
                    Assert.InRange(new Vec(at.M41, at.M42, at.M43).To(lies + (stay.Ways[0].Way * 0.5)), 0, 0.001);
                    lying++;
                    continue;
                }

                var tip = Skeleton.Arm(stay.Hand).Tip;
                foreach (var key in fight.Parts[stay.Holder + 1].Keys.Where(k => k.Time >= Math.Max(0, stay.From) && stay.Holds(k.Time)))
                {
                    var at = read.World(node, clock.SecondsAt(key.Time));
                    var (middle, along) = (new Vec(at.M41, at.M42, at.M43), new Vec(at.M21, at.M22, at.M23));
                    Assert.InRange(along.Length, prop.Length - 0.001, prop.Length + 0.001);
                    Assert.InRange((middle - (along * 0.5)).To(key.Body[tip]), 0, 0.01);
                    held++;
                }

                if (!double.IsInfinity(stay.To) && stay.To < fight.To)
                {
                    var away = read.World(node, clock.SecondsAt(stay.To));
                    Assert.InRange(new Vec(away.M21, away.M22, away.M23).Length, 0, 0.001);
                    gone++;
                }
            }
        }

        Assert.True(held > 5 && lying > 0 && gone > 0, $"{held} {lying} {gone}");
    }

    [Fact]
    public void Any_routine_gives_the_same_bytes_each_time_and_stays_on_the_floor()
    {
        var keys = 0;
        for (var seed = 0; seed < 8; seed++)
        {
            var routine = RandomRoutine.Of(seed, Ferry.Book);
            var source = PaperSource.Of(new Scene(routine.Brief, Ferry.Book), routine).With(Source.Options);
            var fight = Acted.Of(source, Ferry.Cards);
            Assert.Equal(FightGlb.Of(source, fight), FightGlb.Of(source, Acted.Of(source, Ferry.Cards)));
            Assert.Equal(BvhFile.Of(fight.Parts[0], source.Brief.Tempo, fight.To, FrameRate.Thirty), BvhFile.Of(Acted.Of(source, Ferry.Cards).Parts[0], source.Brief.Tempo, fight.To, FrameRate.Thirty));
            foreach (var part in fight.Parts)
            {
                Assert.All(part.Keys.Zip(part.Keys.Skip(1)), p => Assert.True(p.First.Time < p.Second.Time));
                Assert.All(part.Keys, k => Assert.True(Enum.GetValues<Joint>().Min(j => k.Body[j].Y) > -0.01, $"seed {seed}: {part.Name} at {k.Time}"));
                keys += part.Keys.Count;
            }
        }

        Assert.True(keys > 200, $"{keys} keys");
    }

    [ValidatorFact]
    public void The_validator_of_the_standard_finds_nothing()
    {
        foreach (var source in Enumerable.Range(0, 4).Select(s => RandomRoutine.Of(s, Ferry.Book)).Select(r => PaperSource.Of(new Scene(r.Brief, Ferry.Book), r)).Prepend(Source).Prepend(PropsSheetTests.Armed().With(Source.Options)))
        {
            var report = ValidatorFactAttribute.Report(FightGlb.Of(source, Acted.Of(source, Ferry.Cards)));
            var issues = report.RootElement.GetProperty("issues");
            Assert.True(
                issues.GetProperty("numErrors").GetInt32() + issues.GetProperty("numWarnings").GetInt32() == 0,
                issues.GetRawText()[..Math.Min(2000, issues.GetRawText().Length)]);
        }

        var broken = FightGlb.Of(Source, Fight);
        var text = Encoding.ASCII.GetString(broken);
        broken[text.IndexOf("\"LINEAR\"", StringComparison.Ordinal) is var linear && linear >= 0 ? linear + 1 : text.IndexOf("\"VEC3\"", StringComparison.Ordinal) + 1] = (byte)'Q';
        Assert.NotEqual(0, ValidatorFactAttribute.Report(broken).RootElement.GetProperty("issues").GetProperty("numErrors").GetInt32());
    }
}
