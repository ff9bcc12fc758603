namespace Generator.Domain;

/// <summary>The floor of a brief.</summary>
public enum Surface
{
    Matted,

    /// <summary>Sprung floor, falls on pads.</summary>
    Sprung,

    /// <summary>Dry and even, without mats.</summary>
    Hard,

    /// <summary>Wet.</summary>
    Wet,

    /// <summary>Uneven or raked.</summary>
    Uneven,
}
