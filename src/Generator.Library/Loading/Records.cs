using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Gathers the records of all files, in the order of files.</summary>
internal sealed class Records
{
    private static readonly string[] Lists = ["techniques", "attacks", "reactions", "manners", "combinations", "styles"];

    private readonly List<Placed<Technique>> techniques = [];
    private readonly List<Placed<Attack>> attacks = [];
    private readonly List<Placed<Reaction>> reactions = [];
    private readonly List<Placed<Manner>> manners = [];
    private readonly List<Placed<Combination>> combinations = [];
    private readonly List<Placed<Style>> styles = [];

    public IReadOnlyList<Placed<Technique>> Techniques => techniques;

    public IReadOnlyList<Placed<Attack>> Attacks => attacks;

    public IReadOnlyList<Placed<Reaction>> Reactions => reactions;

    public IReadOnlyList<Placed<Manner>> Manners => manners;

    public IReadOnlyList<Placed<Combination>> Combinations => combinations;

    public IReadOnlyList<Placed<Style>> Styles => styles;

    /// <summary>Reads one file of records: any of techniques, attacks, reactions, manners, combinations and styles, and the family of its techniques.</summary>
    public void Read(ObjectReader root)
    {
        root.Allow("$schema");
        var family = root.Word<Family>("family");
        techniques.AddRange(root.Objects("techniques").Select(s => new Placed<Technique>(TechniqueReader.Read(s, family), s)));
        attacks.AddRange(root.Objects("attacks").Select(s => new Placed<Attack>(AttackReader.Read(s), s)));
        reactions.AddRange(root.Objects("reactions").Select(s => new Placed<Reaction>(ReactionReader.Read(s), s)));
        manners.AddRange(root.Objects("manners").Select(s => new Placed<Manner>(MannerReader.Read(s), s)));
        combinations.AddRange(root.Objects("combinations").Select(s => new Placed<Combination>(CombinationReader.Read(s), s)));
        styles.AddRange(root.Objects("styles").Select(s => new Placed<Style>(StyleReader.Read(s), s)));
        if (!Array.Exists(Lists, root.Has))
        {
            root.Missing("techniques", "a list of techniques, attacks, reactions, manners, combinations or styles");
        }

        root.Finish();
    }
}
