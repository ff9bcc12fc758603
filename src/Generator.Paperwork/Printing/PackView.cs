using Generator.Paperwork.Cameras;
using Generator.Paperwork.Html;
using Generator.Paperwork.SafetyPapers;

namespace Generator.Paperwork.Printing;

/// <summary>What the printed pack shows.</summary>
/// <param name="Routine">The pages of the routine.</param>
/// <param name="Sheets">The other papers that are read, each on pages of its own.</param>
/// <param name="Risk">The risk assessment, which has pages of its own making.</param>
/// <param name="Cameras">The pictures of the camera plan; null where there is none.</param>
public sealed record PackView(RoutineView Routine, IReadOnlyList<SheetView> Sheets, RiskView Risk, CameraView? Cameras);
