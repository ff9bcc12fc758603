using Generator.Domain;

namespace Generator.Rules;

/// <summary>
/// What skill, limits, wardrobe and floor of a brief take out of the library, each with the reason. A technique is out when neither side of it
/// is possible with any attacker; an attack or a reaction when no attacker can perform it.
/// </summary>
public sealed class Availability
{
    private readonly Scene scene;

    public Availability(Scene scene)
    {
        this.scene = scene;
        var book = scene.Book;
        Techniques = [.. OutOf(book.Techniques.Select((t, i) => (t.BaseId, IsAsked(t) ? Why(i) : null)))];
        Attacks = [.. OutOf(book.Attacks.Select((a, i) => (a.BaseId, IsAsked(a) ? Nobody(who => scene.Able.WhyNotAttack(i, who)) : null)))];
        Reactions = [.. OutOf(book.Reactions.Select((r, i) => (r.Id, IsAsked(r.Uses, r.Prop) ? Nobody(who => scene.Able.WhyNotReaction(i, who)) : null)))];
    }

    /// <summary>Techniques that are out: base id and reason, in the order of the book.</summary>
    public IReadOnlyList<(string Id, string Reason)> Techniques { get; }

    public IReadOnlyList<(string Id, string Reason)> Attacks { get; }

    public IReadOnlyList<(string Id, string Reason)> Reactions { get; }

    private static IEnumerable<(string Id, string Reason)> OutOf(IEnumerable<(string Id, string? Reason)> all) =>
        all.GroupBy(p => p.Id, StringComparer.Ordinal).Where(g => g.All(p => p.Reason is not null)).Select(g => (g.Key, g.First().Reason!));

    /// <summary>Where there is one mark nobody asks for travel moves, so that nothing takes them out.</summary>
    private bool IsAsked(Technique technique) => (technique.Travel is null || scene.Brief.Travels) && IsAsked(technique.Uses, technique.Prop) && (scene.Props.Any || !technique.IsAgainstPropsAlone);

    /// <summary>Nor for what is done with things or props where there are none.</summary>
    private bool IsAsked(ThingNeed? thing, PropNeed? prop) => (thing is null || scene.Things.Any) && (prop is null || scene.Props.Any);

    /// <summary>Nor for what comes from the knee where nobody opens on one.</summary>
    private bool IsAsked(Attack attack) => IsAsked(attack.Uses, attack.Prop) && (!attack.FromKnee || scene.Brief.Attackers.Any(a => a.Kneels is not null));

    private string? Why(int index)
    {
        var technique = scene.Book.Techniques[index];
        if (scene.Able.WhyNotTechnique(index) is { } hero)
        {
            return hero;
        }

        return technique.HasNoTarget ? null : Nobody(who => scene.Able.WhyNotOn(index, who) ?? NoReaction(technique, who));
    }

    private string? NoReaction(Technique technique, int who)
    {
        var reasons = technique.Reactions.Select(r => scene.Able.WhyNotReaction(scene.Book.ReactionIndex(r), who)).ToList();
        return reasons.Count > 0 && reasons.TrueForAll(r => r is not null) ? reasons[0] : null;
    }

    /// <summary>The reason of the first attacker when every attacker has one.</summary>
    private string? Nobody(Func<int, string?> why)
    {
        string? first = null;
        for (var who = 0; who < scene.Cast; who++)
        {
            if (why(who) is not { } reason)
            {
                return null;
            }

            first ??= reason;
        }

        return first;
    }
}
