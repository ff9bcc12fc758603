namespace Generator.Testing;

/// <summary>Draws of a seeded random source; the same seed gives the same draws.</summary>
public sealed class Chance(int seed)
{
    private readonly Random random = new(seed);

    /// <summary>From <paramref name="least"/> to <paramref name="most"/>, both included.</summary>
    public int Whole(int least, int most) => random.Next(least, most + 1);

    /// <summary>True in so many of a hundred draws.</summary>
    public bool Percent(int percent) => random.Next(100) < percent;

    public T One<T>(IReadOnlyList<T> from) => from[random.Next(from.Count)];

    public T Any<T>()
        where T : struct, Enum => One(Enum.GetValues<T>());

    /// <summary>Some of the entries, in their order.</summary>
    public IReadOnlyList<T> Some<T>(IReadOnlyList<T> from, int percent) => [.. from.Where(_ => Percent(percent))];

    /// <summary>A value in half of the draws, else null.</summary>
    public T? Maybe<T>(Func<T> value)
        where T : struct => Percent(50) ? value() : null;

    /// <summary>A list of so many.</summary>
    public IReadOnlyList<T> List<T>(int least, int most, Func<int, T> entry) => [.. Enumerable.Range(0, Whole(least, most)).Select(entry)];
}
