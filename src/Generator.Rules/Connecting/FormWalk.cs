using Generator.Domain;
using Generator.Library;

namespace Generator.Rules.Connecting;

/// <summary>Every form that a move can leave the hero in, found by walking from the opening stances, and the moves that lead there.</summary>
public sealed class FormWalk
{
    /// <summary>Ways in that are kept for each form.</summary>
    private const int MostWaysIn = 3;

    private readonly Dictionary<HeroForm, List<string>> waysIn = [];
    private readonly List<HeroForm> forms = [];

    private FormWalk(FormSteps steps)
    {
        foreach (var stance in FormGraph.Openings)
        {
            Reach(HeroForm.FreeIn(stance), "the opening");
        }

        for (var i = 0; i < forms.Count; i++)
        {
            foreach (var gap in FormSteps.Gaps)
            {
                foreach (var move in steps.From(forms[i], gap))
                {
                    Reach(move.After, Of(move));
                }
            }
        }
    }

    /// <summary>All forms, those found first first.</summary>
    public IReadOnlyList<HeroForm> Forms => forms;

    /// <summary>Some moves that lead to a form: a technique and how it is sold.</summary>
    public IReadOnlyList<string> WaysTo(HeroForm form) => waysIn.TryGetValue(form, out var ways) ? ways : [];

    /// <summary>Walks a library.</summary>
    public static FormWalk Of(Book book) => new(new FormSteps(book));

    private static string Of(FormMove move) => move.Reaction is { } reaction ? $"{move.Technique.Id} ({reaction.Id})" : move.Technique.Id;

    private void Reach(HeroForm form, string by)
    {
        if (!waysIn.TryGetValue(form, out var ways))
        {
            waysIn[form] = ways = [];
            forms.Add(form);
        }

        if (ways.Count < MostWaysIn && !ways.Contains(by, StringComparer.Ordinal))
        {
            ways.Add(by);
        }
    }
}
