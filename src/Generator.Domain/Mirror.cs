namespace Generator.Domain;

/// <summary>The other side of a technique or an attack: left and right swap, bearings negate. Done twice it gives the record back.</summary>
public static class Mirror
{
    public static Technique Of(Technique technique) => technique with
    {
        Id = Id(technique.BaseId, technique.Side?.Other()),
        Name = Name(technique.Name, technique.Side),
        Side = technique.Side?.Other(),
        Starts = technique.Starts.Mirrored,
        EndStance = technique.EndStance?.Mirrored(),
        LeftNeed = technique.RightNeed,
        RightNeed = technique.LeftNeed,
        LeftEnd = technique.RightEnd,
        RightEnd = technique.LeftEnd,
        Window = technique.Window.Mirrored,
        Turn = technique.Turn.Mirrored,
        Carry = Of(technique.Carry),
        Answers = technique.Answers.Mirrored,
        Demands = [.. technique.Demands.Select(Demand)],
        Load = technique.Load.Mirrored,
        PartnerLoad = technique.PartnerLoad.Mirrored,
        SupportLoad = technique.SupportLoad.Mirrored,
        Travel = technique.Travel?.Mirrored(),
        Prop = technique.Prop?.Mirrored,
    };

    public static Attack Of(Attack attack) => attack with
    {
        Id = Id(attack.BaseId, attack.Side?.Other()),
        Name = Name(attack.Name, attack.Side),
        Side = attack.Side?.Other(),
        Line = attack.Line.Mirrored,
        HeroStances = attack.HeroStances.Mirrored,
        From = attack.From.Mirrored,
        GripsLeft = attack.GripsRight,
        GripsRight = attack.GripsLeft,
        GripsStance = attack.GripsStance?.Mirrored(),
        Demands = [.. attack.Demands.Select(Demand)],
        Load = attack.Load.Mirrored,
        Prop = attack.Prop?.Mirrored,
    };

    /// <summary>The id of one side of a record: base id, then <c>-left</c> or <c>-right</c>.</summary>
    public static string Id(string baseId, Side? side) => side switch
    {
        Side.Left => baseId + "-left",
        Side.Right => baseId + "-right",
        _ => baseId,
    };

    private static string Name(string name, Side? side) => side switch
    {
        Side.Left => name.EndsWith(" left", StringComparison.Ordinal) ? name[..^5] + " right" : name,
        Side.Right => name.EndsWith(" right", StringComparison.Ordinal) ? name[..^6] + " left" : name,
        _ => name,
    };

    private static Carry Of(Carry carry) => carry switch
    {
        Carry.Clockwise => Carry.CounterClockwise,
        Carry.CounterClockwise => Carry.Clockwise,
        _ => carry,
    };

    private static string Demand(string demand)
    {
        if (demand.StartsWith("left-", StringComparison.Ordinal))
        {
            return "right-" + demand[5..];
        }

        return demand.StartsWith("right-", StringComparison.Ordinal) ? "left-" + demand[6..] : demand;
    }
}
