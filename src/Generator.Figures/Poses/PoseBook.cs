using Generator.Domain;

namespace Generator.Figures.Poses;

/// <summary>All poses and shapes in memory.</summary>
/// <param name="Poses">By id.</param>
/// <param name="Stances">The pose of every stance of the hero.</param>
/// <param name="Postures">The pose of every posture of an attacker.</param>
/// <param name="Walking">A stride with the right foot in front.</param>
/// <param name="Shapes">Named ones first, then by what a record is; the first that fits counts.</param>
public sealed record PoseBook(
    IReadOnlyDictionary<string, Pose> Poses, IReadOnlyDictionary<Stance, string> Stances, IReadOnlyDictionary<Posture, string> Postures, Pose Walking, IReadOnlyList<Shape> Shapes)
{
    /// <summary>The shape of a technique; null when there is none.</summary>
    public Shape? Of(Technique technique) => Find(RecordKind.Technique, technique.BaseId, w => w.Fits(technique));

    /// <summary>The shape of an attack; null when there is none.</summary>
    public Shape? Of(Attack attack) => Find(RecordKind.Attack, attack.BaseId, w => w.Fits(attack));

    /// <summary>The shape of a reaction; null when there is none.</summary>
    public Shape? Of(Reaction reaction) => Find(RecordKind.Reaction, reaction.Id, w => w.Fits(reaction));

    private Shape? Find(RecordKind kind, string id, Func<ShapeWhen, bool> fits)
    {
        var shapes = Shapes.Where(s => s.Of == kind).ToList();
        return shapes.Find(s => s.Records.Contains(id, StringComparer.Ordinal)) ?? shapes.Find(s => s.When is { } when && fits(when));
    }
}
