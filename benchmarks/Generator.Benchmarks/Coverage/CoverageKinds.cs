using Generator.Domain;
using Generator.Library;
using Generator.Rules.Connecting;

namespace Generator.Benchmarks.Coverage;

/// <summary>Everything of a library that should occur in drafts, kind by kind.</summary>
internal static class CoverageKinds
{
    public static IReadOnlyList<CoverageKind> Of(Book book)
    {
        var techniques = book.Techniques.DistinctBy(t => t.BaseId, StringComparer.Ordinal).ToList();
        return
        [
            Techniques(book, "techniques", techniques),
            Techniques(book, "supported and holding moves", [.. techniques.Where(CoverageTally.IsBesideAnother)]),
            Attacks(book),
            Reactions(book),
            Grips(book),
        ];
    }

    private static CoverageKind Techniques(Book book, string name, IReadOnlyList<Technique> techniques) => new(
        name,
        [.. techniques.Select(t => t.BaseId)],
        (tally, id) => tally.Techniques.GetValueOrDefault(id),
        id => [new MomentMove(id, null, null, null)],
        id => WhyNoTechnique(book, id));

    private static CoverageKind Attacks(Book book) => new(
        "attacks",
        [.. book.Attacks.Select(a => a.BaseId).Distinct(StringComparer.Ordinal)],
        (tally, id) => tally.Attacks.GetValueOrDefault(id),
        id => book.Attacks.Where(a => Same(a.BaseId, id)).SelectMany(a => Answers(book, a).Select(t => new MomentMove(t.Id, null, a.Id, null))),
        id => book.Attacks.Any(a => Same(a.BaseId, id) && Answers(book, a).Any()) ? null : "nothing in the library answers it");

    private static CoverageKind Reactions(Book book) => new(
        "reactions",
        [.. book.Reactions.Select(r => r.Id)],
        (tally, id) => tally.Reactions.GetValueOrDefault(id),
        id => book.Techniques.Where(t => t.Reactions.Contains(id)).Select(t => new MomentMove(t.Id, null, null, id)),
        id => book.Techniques.Any(t => t.Reactions.Contains(id)) ? null : "no technique lists it");

    private static CoverageKind Grips(Book book) => new(
        "grips",
        [.. book.Techniques.Where(t => t.Seizes).SelectMany(t => t.Answers.Members).Select(l => l.Kind).Distinct().Order().Select(Words)],
        (tally, id) => tally.Grips.Where(g => Same(Words(g.Key), id)).Sum(g => g.Value),
        id => book.Attacks.Where(a => Same(Words(a.Line.Kind), id)).SelectMany(a => Answers(book, a).Where(t => t.Seizes).Select(t => new MomentMove(t.Id, null, a.Id, null))),
        id => book.Attacks.Any(a => Same(Words(a.Line.Kind), id)) ? null : "no attack takes it");

    private static IEnumerable<Technique> Answers(Book book, Attack attack) =>
        book.Techniques.Where(t => attack.IsWalkIn ? t.Needs.Contains(Posture.Ready) : t.Answers.Contains(attack.Line));

    private static string? WhyNoTechnique(Book book, string id)
    {
        bool[] goals = [.. book.Techniques.Select(t => Same(t.BaseId, id))];
        var routes = new FormRoutes(FormGraph.Of(book), goals, [.. goals.Select(_ => true)]);
        var ways = new[] { Stance.LeftLead, Stance.RightLead, Stance.Square }.Any(s => routes.From(HeroForm.FreeIn(s), FormRoutes.MostSetbacks) != FormRoutes.Never);
        return ways ? null : "no moves of the library leave the hero as it needs";
    }

    /// <summary>"grab-throat-rear".</summary>
    private static string Words(LineKind kind) =>
        string.Concat(kind.ToString().Select((c, i) => char.IsUpper(c) ? (i == 0 ? string.Empty : "-") + char.ToLowerInvariant(c) : c.ToString()));

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
