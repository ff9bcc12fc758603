using Generator.Paperwork.Html;

namespace Generator.Paperwork.Printing;

/// <summary>What the printed pack shows.</summary>
/// <param name="Routine">The pages of the routine.</param>
/// <param name="Sheets">The papers that are text, each on pages of its own.</param>
public sealed record PackView(RoutineView Routine, IReadOnlyList<string> Sheets);
