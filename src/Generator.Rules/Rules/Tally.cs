using Generator.Domain;

namespace Generator.Rules.Rules;

/// <summary>Counts what rules find. Findings in words are kept only when wanted, so that a search can count without writing.</summary>
public sealed class Tally(bool inWords)
{
    private List<Finding>? findings;

    /// <summary>Points of rough findings.</summary>
    public int Points { get; private set; }

    /// <summary>Number of findings that must never occur: broken or unsafe.</summary>
    public int Forbidden { get; private set; }

    public IReadOnlyList<Finding> Findings => findings ?? [];

    /// <summary>Counts a finding. True when it should also be told in words, with <see cref="Tell"/>.</summary>
    /// <param name="severity">How grave it is.</param>
    /// <param name="points">Points of a rough finding, at least 1; 0 for the others.</param>
    public bool Count(Severity severity, int points = 0)
    {
        if (severity >= Severity.Broken)
        {
            Forbidden++;
        }
        else if (severity == Severity.Rough)
        {
            Points += points;
        }

        return inWords;
    }

    /// <summary>Keeps the words of the finding just counted.</summary>
    public void Tell(Finding finding) => (findings ??= []).Add(finding);
}
