namespace Generator.Domain;

/// <summary>The line of an attack, or of the grip it leaves: its kind, and the side of the hero that it comes at.</summary>
public readonly record struct AttackLine(LineKind Kind, LineSide Side)
{
    /// <summary>How many different lines there are.</summary>
    public static readonly int Count = Enum.GetValues<LineKind>().Length * 3;

    /// <summary>A dense number from 0 to <see cref="Count"/> − 1.</summary>
    public int Index => ((int)Kind * 3) + (int)Side;

    public static AttackLine FromIndex(int index) => new((LineKind)(index / 3), (LineSide)(index % 3));

    public AttackLine Mirrored => new(Kind, (LineSide)(2 - (int)Side));

    /// <summary>Kind and side; the text of a record would print its mirror, and that its own, for ever.</summary>
    public override string ToString() => $"{Kind} {Side}";

    /// <summary>From the knee, at somebody on theirs.</summary>
    public bool IsFromKnee => Kind is LineKind.KneeStraight or LineKind.KneeRound;

    /// <summary>A hand, arm or body that takes hold.</summary>
    public bool IsGrab => Kind is >= LineKind.GrabWrist and <= LineKind.GrabWristsRear;

    /// <summary>A blow or a kick at the height of the head.</summary>
    public bool IsAtHead => Kind is LineKind.HighStraight or LineKind.HighRound or LineKind.HighOver or LineKind.HighRising or LineKind.KneeRound or LineKind.KickHighRound or LineKind.PropOver or LineKind.PropRoundHigh;

    /// <summary>It comes with something in the hand; only records that are made for that answer it.</summary>
    public bool IsArmed => Kind >= LineKind.PropOver;
}
