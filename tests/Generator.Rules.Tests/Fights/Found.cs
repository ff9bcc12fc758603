using Generator.Domain;

namespace Generator.Rules.Tests.Fights;

/// <summary>What one rule found.</summary>
internal sealed class Found(IReadOnlyList<Finding> findings)
{
    private string Told => string.Join('\n', findings.Select(f => $"{f.Move} {f.Severity} {f.Message}"));

    /// <summary>The one finding there is.</summary>
    public Finding Only => Assert.Single(findings);

    public void FindsNothing() => Assert.True(findings.Count == 0, Told);

    /// <summary>So many findings, all at one move (from 1; 0 for the whole routine). Says nothing of points.</summary>
    public Found Finds(int count, int move)
    {
        Assert.True(count == findings.Count && findings.All(f => f.Move == move), $"Expected {count} at move {move}, found:\n{Told}");
        return this;
    }

    /// <summary>So many findings at one move about one person, whatever else is found.</summary>
    public Found Tells(int count, int move, string who)
    {
        Assert.True(count == Count(move, who), $"Expected {count} at move {move} about {who}, found:\n{Told}");
        return this;
    }

    /// <summary>Findings at one move about one person, or two.</summary>
    public int Count(int move, string who) => findings.Count(f => f.Move == move && f.Who == who);

    /// <summary>All findings are of this severity.</summary>
    public Found As(Severity severity)
    {
        Assert.All(findings, f => Assert.Equal(severity, f.Severity));
        return this;
    }

    /// <summary>What the first finding measured, and against what.</summary>
    public Found Measures(decimal measured, decimal allowed, string unit)
    {
        Assert.Equal((measured, allowed, unit), (findings[0].Measured, findings[0].Allowed, findings[0].Unit));
        return this;
    }

    /// <summary>Some finding's sentence has these words.</summary>
    public Found Says(string words)
    {
        Assert.True(findings.Any(f => f.Message.Contains(words, StringComparison.Ordinal)), Told);
        return this;
    }

    /// <summary>The points of all findings together.</summary>
    public Found Costs(int points)
    {
        Assert.Equal(points, findings.Sum(f => f.Points));
        return this;
    }

    /// <summary>Who the first finding concerns.</summary>
    public Found Concerns(string who)
    {
        Assert.Equal(who, findings[0].Who);
        return this;
    }
}
