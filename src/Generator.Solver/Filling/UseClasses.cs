using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver.Filling;

/// <summary>
/// Signature classes: uses that behave alike for stance, for a hand, for the bound or for the facing share one number, so that tables stay small.
/// </summary>
public sealed class UseClasses
{
    public UseClasses(Scene scene, Vocabulary vocabulary)
    {
        var uses = vocabulary.Uses;
        (Stance, StanceExamples) = Sort(uses, u => u.Technique is null ? null : (object)(u.Technique.Starts, u.Technique.EndStance, u.Grip?.GripsStance, u.Kind == UseKind.EscapesGrab));
        (Left, LeftExamples) = Sort(uses, u => u.Technique is null ? null : (object)(u.Technique.LeftNeed, u.Technique.LeftEnd, u.Grip?.GripsLeft));
        (Right, RightExamples) = Sort(uses, u => u.Technique is null ? null : (object)(u.Technique.RightNeed, u.Technique.RightEnd, u.Grip?.GripsRight));
        (Bound, BoundExamples) = Sort(uses, u => u.Technique is null ? null : (object)(u.Technique.Bounds, u.Technique.EndBound, u.Technique.Supported, u.Grip?.GripsBound, u.HasTarget));
        (Facing, FacingExamples) = Sort(uses, u => u.Technique is null ? null : (object)(u.HasTarget ? u.Technique.Window : Window.Anywhere, u.Technique.Turn));
        (HeroStances, HeroStanceExamples) = Sort(vocabulary.Attacks, k => scene.Book.Attacks[k].HeroStances);
        (FromWindow, FromWindowExamples) = Sort(vocabulary.Attacks, k => scene.Book.Attacks[k].From);
    }

    public IReadOnlyList<int> Stance { get; }

    public IReadOnlyList<Use> StanceExamples { get; }

    public IReadOnlyList<int> Left { get; }

    public IReadOnlyList<Use> LeftExamples { get; }

    public IReadOnlyList<int> Right { get; }

    public IReadOnlyList<Use> RightExamples { get; }

    public IReadOnlyList<int> Bound { get; }

    public IReadOnlyList<Use> BoundExamples { get; }

    public IReadOnlyList<int> Facing { get; }

    public IReadOnlyList<Use> FacingExamples { get; }

    public IReadOnlyList<int> HeroStances { get; }

    public IReadOnlyList<int> HeroStanceExamples { get; }

    public IReadOnlyList<int> FromWindow { get; }

    public IReadOnlyList<int> FromWindowExamples { get; }

    private static (IReadOnlyList<int> Classes, IReadOnlyList<T> Examples) Sort<T>(IReadOnlyList<T> items, Func<T, object?> signature)
    {
        var numbers = new Dictionary<object, int>();
        var examples = new List<T>();
        var classes = new int[items.Count];
        for (var i = 0; i < items.Count; i++)
        {
            var key = signature(items[i]) ?? "idle";
            if (!numbers.TryGetValue(key, out var number))
            {
                numbers[key] = number = examples.Count;
                examples.Add(items[i]);
            }

            classes[i] = number;
        }

        return (classes, examples);
    }
}
