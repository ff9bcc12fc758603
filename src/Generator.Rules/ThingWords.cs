using Generator.Domain;

namespace Generator.Rules;

/// <summary>How people speak of things and of what is done with them.</summary>
public static class ThingWords
{
    /// <summary>Something that may be used so.</summary>
    public static string Of(ThingUse use) => use switch
    {
        ThingUse.Lean => "something to lean on",
        ThingUse.Sit => "something as high as a seat, to sit down on",
        ThingUse.PushOff => "something to push off from",
        ThingUse.Slam => "something to be driven against",
        ThingUse.Bounce => "something that gives back, such as a rail",
        ThingUse.BendOver => "something to be bent over",
        ThingUse.Trip => "something to stumble over",
        ThingUse.ThrownOnto => "something rated and padded to be thrown onto",
        ThingUse.Behind => "something to get behind",
        ThingUse.Corner => "something to be cornered against",
        ThingUse.Block => "something to be put in the way",
        ThingUse.Vault => "something rated to go over",
        _ => "something rated to stand on",
    };

    /// <summary>Where it must be.</summary>
    public static string Of(ThingPlace place) => place switch
    {
        ThingPlace.BehindAttacker => "behind the attacker",
        ThingPlace.BehindHero => "behind the hero",
        ThingPlace.Between => "in the line between the two, give or take a step",
        ThingPlace.BesideHero => "beside the hero",
        _ => "on the way from mark to mark",
    };

    /// <summary>What is done with a thing, before its name: "against", "over".</summary>
    public static string Before(ThingUse use) => use switch
    {
        ThingUse.Lean or ThingUse.Sit => "on",
        ThingUse.PushOff or ThingUse.Climb or ThingUse.Bounce => "off",
        ThingUse.BendOver or ThingUse.Trip or ThingUse.Vault => "over",
        ThingUse.ThrownOnto => "onto",
        ThingUse.Behind => "behind",
        ThingUse.Block => "with",
        _ => "against",
    };
}
