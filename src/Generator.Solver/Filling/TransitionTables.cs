namespace Generator.Solver.Filling;

/// <summary>The rows of the tables by which a state follows from the one before; the same for every row of a model, so worked out once.</summary>
internal sealed class TransitionTables(MoveModel model)
{
    public IReadOnlyList<long[]> Stance { get; } = [.. StancePart.Rows(model)];

    public IReadOnlyList<long[]> Left { get; } = [.. HandPart.HandRows(model, model.Classes.LeftExamples, Domain.Side.Left)];

    public IReadOnlyList<long[]> Right { get; } = [.. HandPart.HandRows(model, model.Classes.RightExamples, Domain.Side.Right)];

    public IReadOnlyList<long[]> Bound { get; } = [.. HandPart.BoundRows(model)];

    public IReadOnlyList<long[]> Facing { get; } = [.. FacingPart.Rows(model)];

    public IReadOnlyList<long[]> Shift { get; } = [.. AfterPart.ShiftRows(model)];
}
