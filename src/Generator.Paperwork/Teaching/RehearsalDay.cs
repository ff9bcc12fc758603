using Generator.Paperwork.Text;

namespace Generator.Paperwork.Teaching;

/// <summary>One day of the teaching plan.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Aim">What it is for, in a few words.</param>
/// <param name="Drills">In their order.</param>
public sealed record RehearsalDay(int Number, string Aim, IReadOnlyList<Drill> Drills)
{
    /// <summary>Time in motion: all repeats of all drills, marking counted as once through.</summary>
    public ExactSeconds Motion { get; init; } = ExactSeconds.Zero;

    /// <summary>Whole minutes in motion, up to the next one: what is left out is not asked of anybody.</summary>
    public string Minutes => Words.Number((int)((Motion.Nearest(1) + 59) / 60));

    /// <summary>"12 min in motion".</summary>
    public string MotionText => $"{Minutes} min in motion";
}
