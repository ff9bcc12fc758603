using Generator.Domain;
using Generator.Library;
using Generator.Library.Words;

namespace Generator.Rules;

/// <summary>What skill, limits, wardrobe and floor allow; null when allowed, else the reason in the trade's words.</summary>
public sealed class Ability
{
    private readonly string?[] technique;
    private readonly string?[,] techniqueOn;
    private readonly string?[,] attack;
    private readonly string?[,] reaction;

    public Ability(Brief brief, Book book)
    {
        var cast = brief.Attackers.Count;
        technique = [.. book.Techniques.Select(t => Technique(t, brief, book))];
        techniqueOn = new string?[book.Techniques.Count, cast];
        attack = new string?[book.Attacks.Count, cast];
        reaction = new string?[book.Reactions.Count, cast];
        for (var a = 0; a < cast; a++)
        {
            var person = brief.Attackers[a];
            for (var t = 0; t < book.Techniques.Count; t++)
            {
                techniqueOn[t, a] = Skilled(book.Techniques[t].Name, book.Techniques[t].AttackerSkill, person);
            }

            for (var k = 0; k < book.Attacks.Count; k++)
            {
                attack[k, a] = Limited(book.Attacks[k].Name, book.Attacks[k].Demands, person, book.Settle) ?? Spared(book.Attacks[k].Name, book.Attacks[k].Load, person);
            }

            for (var r = 0; r < book.Reactions.Count; r++)
            {
                reaction[r, a] = Reaction(book.Reactions[r], person, brief.Floor.Surface, book.Settle);
            }
        }
    }

    /// <summary>Why the hero cannot do the technique.</summary>
    public string? WhyNotTechnique(int t) => technique[t];

    /// <summary>Why the attacker cannot be the partner of the technique.</summary>
    public string? WhyNotOn(int t, int attacker) => techniqueOn[t, attacker];

    /// <summary>Why the attacker cannot throw the attack.</summary>
    public string? WhyNotAttack(int k, int attacker) => attack[k, attacker];

    /// <summary>Why the attacker cannot perform the reaction on this floor.</summary>
    public string? WhyNotReaction(int r, int attacker) => reaction[r, attacker];

    private static string? Technique(Technique t, Brief brief, Book book) =>
        Skilled(t.Name, t.HeroSkill, brief.Hero)
        ?? Limited(t.Name, t.Demands, brief.Hero, book.Settle)
        ?? Spared(t.Name, LoadOf(t, book.Stances), brief.Hero)
        ?? Fall(t.Name, t.HeroFall, brief.Hero, book.Settle)
        ?? Floor(t.Name, NeedOf(t.HeroFall), brief.Floor.Surface);

    private static string? Reaction(Reaction r, Performer person, Surface surface, Settle settle) =>
        Skilled(r.Name, r.Skill, person) ?? Spared(r.Name, r.Load, person) ?? Fall(r.Name, r.Fall, person, settle) ?? Floor(r.Name, r.Surface, surface);

    /// <summary>What a technique asks of the body with the stance that it ends in and what all stances that it starts from have in common.</summary>
    public static Load LoadOf(Technique technique, StanceTable stances)
    {
        var starts = technique.Starts.Members.Select(stances.LoadOf).ToList();
        var load = starts.Count > 0 ? technique.Load.Or(starts.Aggregate((one, other) => one.And(other))) : technique.Load;
        return technique.EndStance is { } end ? load.Or(stances.LoadOf(end)) : load;
    }

    private static string? Spared(string what, Load load, Performer person)
    {
        foreach (var limit in person.Limits)
        {
            var parts = Limit.Spares(limit);
            foreach (var act in parts == BodyParts.None ? [] : Enum.GetValues<LoadAct>())
            {
                if ((load[act] & parts) is not BodyParts.None and var asked)
                {
                    return $"{Words.Cap(what)} {LoadText.Of(act, asked)}, {person.Name} has the limit {limit}";
                }
            }
        }

        return null;
    }

    private static SurfaceNeed NeedOf(FallClass fall) => fall switch
    {
        FallClass.None => SurfaceNeed.Any,
        FallClass.ToKnee => SurfaceNeed.Dry,
        _ => SurfaceNeed.Mat,
    };

    private static string? Skilled(string what, Skill needed, Performer person) =>
        person.Skill >= needed ? null : $"{Words.Cap(what)} asks for {Word(needed)}, {person.Name} is {Word(person.Skill)}";

    private static string? Limited(string what, IReadOnlyList<string> demands, Performer person, Settle settle)
    {
        foreach (var demand in demands)
        {
            if (person.Limits.Contains(Limit.On(demand)))
            {
                return $"{Words.Cap(what)} asks for {demand}, {person.Name} has the limit {Limit.On(demand)}";
            }

            foreach (var garment in person.Wardrobe)
            {
                if (settle.Wardrobe.TryGetValue(garment, out var forbids) && forbids.Contains(demand))
                {
                    return $"{Words.Cap(what)} asks for {demand}, which {person.Name}'s wardrobe ({garment}) does not allow";
                }
            }
        }

        return null;
    }

    private static string? Fall(string what, FallClass fall, Performer person, Settle settle)
    {
        if (fall == FallClass.None)
        {
            return null;
        }

        return Limit.Against(fall).FirstOrDefault(person.Limits.Contains) is { } limit
            ? $"{Words.Cap(what)} is a fall that {person.Name} must not take ({limit})"
            : Limited(what, [fall == FallClass.ToKnee ? Demand.Kneel : Demand.Fall], person, settle);
    }

    private static string? Floor(string what, SurfaceNeed need, Surface surface)
    {
        var fits = need switch
        {
            SurfaceNeed.Mat => surface is Surface.Matted or Surface.Sprung,
            SurfaceNeed.Dry => surface is not (Surface.Wet or Surface.Uneven),
            _ => true,
        };
        return fits ? null : $"{Words.Cap(what)} needs {(need == SurfaceNeed.Mat ? "mats or a sprung floor with pads" : "a dry, even floor")}, the floor is {Word(surface)}";
    }

#pragma warning disable CA1308 // words for people are lower case
    private static string Word<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();
#pragma warning restore CA1308
}
