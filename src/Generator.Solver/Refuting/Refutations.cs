using Generator.Rules;

namespace Generator.Solver.Refuting;

/// <summary>
/// Everything that takes no search to say no, the plainest first. Each argument leaves out much of what the rules ask, so that what it denies no
/// routine has; its file says what it proves and why that is sound.
/// </summary>
internal static class Refutations
{
    public static readonly IReadOnlyList<Argument> Plain =
    [
        new("statements", Asked.Against),
        new("floor", Packing.Against),
    ];

    public static readonly IReadOnlyList<Argument> All =
    [
        .. Plain,
        new("postures", PostureRoutes.Against),
        new("budget", Budget.Against),
        new("windows", Windows.Against),
        new("order", OutOrder.Against),
        new("runs", Runs.Against),
    ];

    /// <summary>Those that know of several marks.</summary>
    private static readonly IReadOnlyList<Argument> Travelling = [.. Plain, new("ways", Ways.Against)];

    /// <summary>The first argument that speaks against a draft of a brief; null where none does. Those that count or follow moves know one mark only: where the hero travels, from elsewhere somebody else is near and other moves are possible.</summary>
    public static Refutation? First(Scene scene) => First(scene, scene.Brief.Travels ? Travelling : All);

    /// <summary>The first that speaks against a brief of those for which nothing of the library is worked out.</summary>
    public static Refutation? Plainly(Scene scene) => First(scene, Plain);

    /// <summary>What speaks against any routine of a brief, in words; empty where nothing does.</summary>
    public static IReadOnlyList<string> Reasons(Scene scene) => (scene.Brief.Travels ? Plainly(scene) : First(scene))?.Reasons ?? [];

    private static Refutation? First(Scene scene, IReadOnlyList<Argument> arguments)
    {
        var workings = new Workings(scene);
        foreach (var argument in arguments)
        {
            if (argument.Against(workings).ToList() is { Count: > 0 } reasons)
            {
                return new Refutation(argument, reasons);
            }
        }

        return null;
    }
}
