using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>An answer of a move model, for rules to look at.</summary>
/// <param name="model">Whose answer it is. New variables may be made for clauses.</param>
/// <param name="value">Values of the model's variables in the answer.</param>
public sealed class ModelAnswer(MoveModel model, Func<IntVar, long> value)
{
    private readonly Dictionary<Type, object> shared = [];

    public MoveModel Model => model;

    public Func<IntVar, long> Value => value;

    /// <summary>What several rules look at, worked out when the first of them asks.</summary>
    /// <param name="work">Works it out.</param>
    internal T Shared<T>(Func<ModelAnswer, T> work)
        where T : class
    {
        if (!shared.TryGetValue(typeof(T), out var known))
        {
            shared[typeof(T)] = known = work(this);
        }

        return (T)known;
    }
}
