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
            Literals(solver, dice, Planned(model, slot.Index) is var a && a >= 0 ? [slot.Targets[a]] : []);
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

        if (model.Options.From is null)
        {
            Opening(model, solver, dice);
        }
    }

    private static int Planned(MoveModel model, int row) => model.Options.Plan is { } plan && row < plan.Count ? plan[row] : -1;

    private static void Opening(MoveModel model, CpModel solver, Random dice)
    {
        for (var a = 0; a < model.Cast; a++)
        {
            // A shuffled bearing and distance first; the solver moves on from there.
            Near(model, solver, model.Start.Attackers[a].Bearing, dice);
            Near(model, solver, model.Start.Attackers[a].Distance, dice);
        }

        foreach (var entrance in model.Entrances)
        {
            Smallest(solver, entrance);
        }
    }

    /// <summary>Prefers one value of the variable, chosen by the dice.</summary>
    private static void Near(MoveModel model, CpModel solver, IntVar variable, Random dice)
    {
        var values = new List<long>();
        var domain = variable.Domain.FlattenedIntervals();
        for (var i = 0; i < domain.Length; i += 2)
        {
            for (var v = domain[i]; v <= domain[i + 1]; v++)
            {
                values.Add(v);
            }
        }

        if (values.Count > 1)
        {
            var wanted = values[dice.Next(values.Count)];
            Literals(solver, dice, [model.Cp.Is(variable, wanted, $"wanted[{variable.Name()}]")]);
        }
    }

    private static void Literals(CpModel solver, Random dice, BoolVar[] literals)
    {
        if (literals.Length == 0)
        {
            return;
        }

        var shuffled = literals.ToArray();
        dice.Shuffle(shuffled);
        solver.AddDecisionStrategy(shuffled, DecisionStrategyProto.Types.VariableSelectionStrategy.ChooseFirst, DecisionStrategyProto.Types.DomainReductionStrategy.SelectMaxValue);
    }

    private static void Smallest(CpModel solver, IntVar variable) =>
        solver.AddDecisionStrategy([variable], DecisionStrategyProto.Types.VariableSelectionStrategy.ChooseFirst, DecisionStrategyProto.Types.DomainReductionStrategy.SelectMinValue);
}
