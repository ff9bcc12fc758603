using Generator.Domain;

namespace Generator.Figures.Poses;

/// <summary>A part of a body that goes to a place on the other body.</summary>
/// <param name="Part">What goes there.</param>
/// <param name="At">Where.</param>
/// <param name="Gap">How far before the skin it stops, in centimetres; null for a grip, which closes round the middle.</param>
public readonly record struct Aim(Part Part, Target At, int? Gap)
{
    /// <summary>It closes on cloth, skin or hair where it touches: a grip that does not go to the middle.</summary>
    public bool Grips { get; init; }

    /// <summary>How far what is in the hand reaches beyond it: its far end goes there instead; metres.</summary>
    public double Longer { get; init; }

    /// <summary>The same with left and right changed on both bodies.</summary>
    public Aim Mirrored => this with { Part = Mirror(Part), At = Mirror(At) };

    /// <summary>The side of the body that the part belongs to; null for head and shoulder.</summary>
    public Side? Side => Part is Part.Head or Part.Shoulder ? null : Part.ToString().StartsWith("Left", StringComparison.Ordinal) ? Domain.Side.Left : Domain.Side.Right;

    private static T Mirror<T>(T word)
        where T : struct, Enum
    {
        var name = word.ToString();
        return name.StartsWith("Left", StringComparison.Ordinal) ? Enum.Parse<T>("Right" + name[4..])
            : name.StartsWith("Right", StringComparison.Ordinal) ? Enum.Parse<T>("Left" + name[5..])
            : word;
    }
}
