using Generator.Paperwork.Cameras;
using Generator.Paperwork.Html;
using Generator.Paperwork.SafetyPapers;

namespace Generator.Paperwork.Printing;

/// <summary>What the printed pack shows.</summary>
/// <param name="Routine">The pages of the routine.</param>
/// <param name="Sheets">The other papers that are read, each on pages of its own; the camera plan with its pictures.</param>
/// <param name="Risk">The risk assessment, which has pages of its own making.</param>
public sealed record PackView(RoutineView Routine, IReadOnlyList<(SheetView Sheet, CameraView? Pictures)> Sheets, RiskView Risk);
