namespace Generator.Library.Reading;

/// <summary>Collects problems while one or more files are read, so that all can be told at once.</summary>
public sealed class ProblemList
{
    private readonly List<Problem> problems = [];
    private readonly HashSet<Problem> seen = [];
    private readonly List<Problem> remarks = [];

    public int Count => problems.Count;

    public bool IsEmpty => problems.Count == 0;

    /// <summary>The problems in the order of files (as first met) and of lines within a file.</summary>
    public IReadOnlyList<Problem> InOrder
    {
        get
        {
            var files = problems.Select(p => p.File).Distinct(StringComparer.Ordinal).ToList();
            return [.. problems.OrderBy(p => files.IndexOf(p.File)).ThenBy(p => p.Line)];
        }
    }

    /// <summary>What is no fault, but was understood in one of several ways, in the order in which it was met.</summary>
    public IReadOnlyList<Problem> Remarks => remarks;

    /// <summary>Adds a remark.</summary>
    public void Remark(Problem remark) => remarks.Add(remark);

    /// <summary>Adds a problem; the same one again is not told twice.</summary>
    public void Add(Problem problem)
    {
        if (seen.Add(problem))
        {
            problems.Add(problem);
        }
    }
}
