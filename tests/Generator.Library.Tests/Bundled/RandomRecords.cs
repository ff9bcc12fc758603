using FsCheck;
using FsCheck.Fluent;
using Generator.Domain;

namespace Generator.Library.Tests.Bundled;

/// <summary>Techniques and attacks with any values that the types allow, sensible or not.</summary>
public static class RandomRecords
{
    public static Arbitrary<Technique> Techniques() => Arb.From(
        from side in SideGen
        from hands in Gen.ArrayOf(Gen.Elements(Enum.GetValues<HandNeed>()), 2)
        from ends in Gen.ArrayOf(Gen.Elements(Enum.GetValues<HandEnd>()), 2)
        from starts in Gen.Choose(0, 1023)
        from endStance in StanceGen
        from window in WindowGen
        from turn in Gen.Choose(-23, 23)
        from carry in Gen.Elements(Enum.GetValues<Carry>())
        from lines in LinesGen
        from demands in DemandsGen
        from load in Loads().Generator
        select new Technique
        {
            Id = Mirror.Id("made-up", side),
            BaseId = "made-up",
            Name = NameFor(side),
            Side = side,
            Family = Family.Strike,
            Starts = new StanceSet(starts),
            EndStance = endStance,
            LeftNeed = hands[0],
            RightNeed = hands[1],
            LeftEnd = ends[0],
            RightEnd = ends[1],
            Window = window,
            Turn = new Turn(turn),
            Carry = carry,
            Band = new Band(Limb.Arm, 1, 2, default, default, MeetsOnTheWay: false),
            Length = new HalfCounts(2),
            FewestSeconds = 0.5m,
            Answers = LineSet.Of(lines),
            Weight = 1,
            Demands = demands,
            Load = load,
            PartnerLoad = load.Mirrored,
        });

    public static Arbitrary<Attack> Attacks() => Arb.From(
        from side in SideGen
        from line in LineGen
        from stances in Gen.Choose(0, 1023)
        from window in WindowGen
        from left in Gen.Elements<HandEnd?>(null, HandEnd.Held, HandEnd.Out)
        from right in Gen.Elements<HandEnd?>(null, HandEnd.Held, HandEnd.Guard)
        from stance in StanceGen
        from demands in DemandsGen
        from load in Loads().Generator
        select new Attack
        {
            Id = Mirror.Id("made-up", side),
            BaseId = "made-up",
            Name = NameFor(side),
            Side = side,
            Line = line,
            HeroStances = new StanceSet(stances),
            From = window,
            Contact = new Band(Limb.Leg, 1, 2, default, default, MeetsOnTheWay: false),
            Length = new HalfCounts(2),
            FewestSeconds = 0.5m,
            GripsLeft = left,
            GripsRight = right,
            GripsStance = stance,
            Demands = demands,
            Load = load,
        });

    public static Arbitrary<Load> Loads() => Arb.From(
        Gen.ArrayOf(Gen.Choose(0, (int)BodyParts.All), Enum.GetValues<LoadAct>().Length)
            .Select(parts => Load.Each(act => (BodyParts)parts[(int)act])));

    private static Gen<Side?> SideGen => Gen.Elements<Side?>(null, Side.Left, Side.Right);

    private static Gen<Stance?> StanceGen => Gen.Elements(Enum.GetValues<Stance>().Cast<Stance?>().Append(null));

    private static Gen<AttackLine> LineGen => Gen.Choose(0, AttackLine.Count - 1).Select(AttackLine.FromIndex);

    private static Gen<AttackLine[]> LinesGen => Gen.ArrayOf(LineGen);

    private static Gen<Window> WindowGen =>
        from start in Gen.Choose(-23, 23)
        from width in Gen.Choose(0, 23)
        select new Window(start, start + width);

    private static Gen<string[]> DemandsGen => Gen.ArrayOf(Gen.Elements(Demand.All.AsEnumerable()));

    private static string NameFor(Side? side) => side switch
    {
        Side.Left => "Made up left",
        Side.Right => "Made up right",
        _ => "Made up",
    };
}
