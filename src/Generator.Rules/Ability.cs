using Generator.Domain;
using Generator.Library;
using Generator.Library.Words;

namespace Generator.Rules;

/// <summary>What skill, limits, wardrobe and floor allow; null when allowed, else the reason in the trade's words.</summary>
public sealed class Ability
{
    private static readonly Stance[] Stances = Enum.GetValues<Stance>();

    private readonly string?[,] stance;
    private readonly StanceSet[] allowed;
    private readonly string?[] technique;
    private readonly string?[,] techniqueOn;
    private readonly string?[,] attack;
    private readonly string?[,] reaction;

    public Ability(Brief brief, Book book)
        : this(brief, book, FloorThings.Of(brief, book), new HandProps(brief, book), new FloorMats(brief, book.Settle))
    {
    }

    public Ability(Brief brief, Book book, FloorThings things, HandProps props, FloorMats mats)
    {
        var cast = brief.Attackers.Count;
        Meanwhile = new Meanwhile(brief, book);
        stance = new string?[Stances.Length, Stances.Length];
        foreach (var from in Stances)
        {
            foreach (var to in Stances)
            {
                stance[(int)from, (int)to] = Standing(from, to, brief.Hero, book);
            }
        }

        allowed = [.. Stances.Select(from => StanceSet.Of([.. Stances.Where(to => WhyNotStance(from, to) is null)]))];
        technique = [.. book.Techniques.Select(t => Technique(t, brief, book, mats) ?? Lacking(t.Uses, t.Prop, t.Name) ?? (t.IsAgainstPropsAlone && !props.Any ? $"{t.Name} answers only what comes with a prop, and the brief has none" : null))];
        techniqueOn = new string?[book.Techniques.Count, cast];
        attack = new string?[book.Attacks.Count, cast];
        reaction = new string?[book.Reactions.Count, cast];
        for (var a = 0; a < cast; a++)
        {
            var person = brief.Attackers[a];
            for (var t = 0; t < book.Techniques.Count; t++)
            {
                techniqueOn[t, a] = Partnered(book.Techniques[t], person, book.Settle);
            }

            for (var k = 0; k < book.Attacks.Count; k++)
            {
                attack[k, a] = FromKnee(book.Attacks[k], person) ?? Asked(book.Attacks[k].Name, book.Attacks[k].Demands, book.Attacks[k].Load, person, book.Settle) ?? Lacking(book.Attacks[k].Uses, book.Attacks[k].Prop, book.Attacks[k].Name);
            }

            for (var r = 0; r < book.Reactions.Count; r++)
            {
                reaction[r, a] = Reaction(book.Reactions[r], person, brief.Floor.Surface, mats, book.Settle) ?? Lacking(book.Reactions[r].Uses, book.Reactions[r].Prop, book.Reactions[r].Name);
            }
        }

        string? Lacking(ThingNeed? thing, PropNeed? prop, string name) => things.WhyNot(thing, name) ?? props.WhyNot(prop, name);
    }

    /// <summary>What those who hold or are held can bear while the hero works on somebody else.</summary>
    public Meanwhile Meanwhile { get; }

    /// <summary>Why the hero cannot do the technique.</summary>
    public string? WhyNotTechnique(int t) => technique[t];

    /// <summary>Why the hero cannot go from one stance to another in a gap, or stay in it where both are the same.</summary>
    public string? WhyNotStance(Stance from, Stance to) => stance[(int)from, (int)to];

    /// <summary>Those of some stances that the hero may go to or stay in; all of them where none is allowed.</summary>
    public StanceSet Allowed(Stance from, StanceSet stances) => stances.And(allowed[(int)from]) is { Bits: not 0 } some ? some : stances;

    /// <summary>Why the attacker cannot be the partner of the technique.</summary>
    public string? WhyNotOn(int t, int attacker) => techniqueOn[t, attacker];

    /// <summary>Why the attacker cannot throw the attack.</summary>
    public string? WhyNotAttack(int k, int attacker) => attack[k, attacker];

    /// <summary>Why the attacker cannot perform the reaction on this floor.</summary>
    public string? WhyNotReaction(int r, int attacker) => reaction[r, attacker];

    private string? Technique(Technique t, Brief brief, Book book, FloorMats mats) =>
        (t.Travel is not null && !brief.Travels ? $"{t.Name} goes to another mark, and the brief has one only" : null)
        ?? Skilled(t.Name, t.HeroSkill, brief.Hero)
        ?? Asked(t.Name, t.Demands, t.Load, brief.Hero, book.Settle)
        ?? Started(t)
        ?? (t.EndStance is { } end ? WhyNotStance(end, end) : null)
        ?? Fall(t.Name, t.HeroFall, brief.Hero, book.Settle)
        ?? HeroFalls(t, brief, mats, book.Settle);

    /// <summary>Why the hero can take none of the stances that a technique starts from.</summary>
    private string? Started(Technique t)
    {
        var reasons = t.Starts.Members.Select(s => WhyNotStance(s, s)).ToList();
        return reasons.Count > 0 && reasons.TrueForAll(r => r is not null) ? reasons[0] : null;
    }

    private static string? Partnered(Technique t, Performer person, Settle settle) =>
        Skilled(t.Name, t.AttackerSkill, person) ?? Asked($"whoever partners {Words.Low(t.Name)}", [], t.PartnerLoad, person, settle);

    private static string? FromKnee(Attack k, AttackerPart person) =>
        k.FromKnee && person.Kneels is null ? $"{k.Name} comes from the knee, {person.Name} opens on both feet" : null;

    private static string? Standing(Stance from, Stance to, Performer hero, Book book)
    {
        var name = book.Stances.NameOf(to);
        IReadOnlyList<string> demands = to.IsFloor() ? [Demand.Floor] : to.IsKneeling() ? [Demand.Kneel] : [];
        return Asked(from == to ? $"standing {name}" : $"going from {book.Stances.NameOf(from)} to {name}", demands, from == to ? book.Stances.LoadOf(to) : book.Stances.LoadOf(from, to), hero, book.Settle);
    }

    private static string? Reaction(Reaction r, Performer person, Surface surface, FloorMats mats, Settle settle) =>
        Skilled(r.Name, r.Skill, person)
        ?? Asked(r.Name, r.Load.Pivot == BodyParts.None ? [] : [Demand.Spin], r.Load, person, settle)
        ?? Fall(r.Name, r.Fall, person, settle)
        ?? (r.Surface == SurfaceNeed.Mat && mats.Matter ? null : Floor(r.Name, r.Surface, surface));

    /// <summary>Why somebody cannot do what asks for this; whatever leaves the floor or kneels is a jump or a knee, whether it says so or not.</summary>
    internal static string? Asked(string what, IReadOnlyList<string> demands, Load load, Performer person, Settle settle)
    {
        IReadOnlyList<string> all = [.. demands, .. load.Jump == BodyParts.None ? [] : (string[])[Demand.Jump], .. load.Kneel == BodyParts.None ? [] : (string[])[Demand.Kneel]];
        return Limited(what, all, person, settle) ?? Spared(what, load, person);
    }

    private static string? Spared(string what, Load load, Performer person)
    {
        foreach (var limit in person.Limits)
        {
            var asked = load.And(Limit.Forbids(limit));
            foreach (var act in asked.Anywhere == BodyParts.None ? [] : Enum.GetValues<LoadAct>())
            {
                if (asked[act] != BodyParts.None)
                {
                    return $"{Words.Cap(what)} {LoadText.Of(act, asked[act])}, and {person.Name} has {(Limit.HurtPart(limit) is { } hurt ? $"a hurt {hurt.Replace('-', ' ')}" : $"the limit {limit}")}";
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
                return $"{Words.Cap(what)} asks for {demand}, and {person.Name} has the limit {Limit.On(demand)}";
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

    /// <summary>The hero may fall whichever way, so that a mat reaches a body's length and the technique's own step round the marks.</summary>
    private static string? HeroFalls(Technique t, Brief brief, FloorMats mats, Settle settle)
    {
        var need = NeedOf(t.HeroFall);
        if (need != SurfaceNeed.Mat || !mats.Matter)
        {
            return Floor(t.Name, need, brief.Floor.Surface);
        }

        var reach = brief.Hero.Height + settle.BodyRadius + new Centimetres(Math.Max(t.Band.StepIn.Value, t.Band.StepOut.Value));
        return mats.ReachRoundMarks(reach.Value) ? null : $"{Words.Cap(t.Name)} is a fall of {brief.Hero.Name}, the floor is hard, and no mat reaches {reach} round {(brief.Travels ? "all the marks" : "the mark")}";
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
