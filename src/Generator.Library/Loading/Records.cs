using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Gathers the records of all files, in the order of files.</summary>
internal sealed class Records
{
    private readonly List<Placed<Technique>> techniques = [];
    private readonly List<Placed<Attack>> attacks = [];
    private readonly List<Placed<Reaction>> reactions = [];
    private readonly List<Placed<Manner>> manners = [];
    private readonly List<Placed<Combination>> combinations = [];

    public IReadOnlyList<Placed<Technique>> Techniques => techniques;

    public IReadOnlyList<Placed<Attack>> Attacks => attacks;

    public IReadOnlyList<Placed<Reaction>> Reactions => reactions;

    public IReadOnlyList<Placed<Manner>> Manners => manners;

    public IReadOnlyList<Placed<Combination>> Combinations => combinations;

    /// <summary>Reads one file of records: any of techniques, attacks, reactions, manners and combinations, and the family of its techniques.</summary>
    public void Read(ObjectReader root)
    {
        root.Allow("$schema");
        var family = root.Word<Family>("family");
        techniques.AddRange(root.Objects("techniques").Select(s => new Placed<Technique>(TechniqueReader.Read(s, family), s)));
        attacks.AddRange(root.Objects("attacks").Select(s => new Placed<Attack>(AttackReader.Read(s), s)));
        reactions.AddRange(root.Objects("reactions").Select(s => new Placed<Reaction>(ReactionReader.Read(s), s)));
        manners.AddRange(root.Objects("manners").Select(s => new Placed<Manner>(MannerReader.Read(s), s)));
        combinations.AddRange(root.Objects("combinations").Select(s => new Placed<Combination>(CombinationReader.Read(s), s)));
        if (!root.Has("techniques") && !root.Has("attacks") && !root.Has("reactions") && !root.Has("manners") && !root.Has("combinations"))
        {
            root.Missing("techniques", "a list of techniques, attacks, reactions, manners or combinations");
        }

        root.Finish();
    }
}
