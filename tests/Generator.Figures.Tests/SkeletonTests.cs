using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Poses;
using Generator.Figures.Posing;

namespace Generator.Figures.Tests;

public class SkeletonTests
{
    private static readonly (Joint From, Joint To, double Share)[] Bones =
    [
        (Joint.Hips, Joint.Waist, Skeleton.LowerTrunk), (Joint.Waist, Joint.Chest, Skeleton.MiddleTrunk), (Joint.Chest, Joint.Neck, Skeleton.UpperTrunk),
        (Joint.Neck, Joint.Head, Skeleton.Neck), (Joint.Head, Joint.Crown, Skeleton.Head),
        (Joint.Neck, Joint.LeftShoulder, Skeleton.ShoulderAside), (Joint.Neck, Joint.RightShoulder, Skeleton.ShoulderAside),
        (Joint.LeftShoulder, Joint.LeftElbow, 0.186), (Joint.RightShoulder, Joint.RightElbow, 0.186),
        (Joint.LeftElbow, Joint.LeftWrist, 0.146), (Joint.RightElbow, Joint.RightWrist, 0.146),
        (Joint.Hips, Joint.LeftHip, Skeleton.HipAside), (Joint.Hips, Joint.RightHip, Skeleton.HipAside),
        (Joint.LeftHip, Joint.LeftKnee, 0.245), (Joint.RightHip, Joint.RightKnee, 0.245),
        (Joint.LeftKnee, Joint.LeftAnkle, 0.246), (Joint.RightKnee, Joint.RightAnkle, 0.246),
    ];

    [Fact]
    public void Who_stands_upright_is_as_tall_as_they_are_and_joints_lie_as_published()
    {
        var pose = new Pose { Id = "upright" };
        var figure = Kinematics.Of(pose, 1.756);
        Assert.Equal(1.756, figure[Joint.Crown].Y, 9);
        Assert.Equal(0.530 * 1.756, figure[Joint.LeftHip].Y, 9);
        Assert.Equal(0.818 * 1.756, figure[Joint.LeftShoulder].Y, 9);
        Assert.Equal(0.285 * 1.756, figure[Joint.RightKnee].Y, 9);
        Assert.Equal(0.870 * 1.756, figure[Joint.Head].Y, 9);
        Assert.Equal(0.390 * 1.756, figure[Joint.LeftShoulder].To(figure[Joint.LeftHand]), 9);
        Assert.Equal(Skeleton.Joints + 3, Enum.GetValues<Joint>().Length);
    }

    [Fact]
    public void Bones_keep_their_lengths_in_every_picture()
    {
        var seen = 0;
        foreach (var (card, _, figure) in Library.Figures(Library.Cards(1.5, 2.0, 0.5)))
        {
            Assert.All(Bones, b => Assert.True(Math.Abs(figure[b.From].To(figure[b.To]) - (b.Share * figure.Stature)) < 1e-9, $"{card.Id}: {b.From} to {b.To}"));
            seen++;
        }

        Assert.True(seen > 2000);
    }

    [Fact]
    public void A_pose_mirrored_twice_is_itself_and_mirrored_once_is_the_mirror_image()
    {
        foreach (var pose in Library.Poses.Poses.Values)
        {
            Assert.Equal(pose, pose.Mirrored.Mirrored);
            var (own, other) = (Kinematics.Of(pose, 1.7).Mirrored, Kinematics.Of(pose.Mirrored, 1.7));
            Assert.All(Enum.GetValues<Joint>(), j => Assert.True(own[j].To(other[j]) < 1e-9, $"{pose.Id}: {j}"));
        }
    }

    [Fact]
    public void A_record_and_its_mirror_have_pictures_that_mirror_each_other()
    {
        var cards = new Cards(Library.Poses, Library.Book);
        foreach (var technique in Library.Book.Techniques.Where(t => t.Side is not null))
        {
            var (own, other) = (cards.Of(technique)!, cards.Of(Mirror.Of(technique))!);
            Assert.Equal(own.Side.Other(), other.Side);
            Assert.All(
                own.Shown.Zip(other.Shown),
                f => Assert.All(Enum.GetValues<Joint>(), j => Assert.True(f.First.Hero is null || f.First.Hero.Mirrored[j].To(f.Second.Hero![j]) < 1e-9, $"{own.Id}: {j}")));
        }
    }

    [Fact]
    public void Stances_are_as_high_as_the_library_says()
    {
        foreach (var stance in Enum.GetValues<Stance>())
        {
            var figure = Kinematics.Of(Library.Poses.Poses[Library.Poses.Stances[stance]], 1);
            var highest = Enum.GetValues<Joint>().Where(j => j is Joint.Crown or Joint.Head or Joint.Neck).Max(j => figure[j].Y);
            Assert.True(Math.Abs(highest - (double)Library.Book.Stances.Stances.First(s => s.Stance == stance).HeightShare) <= 0.03, $"{stance}: {highest:0.000}");
        }
    }

    /// <summary>The law of cosines: lengths kept, the end reached where it can be, the middle joint on the side of the pole.</summary>
    [Property(MaxTest = 300)]
    public Property Two_bones_reach_and_bend_to_the_side_of_the_pole() => Prop.ForAll(
        Gen.Choose(-60, 60).Four().Two().ToArbitrary(),
        numbers =>
        {
            var ((a, b, c, d), (e, f, _, _)) = numbers;
            var (end, pole) = (new Vec(a / 100.0, b / 100.0, c / 100.0), new Vec(d / 100.0, e / 100.0, f / 100.0));
            var (middle, reached) = Reaching.TwoBones(default, pole, end, 0.33, 0.26);
            var way = reached.Unit;
            var can = end.Length is > 0.11 and < 0.58;
            return (Math.Abs(middle.Length - 0.33) < 1e-9 && Math.Abs(middle.To(reached) - 0.26) < 1e-9
                && (!can || reached.To(end) < 1e-9)
                && middle.Beside(way).Dot(pole.Beside(way)) >= -1e-9).Or(end.Length < 1e-6).Classify(can, "within reach").Classify(!can, "out of reach");
        });
}
