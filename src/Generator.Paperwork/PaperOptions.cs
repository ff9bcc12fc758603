using Generator.Paperwork.HandOffs;
using Generator.Paperwork.SafetyPapers;

namespace Generator.Paperwork;

/// <summary>What the user chose for the papers.</summary>
public sealed record PaperOptions
{
    public static readonly PaperOptions Default = new();

    /// <summary>Date of the first rehearsal day; null numbers the days and makes no calendar.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Frame rate of timecodes.</summary>
    public FrameRate Frames { get; init; } = FrameRate.TwentyFive;

    /// <summary>The country whose guidance the safety papers name.</summary>
    public Guidance Guidance { get; init; } = Guidance.Generic;

    /// <summary>The change log that lies among the papers already; null when there is none.</summary>
    public string? ChangeLog { get; init; }
}
