namespace Generator.Domain;

/// <summary>What a technique, an attack, a reaction or a stance asks of each part of the body of whoever performs it. Default: nothing.</summary>
public readonly record struct Load
{
    public BodyParts Carry { get; init; }

    public BodyParts Pivot { get; init; }

    public BodyParts Jump { get; init; }

    public BodyParts Land { get; init; }

    public BodyParts Kneel { get; init; }

    public BodyParts Bend { get; init; }

    public BodyParts Work { get; init; }

    public BodyParts Strain { get; init; }

    /// <summary>Left and right swapped.</summary>
    public Load Mirrored
    {
        get
        {
            var own = this;
            return Each(act => own[act].Mirrored());
        }
    }

    /// <summary>Every part that is asked anything.</summary>
    public BodyParts Anywhere => Carry | Pivot | Jump | Land | Kneel | Bend | Work | Strain;

    /// <summary>The parts that do this.</summary>
    public BodyParts this[LoadAct act] => act switch
    {
        LoadAct.Carry => Carry,
        LoadAct.Pivot => Pivot,
        LoadAct.Jump => Jump,
        LoadAct.Land => Land,
        LoadAct.Kneel => Kneel,
        LoadAct.Bend => Bend,
        LoadAct.Work => Work,
        _ => Strain,
    };

    /// <summary>A load worked out act by act.</summary>
    public static Load Each(Func<LoadAct, BodyParts> parts) => new()
    {
        Carry = parts(LoadAct.Carry),
        Pivot = parts(LoadAct.Pivot),
        Jump = parts(LoadAct.Jump),
        Land = parts(LoadAct.Land),
        Kneel = parts(LoadAct.Kneel),
        Bend = parts(LoadAct.Bend),
        Work = parts(LoadAct.Work),
        Strain = parts(LoadAct.Strain),
    };

    /// <summary>What either asks.</summary>
    public Load Or(Load other)
    {
        var own = this;
        return Each(act => own[act] | other[act]);
    }

    /// <summary>What both ask.</summary>
    public Load And(Load other)
    {
        var own = this;
        return Each(act => own[act] & other[act]);
    }

    /// <summary>The acts; the text of a record would print its mirror, and that its own, for ever.</summary>
    public override string ToString()
    {
        var own = this;
        return string.Join("; ", Enum.GetValues<LoadAct>().Where(act => own[act] != BodyParts.None).Select(act => $"{act} {own[act]}"));
    }
}
