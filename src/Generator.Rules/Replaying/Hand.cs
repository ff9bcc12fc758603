namespace Generator.Rules.Replaying;

/// <summary>One of the hero's hands: what it does, and with whom (−1 for nobody).</summary>
public readonly record struct Hand(HandKind Kind, int Who)
{
    public static readonly Hand Guard = new(HandKind.Guard, -1);

    public static readonly Hand Out = new(HandKind.Out, -1);

    public bool Holds(int attacker) => Kind == HandKind.Holding && Who == attacker;

    public bool HeldBy(int attacker) => Kind == HandKind.Held && Who == attacker;
}
