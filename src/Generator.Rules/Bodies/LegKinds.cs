namespace Generator.Rules.Bodies;

/// <summary>What kinds of legs have in common.</summary>
public static class LegKinds
{
    /// <summary>Taken along the way by a technique, on their own feet or falling.</summary>
    public static bool IsSent(this LegKind kind) => kind is LegKind.Shifts or LegKind.Guided or LegKind.Sent;
}
