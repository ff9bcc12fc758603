namespace Generator.Paperwork.Teaching;

/// <summary>One day of the teaching plan.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Aim">What it is for, in a few words.</param>
/// <param name="Drills">In their order.</param>
public sealed record RehearsalDay(int Number, string Aim, IReadOnlyList<Drill> Drills);
