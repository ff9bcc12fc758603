using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>
/// The order in which a choreographer decides: row by row, first what is thrown and what answers it, then the reaction and the time.
/// Values are shuffled by seed, so that other seeds give other routines; everything else follows from these by propagation.
/// </summary>
public static class DecisionOrder
{
    public static void Post(MoveModel model, int seed)
    {
        var dice = new Random(seed);
        var solver = model.Cp.Model;
        foreach (var slot in model.Slots)
        {
            Literals(solver, dice, slot.Targets);
            Literals(solver, dice, slot.Uses);
            Literals(solver, dice, slot.Attacks);
            Literals(solver, dice, slot.Reactions);
            Smallest(solver, slot.Gap);
            Smallest(solver, slot.Linger);
        }

        foreach (var delay in model.Delays)
        {
            Smallest(solver, delay);
        }
    }

    private static void Literals(CpModel solver, Random dice, BoolVar[] literals)
    {
        var shuffled = literals.ToArray();
        dice.Shuffle(shuffled);
        solver.AddDecisionStrategy(shuffled, DecisionStrategyProto.Types.VariableSelectionStrategy.ChooseFirst, DecisionStrategyProto.Types.DomainReductionStrategy.SelectMaxValue);
    }

    private static void Smallest(CpModel solver, IntVar variable) =>
        solver.AddDecisionStrategy([variable], DecisionStrategyProto.Types.VariableSelectionStrategy.ChooseFirst, DecisionStrategyProto.Types.DomainReductionStrategy.SelectMinValue);
}
