using Generator.Figures.Posing;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Printing;
using Generator.Paperwork.SafetyPapers;
using Generator.Rules.Sight;

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

    /// <summary>The paper on which the pack is printed; the pages themselves print on whatever is in the printer.</summary>
    public PageSize Page { get; init; } = PageSize.A4;

    /// <summary>Which hits read from where; null makes no camera plan.</summary>
    public CameraPlan? Cameras { get; init; }

    /// <summary>Draws the figures of the moves; null draws none.</summary>
    public Cards? Cards { get; init; }

    /// <summary>The calendar that lies among the papers already; null when there is none.</summary>
    public string? Calendar { get; init; }

    /// <summary>The change log that lies among the papers already; null when there is none.</summary>
    public string? ChangeLog { get; init; }
}
