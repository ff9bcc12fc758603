using System.Runtime.CompilerServices;
using Generator.Domain;
using Generator.Library;

namespace Generator.Rules.Connecting;

/// <summary>
/// The forms in which moves can leave a hero who is tied to one attacker at most, and the moves that lead from one to the next. Distances and bearings
/// are left out, so that it knows of every way there is and of some that no floor allows.
/// </summary>
public sealed class FormGraph
{
    /// <summary>One move: who sells it and how, and where it leads.</summary>
    /// <param name="Technique">Position in the book.</param>
    /// <param name="Reaction">Position in the book, −1 for none.</param>
    /// <param name="To">Number of the form it leaves the hero in.</param>
    /// <param name="Leaves">The posture of its target afterwards; ready where it leaves somebody tied, for what follows is then a matter of the form.</param>
    internal readonly record struct Way(int Technique, int Reaction, int To, Posture Leaves);

    /// <summary>Stances in which a fight opens.</summary>
    internal static readonly Stance[] Openings = [Stance.LeftLead, Stance.RightLead, Stance.Square];

    private static readonly ConditionalWeakTable<Book, FormGraph> Known = [];

    private readonly Dictionary<HeroForm, int> numbers = [];
    private readonly List<HeroForm> forms = [];
    private readonly List<Way[]> ways = [];

    private FormGraph(Book book)
    {
        Book = book;
        Steps = new FormSteps(book);
        foreach (var stance in Openings)
        {
            Number(HeroForm.FreeIn(stance));
        }

        for (var f = 0; f < forms.Count; f++)
        {
            var found = new HashSet<Way>();
            foreach (var gap in FormSteps.Gaps)
            {
                foreach (var move in Steps.From(forms[f], gap))
                {
                    if (move.After.Ties <= 1)
                    {
                        var tied = move.Leaves.IsControlled() || move.Leaves == Posture.Gripping;
                        found.Add(new Way(book.TechniqueIndex(move.Technique.Id), move.Reaction is { } reaction ? book.ReactionIndex(reaction.Id) : -1, Number(move.After), tied ? Posture.Ready : move.Leaves));
                    }
                }
            }

            ways.Add([.. found]);
        }
    }

    internal Book Book { get; }

    internal FormSteps Steps { get; }

    internal IReadOnlyList<HeroForm> Forms => forms;

    /// <summary>The graph of a library; built once for each.</summary>
    public static FormGraph Of(Book book) => Known.GetValue(book.Own, b => new FormGraph(b));

    /// <summary>The moves out of a form, by its number.</summary>
    internal Way[] From(int form) => ways[form];

    /// <summary>The number of a form; −1 for one that the graph leaves out.</summary>
    internal int NumberOf(HeroForm form) => numbers.GetValueOrDefault(form, -1);

    private int Number(HeroForm form)
    {
        if (!numbers.TryGetValue(form, out var number))
        {
            numbers[form] = number = forms.Count;
            forms.Add(form);
        }

        return number;
    }
}
