namespace Generator.Paperwork.Html;

/// <summary>One performer's lane in the picture of the whole fight; places are along it, in units of the drawing.</summary>
public sealed record GlanceLane
{
    /// <summary>Number in the brief, from 0; −1 for the hero.</summary>
    public required int Performer { get; init; }

    public required string Name { get; init; }

    /// <summary>"▲! 1 unsafe": what is found of them; empty for nothing.</summary>
    public required string Alarms { get; init; }

    /// <summary>"▲! 1": the same without the words, where they find no room.</summary>
    public required string AlarmSigns { get; init; }

    /// <summary>"2 falls, out c40": what stands out, in words.</summary>
    public required string Facts { get; init; }

    /// <summary>Both.</summary>
    public string Told => Alarms.Length == 0 ? Facts : $"{Alarms}, {Facts}";

    /// <summary>How far down it is.</summary>
    public required double Middle { get; init; }

    /// <summary>Where they come in, and where they are out or the fight ends.</summary>
    public required double From { get; init; }

    public required double To { get; init; }

    /// <summary>Attacks up to their contact.</summary>
    public required IReadOnlyList<(double From, double To)> Swings { get; init; }

    /// <summary>Moves of the hero, or on this attacker.</summary>
    public required IReadOnlyList<(double From, double To)> Moves { get; init; }

    /// <summary>Blows that are taken.</summary>
    public required IReadOnlyList<double> Taken { get; init; }

    public required IReadOnlyList<double> Falls { get; init; }

    public required (double X, bool RunsOff)? Out { get; init; }

    /// <summary>Unsafe and broken findings at their moves.</summary>
    public required IReadOnlyList<double> Grave { get; init; }
}
