namespace Generator.Domain.Sketches;

/// <summary>What the words in one cell of a sketch allow.</summary>
/// <param name="Text">The words as written, without <c>!</c> and <c>?</c>.</param>
/// <param name="Ids">Every id that the words allow, at least one.</param>
/// <param name="Firmness">Whether it may give.</param>
/// <param name="Foot">The side goes by the stance of that moment: the lead or the rear limb; null where the words say nothing of it.</param>
public sealed record SketchCell(string Text, IReadOnlyList<string> Ids, Firmness Firmness = Firmness.Said, SketchFoot? Foot = null);
