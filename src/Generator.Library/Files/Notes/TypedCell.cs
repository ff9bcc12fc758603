using Generator.Domain.Sketches;

namespace Generator.Library.Files.Notes;

/// <summary>A cell as it was typed.</summary>
/// <param name="Said">A move that says so in this cell.</param>
/// <param name="Understood">What the words were taken for; null where there are none.</param>
/// <param name="Problem">What is wrong with them and what may be meant; null where nothing is.</param>
public sealed record TypedCell(SketchMove Said, Understood? Understood, (string Message, string Maybe)? Problem);
