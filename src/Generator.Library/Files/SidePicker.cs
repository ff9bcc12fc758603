using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Chooses the side of a technique or an attack that was written without one: the side at which the two meet.</summary>
internal static class SidePicker
{
    /// <summary>
    /// One technique and one attack out of the candidates (null where the row has none). Where both sides fit, or none does, the row is
    /// asked to say which; the word is then a problem.
    /// </summary>
    public static (Technique? Technique, Attack? Attack) Pick(RoutineRow row, IReadOnlyList<Technique>? techniques, IReadOnlyList<Attack>? attacks)
    {
        var technique = techniques is [var onlyTechnique] ? onlyTechnique : null;
        var attack = attacks is [var onlyAttack] ? onlyAttack : null;
        if (techniques is { Count: > 0 } && attacks is { Count: > 0 })
        {
            var fitting = techniques.SelectMany(t => attacks.Where(a => t.Answers.Contains(a.Line)).Select(a => (t, a))).ToList();
            technique ??= Only(fitting.Select(f => f.t));
            attack ??= Only(fitting.Select(f => f.a));
        }

        Ask(row, "technique", technique, techniques?.Select(t => t.Id));
        Ask(row, "attack", attack, attacks?.Select(a => a.Id));
        return (technique, attack);
    }

    private static T? Only<T>(IEnumerable<T> fitting)
        where T : class => fitting.Distinct().ToList() is [var one] ? one : null;

    private static void Ask<T>(RoutineRow row, string field, T? picked, IEnumerable<string>? candidates)
        where T : class
    {
        if (picked is null && candidates?.ToList() is { Count: > 1 } ids)
        {
            row.Refuse(field, $"{FieldText.Quote(row.Text(field)!)} can mean more than one {field}.", NearestWords.OneOf(ids));
        }
    }
}
