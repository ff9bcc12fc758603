using System.Diagnostics.CodeAnalysis;

namespace Generator.Library.Reading;

/// <summary>What came of reading: a value, or every problem that was found, never both.</summary>
/// <typeparam name="T">What was to be read.</typeparam>
public sealed class Read<T>
    where T : class
{
    /// <summary>Good when <paramref name="problems"/> is empty; the value is then required.</summary>
    public Read(T? value, ProblemList problems)
    {
        Problems = problems.InOrder;
        Remarks = [.. problems.Remarks];
        Value = problems.IsEmpty ? value ?? throw new ArgumentNullException(nameof(value)) : null;
    }

    public T? Value { get; }

    public IReadOnlyList<Problem> Problems { get; }

    /// <summary>What was understood in one of several ways, with the others.</summary>
    public IReadOnlyList<Problem> Remarks { get; }

    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsGood => Value is not null;

    /// <summary>All problems for a person to read, two lines each.</summary>
    public string ToText() => string.Join('\n', Problems.Select(p => p.ToText()));
}
