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
    private readonly List<Way[]> beyond = [];

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
            var others = new HashSet<Way>();
            foreach (var gap in FormSteps.Gaps)
            {
                foreach (var move in Steps.From(forms[f], gap))
                {
                    var tied = move.Leaves.IsTied();
                    var (technique, reaction) = (book.TechniqueIndex(move.Technique.Id), move.Reaction is { } sold ? book.ReactionIndex(sold.Id) : -1);
                    (move.After.Ties <= 1 ? found : others).Add(new Way(technique, reaction, move.After.Ties <= 1 ? Number(move.After) : -1, tied ? Posture.Ready : move.Leaves));
                }
            }

            ways.Add([.. found]);
            beyond.Add([.. others]);
        }
    }

    internal Book Book { get; }

    internal FormSteps Steps { get; }

    internal IReadOnlyList<HeroForm> Forms => forms;

    /// <summary>The graph of a library; built once for each.</summary>
    public static FormGraph Of(Book book) => Known.GetValue(book.Own, b => new FormGraph(b));

    /// <summary>The moves out of a form, by its number.</summary>
    internal Way[] From(int form) => ways[form];

    /// <summary>The moves out of a form that leave the hero tied to more than one: where they lead the graph does not know, and says −1.</summary>
    internal Way[] Beyond(int form) => beyond[form];

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
