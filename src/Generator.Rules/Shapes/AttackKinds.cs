using Generator.Domain;

namespace Generator.Rules.Shapes;

/// <summary>Tells them.</summary>
public static class AttackKinds
{
    public static AttackKind Of(Attack attack) => attack.Line.Kind switch
    {
        LineKind.HighStraight or LineKind.HighRising or LineKind.MiddleStraight => AttackKind.Punch,
        LineKind.HighRound or LineKind.HighOver => AttackKind.Swing,
        >= LineKind.KickMiddleStraight and <= LineKind.KickAtFallen => AttackKind.Kick,
        >= LineKind.RushLow and <= LineKind.RushRear => AttackKind.Rush,
        LineKind.WalkIn => AttackKind.WalkIn,
        LineKind.GrabThroatRear or LineKind.GrabBodyRear or LineKind.GrabHairRear or LineKind.GrabShouldersRear or LineKind.GrabBodyRearUnder or LineKind.GrabWristsRear => AttackKind.RearGrab,
        _ => AttackKind.Grab,
    };
}
