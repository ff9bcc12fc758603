using Generator.Domain.Sketches;

namespace Generator.Library.Files.Notes;

/// <summary>A sketch and how its words were taken.</summary>
/// <param name="Sketch">The sketch.</param>
/// <param name="Understood">Every piece of text in the order written.</param>
public sealed record ReadSketch(Sketch Sketch, IReadOnlyList<Understood> Understood);
