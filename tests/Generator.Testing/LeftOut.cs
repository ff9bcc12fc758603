namespace Generator.Testing;

/// <summary>Tests that need what is not on every machine are left out there, and nowhere else.</summary>
public static class LeftOut
{
    private static readonly bool Never = Environment.GetEnvironmentVariable("GENERATOR_ALL_TESTS") is not null;

    /// <summary>Why a test is left out; null when nothing is lacking, or when GENERATOR_ALL_TESTS says that no test may be left out.</summary>
    /// <param name="lacking">What is lacking, and how to get it; null when it is there.</param>
    public static string? For(Func<string?> lacking) => Never ? null : lacking();
}
