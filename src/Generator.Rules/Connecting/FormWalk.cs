using System.Runtime.CompilerServices;
using Generator.Domain;
using Generator.Library;

namespace Generator.Rules.Connecting;

/// <summary>Every form that a move can leave the hero in, found by walking from the opening stances, and the moves that lead there.</summary>
public sealed class FormWalk
{
    /// <summary>Ways in that are kept for each form.</summary>
    private const int MostWaysIn = 3;

    /// <summary>A walk takes a second, and whoever asks for neighbours or dead ends needs it: it is done once for a library.</summary>
    private static readonly ConditionalWeakTable<Book, FormWalk> Known = [];

    private readonly Dictionary<HeroForm, List<string>> waysIn = [];
    private readonly Dictionary<(HeroForm After, Posture Leaves), SortedSet<int>> outcomes = [];
    private readonly List<HeroForm> forms = [];

    private FormWalk(FormSteps steps)
    {
        foreach (var stance in FormGraph.Openings)
        {
            Reach(HeroForm.FreeIn(stance)).Add("the opening");
        }

        for (var i = 0; i < forms.Count; i++)
        {
            foreach (var gap in FormSteps.Gaps)
            {
                foreach (var move in steps.From(forms[i], gap))
                {
                    var ways = Reach(move.After);
                    if (ways.Count < MostWaysIn && Of(move) is var by && !ways.Contains(by, StringComparer.Ordinal))
                    {
                        ways.Add(by);
                    }

                    if (move.Target >= 0 && move.Leaves != Posture.Out)
                    {
                        Count(move, steps.Book);
                    }
                }
            }
        }
    }

    /// <summary>All forms, those found first first.</summary>
    public IReadOnlyList<HeroForm> Forms => forms;

    /// <summary>How moves leave hero and target, out of any form and at once or with time for everything, and by which techniques, as positions in the book.</summary>
    internal IReadOnlyDictionary<(HeroForm After, Posture Leaves), SortedSet<int>> Outcomes => outcomes;

    /// <summary>Some moves that lead to a form: a technique and how it is sold.</summary>
    public IReadOnlyList<string> WaysTo(HeroForm form) => waysIn.TryGetValue(form, out var ways) ? ways : [];

    /// <summary>Walks a library.</summary>
    public static FormWalk Of(Book book) => Known.GetValue(book, b => new FormWalk(new FormSteps(b)));

    private static string Of(FormMove move) => move.Reaction is { } reaction ? $"{move.Technique.Id} ({reaction.Id})" : move.Technique.Id;

    /// <summary>The ways into a form, which is a new one where there are none yet.</summary>
    private List<string> Reach(HeroForm form)
    {
        if (!waysIn.TryGetValue(form, out var ways))
        {
            waysIn[form] = ways = [];
            forms.Add(form);
        }

        return ways;
    }

    private void Count(FormMove move, Book book)
    {
        var key = (move.After, move.Leaves);
        if (!outcomes.TryGetValue(key, out var by))
        {
            outcomes[key] = by = [];
        }

        by.Add(book.TechniqueIndex(move.Technique.Id));
    }
}
