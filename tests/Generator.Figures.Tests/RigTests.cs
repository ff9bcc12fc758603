using Generator.Figures.Bodies;

namespace Generator.Figures.Tests;

/// <summary>What other programs are told of a body gives the same body back.</summary>
public sealed class RigTests
{
    [Fact]
    public void Turns_of_the_joints_give_back_where_every_joint_is()
    {
        var seen = 0;
        foreach (var (card, frame, figure) in Library.Figures(Library.Cards(1.6, 1.9, 0.5)))
        {
            var rotations = Rig.Of(figure);
            var places = Rig.Joints(figure[Joint.Hips], rotations, figure.Stature);
            Assert.All(rotations, r => Assert.Equal(1, r.Dot(r), 9));
            for (var i = 0; i < Skeleton.Joints; i++)
            {
                Assert.True(places[i].To(figure[(Joint)i]) < 1e-6, $"{card.Id} {frame.When}: {(Joint)i} is {places[i].To(figure[(Joint)i]):0.000} m off");
            }

            seen++;
        }

        Assert.True(seen > 2000, $"{seen} bodies");
    }

    /// <summary>What a record prints by itself holds all its properties, and one of them is a point again.</summary>
    [Fact]
    public void A_point_can_be_printed() => Assert.Equal("(0.5, -1, 0)", new Vec(0.5, -1, 0).ToString());

    [Fact]
    public void Half_way_from_one_turn_to_another_takes_the_shorter_way()
    {
        var (one, two) = (Rotation.Of(Turned.Leftwards(-170)), Rotation.Of(Turned.Leftwards(170)));
        var ahead = one.Towards(two, 0.5).Turned.Ahead;
        Assert.True(ahead.To(Vec.Ahead * -1) < 1e-9);
        Assert.True(one.Towards(-two, 0.5).Turned.Ahead.To(ahead) < 1e-9);
    }
}
