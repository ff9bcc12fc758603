using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Refuting;

/// <summary>
/// The ways from mark to mark: a draft visits the marks of a brief in their order, and for each step from one to the next it needs a travel move that goes so far. Proves that there is none.
/// <para>Sound for drafts because they have no others than those looked at here: all that hero, floor, things and cast allow, whoever stands wherever. It says nothing of a routine
/// that is there already, which may leave marks out.</para>
/// </summary>
internal static class Ways
{
    public static IEnumerable<string> Against(Workings workings)
    {
        var scene = workings.Scene;
        if (!scene.Brief.Travels)
        {
            yield break;
        }

        var repertoire = new Repertoire(scene);
        for (var to = 1; to < scene.Marks.Count; to++)
        {
            if (!repertoire.Leg(to - 1, to).All.Any())
            {
                yield return Why(scene, repertoire.Doable, to - 1, to);
            }
        }
    }

    /// <summary>Marks to which no travel move leads from any other mark, whatever the order: no routine comes there.</summary>
    public static IEnumerable<string> Nowhere(Scene scene, IReadOnlyList<int> marks)
    {
        if (marks.Count == 0)
        {
            yield break;
        }

        var repertoire = new Repertoire(scene);
        var all = Enumerable.Range(0, scene.Marks.Count);
        foreach (var mark in marks.Where(m => !all.Any(from => from != m && repertoire.Leg(from, m).All.Any())))
        {
            yield return Why(scene, repertoire.Doable, all.Where(from => from != mark).MinBy(from => scene.Marks.Way(from, mark)), mark);
        }
    }

    private static string Why(Scene scene, bool[] doable, int from, int to)
    {
        var travels = scene.Book.Techniques.Where((t, i) => doable[i] && t.Travel is not null).Select(t => t.Travel!).ToList();
        var way = new Centimetres(scene.Marks.Way(from, to));
        var (marks, hero) = (scene.Brief.Marks, scene.Brief.Hero.Name);
        var why = travels.Count == 0 ? "cannot do any travel move"
            : travels.TrueForAll(t => t.Most < way) ? $"goes {travels.Max(t => t.Most)} at the most in one travel move"
            : travels.TrueForAll(t => t.Least > way) ? $"goes {travels.Min(t => t.Least)} at the least in one travel move"
            : "has no travel move for that way with this cast and these things on the floor";
        return $"From {marks[from].Name} to {marks[to].Name} it is {way}, and {hero} {why}.";
    }
}
