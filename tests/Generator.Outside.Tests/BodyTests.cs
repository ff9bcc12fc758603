using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules;

namespace Generator.Outside.Tests;

/// <summary>Limbs and reaches against body measurements. Values marked computed were worked out from the public ANSUR II files.</summary>
public sealed class BodyTests
{
    private static readonly string[] Elbows = ["elbow-across", "elbow-up", "elbow-down", "elbow-back", "elbow-side"];
    private static readonly string[] StraightPunches = ["jab", "cross"];
    private static readonly string[] Kicks = ["front-kick", "side-kick", "back-kick", "high-round-kick"];

    [Fact(DisplayName = "ANSUR II 2012 (computed): shoulder to fist of a man of 1.756 m is 0.655 to 0.716 m")]
    public void Arm_of_the_mean_man() => Assert.InRange(Scene.ArmShare * Outside.MeanMan, 0.655m, 0.716m);

    [Fact(DisplayName = "ANSUR II 2012 (computed): shoulder to fist, men 0.390 and women 0.386 of stature; ours within 1.5 %")]
    public void Arm_share_of_men_and_women()
    {
        Assert.InRange(Scene.ArmShare / 0.390m, 0.985m, 1.015m);
        Assert.InRange(Scene.ArmShare / 0.386m, 0.985m, 1.015m);
    }

    [Fact(DisplayName = "Drillis and Contini 1966: upper arm 0.186 + forearm 0.146 < shoulder to fist < with the whole hand 0.108 (0.440)")]
    public void The_fist_lies_between_wrist_and_fingertip() => Assert.InRange(Scene.ArmShare, 0.186m + 0.146m, 0.186m + 0.146m + 0.108m);

    [Fact(DisplayName = "Drillis and Contini 1966: hip to ankle is thigh 0.245 + shank 0.246 = 0.491 of stature")]
    public void Leg_share() => Assert.InRange(Scene.LegShare, 0.485m, 0.497m);

    [Fact(DisplayName = "Drillis and Contini 1966: hip height 0.530 is ankle 0.039 + shank + thigh; our leg leaves the ankle below it")]
    public void Leg_and_ankle_make_hip_height() => Assert.InRange(Scene.LegShare + 0.039m, 0.525m, 0.535m);

    [Fact(DisplayName = "ANSUR II 2012 (computed): no square-on hand reaches farther from the middle of the body than half the arm span, 0.510 H")]
    public void Half_span_caps_the_reach()
    {
        // Half the shoulder breadth between the joints (0.237 H men, 0.224 H women) and the arm to the fist.
        Assert.True(Scene.ArmShare + (0.237m / 2) <= 0.517m);
        Assert.True(Scene.ArmShare + (0.224m / 2) <= 0.510m);
    }

    [Fact(DisplayName = "ANSUR II 2012: the default height is the mean stature of men, 1.756 m")]
    public void Default_height() => Assert.InRange(Performer.DefaultHeight.Metres, 1.751m, 1.761m);

    [Theory(DisplayName = "ANSUR II 2012 (p5 of women 1.525 m, p95 of men 1.870 m): statures far outside are taken for a slip of unit")]
    [InlineData("1.525", true)]
    [InlineData("1.87", true)]
    [InlineData("17.56", false)]
    [InlineData("0.69", false)]
    [InlineData("5.9", false)]
    [InlineData("176", false)]
    public void Heights_that_cannot_be(string height, bool good)
    {
        var text = $$"""{ "length": { "counts": 20 }, "attackers": [ { "name": "Bruno", "height": {{height}} } ] }""";

        Assert.Equal(good, BriefReader.Parse(new SourceFile("case.brief.json", text), Outside.Book).IsGood);
    }

    [Fact(DisplayName = "Drillis and Contini 1966, ANSUR II 2012: an elbow reaches less far than a punch, a punch less far than a kick, from 1.50 to 2.00 m")]
    public void Elbow_punch_kick()
    {
        for (var height = 150; height <= 200; height++)
        {
            var scene = Outside.Scene(h => h with { Height = new Centimetres(height) }, a => a with { Height = new Centimetres(height) });
            var elbows = Outside.Techniques(Elbows).Max(t => Reach(scene, t).Far);
            var punches = Outside.Techniques(StraightPunches).Select(t => Reach(scene, t).Far).ToList();
            var kicks = Outside.Techniques(Kicks).Min(t => Reach(scene, t).Far);

            Assert.True(elbows < punches.Min(), $"elbow and punch at {height} cm");
            Assert.True(punches.Max() < kicks, $"punch and kick at {height} cm");
        }
    }

    [Fact(DisplayName = "Drillis and Contini 1966: an arm is shorter than a leg and half an arm reaches the elbow, at every height")]
    public void Elbow_arm_leg()
    {
        for (var height = 150; height <= 200; height++)
        {
            var performer = new HeroPart { Name = "Ines", Height = new Centimetres(height) };
            var elbow = 0.186m * height;

            Assert.True(elbow < Scene.ArmOf(performer) && Scene.ArmOf(performer) < Scene.LegOf(performer));
            Assert.InRange(elbow / Scene.ArmOf(performer), 0.45m, 0.55m);
        }
    }

    [Fact(DisplayName = "ANSUR II 2012 (computed): shoulder to fingertip 0.464 H beats shoulder to fist 0.390 H, so a slap is thrown from farther than a jab")]
    public void An_open_hand_reaches_farther()
    {
        var scene = Outside.Scene();
        var (slap, jab) = (Reach(scene, Outside.Techniques("slap")[0]), Reach(scene, Outside.Techniques("jab")[0]));

        Assert.True(slap.Far > jab.Far && slap.Near > jab.Near);
    }

    [Fact(DisplayName = "Teaching hand-outs (weak): partners stand 3 to 4 ft apart for a straight miss, and the longer arm decides")]
    public void Base_distance()
    {
        var jab = Outside.Techniques("jab")[0];

        Assert.InRange(Reach(Outside.Scene(), jab).Near, 91, 122);

        // ANSUR II p95: a partner of 1.87 m in front of a hero of 1.629 m sets the distance.
        var mixed = Outside.Scene(h => h with { Height = new Centimetres(163) }, a => a with { Height = new Centimetres(187) });
        var tall = Outside.Scene(h => h with { Height = new Centimetres(187) }, a => a with { Height = new Centimetres(187) });
        Assert.Equal(Reach(tall, jab), Reach(mixed, jab));
    }

    [Theory(DisplayName = "Martial Science Magazine, January 2022 (one practitioner): a straight miss passes 6 in or more from the face")]
    [InlineData(176, 100)]
    [InlineData(163, 95)]
    public void Six_inches(int height, int halfHeadMillimetres)
    {
        // Body centre to body centre less the arm less half a head (ANSUR II: 200 mm long for men, 190 for women).
        var scene = Outside.Scene(h => h with { Height = new Centimetres(height) }, a => a with { Height = new Centimetres(height) });
        foreach (var punch in Outside.Techniques("jab", "cross", "step-punch", "leaping-punch", "hold-and-punch"))
        {
            var gap = Reach(scene, punch).Near - (double)Scene.ArmOf(scene.Brief.Hero) - (halfHeadMillimetres / 10.0);
            Assert.True(gap >= 15.24, $"{punch.Id}: {gap:0.0} cm");
        }
    }

    [Fact(DisplayName = "Pallaziol, The Textbook of Theatrical Combat: a head kick is thrown from two arm lengths, about 1.6 m, and steps back")]
    public void Head_kick_distance()
    {
        var scene = Outside.Scene();
        var reach = Reach(scene, Outside.Techniques("high-round-kick")[0]);

        Assert.InRange(160, reach.Near, reach.Far);
        Assert.InRange(2 * Scene.ArmOf(scene.Brief.Hero), reach.Near, reach.Far);
        Assert.True(reach.StepOut > 20);
    }

    [Fact(DisplayName = "Lecure, Stage Directions, October 1996: contact goes to large muscles only, so no contact hit lands at the head")]
    public void Contact_is_never_at_head_height()
    {
        var contacts = Outside.Book.Techniques.Where(t => t is { Kind: ContactKind.Contact, Family: Family.Strike or Family.Kick or Family.Finish }).ToList();

        Assert.True(contacts.Count >= 10);
        Assert.DoesNotContain(contacts, t => t.Height == Height.High);
    }

    [Fact(DisplayName = "Kinematic analysis of the fencing lunge (Univ. of Tehran, 8 foil fencers): a lunge is 1.17 m, so no step in exceeds 1.2 m")]
    public void No_step_in_beyond_a_lunge()
    {
        Assert.All(Outside.Book.Techniques, t => Assert.InRange(t.Band.StepIn.Value, 0, 120));
        Assert.All(Outside.Book.Techniques, t => Assert.InRange(t.Band.StepOut.Value, 0, 120));

        // 1.17 m at 1.94 to 2.21 m/s (Pol J Sport Tourism 2016, 23(4):181) takes half a second and more.
        var lunges = Outside.Book.Techniques.Where(t => t.Band.StepIn.Value >= 100).ToList();
        Assert.NotEmpty(lunges);
        Assert.All(lunges, t => Assert.True(t.FewestSeconds >= 0.5m, t.Id));
    }

    private static Reach Reach(Scene scene, Technique technique) => scene.TechniqueReach(scene.Book.TechniqueIndex(technique.Id), 0);
}
