using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Symmetry;

/// <summary>Where a fight and its mirror image must part: choices between two equals fall clockwise, or to the left foot.</summary>
internal static class Ties
{
    public static bool In(Step step, Scene mirrored) =>
        step.WalkRound == Bearing.Circle / 2 || (step.Technique is { } technique && (TurnsEitherWay(step, technique) || ChangesEitherWay(step, technique, mirrored) || CarriesEitherWay(step, technique)));

    private static bool TurnsEitherWay(Step step, Technique technique)
    {
        var window = technique.Window;
        return step.TurnMade != 0 && new Bearing(step.SeenFrom - window.To).HalfHours == new Bearing(window.From - step.SeenFrom).HalfHours;
    }

    private static bool ChangesEitherWay(Step step, Technique technique, Scene mirrored)
    {
        var image = TheBook.Book.Technique(Mirror.Of(technique).Id);
        var from = step.Mode == MoveMode.EscapesGrab ? StanceChoice.Pulled(step.Before.Stance, step.Attack!) : step.Before.Stance;
        return StanceChoice.For(mirrored, from.Mirrored(), image.Starts).Stance.Mirrored() != step.StanceStart;
    }

    /// <summary>An attack from the centre, or none, carries nobody on to a side of its own.</summary>
    private static bool CarriesEitherWay(Step step, Technique technique) =>
        technique.Carry == Carry.WithAttack && step.Reaction is { Round: > 0 and < 12 } && step.Attack is not { Line.Side: LineSide.Left or LineSide.Right };
}
