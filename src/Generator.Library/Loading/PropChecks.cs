using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>
/// Stage practice with props, asked of every record when it is read: no thrust above the belly, cuts short of the body, no swing at a head but a planned miss, a break-away on padded parts alone. Common
/// practice, no source.
/// </summary>
internal static class PropChecks
{
    /// <summary>So many arms from the middle of one body to the middle of the other, and the length of the prop, leave 15 cm, as the straight punches do.</summary>
    public const decimal ShortOfTheBody = 1.4m;

    public static void Check(Records records, PropTable props)
    {
        foreach (var (attack, source) in records.Attacks)
        {
            if (source.Has("line") && attack.Line.IsArmed != (attack.Prop is not null))
            {
                source.Refuse("line", attack.Line.IsArmed ? "A line of a prop needs something in the hand." : "What comes with a prop comes on a line of its own, so that no bare arm is put in its way.", attack.Line.IsArmed ? "Maybe add \"prop\"." : "Maybe write a line that begins with prop-.");
            }

            if (attack.Prop is { } need)
            {
                var high = attack.Line.Kind is LineKind.PropOver or LineKind.PropRoundHigh;
                Served(source, need, props);
                Practice(source, need, high, attack.NonContact, attack.Contact);
                if ((attack.Line.Kind == LineKind.PropSlash) != (need.Use == PropUse.Slash))
                {
                    source.Refuse("line", "A cut comes on prop-slash, and nothing else does.", "Maybe the line or the \"use\" of the prop should be another.");
                }
            }
        }

        foreach (var (technique, source) in records.Techniques)
        {
            if (technique.Family == Family.Setback && technique.Answers.Members.Any(l => l.Kind is LineKind.PropOver or LineKind.PropRoundHigh or LineKind.PropSlash))
            {
                source.Refuse("answers", "Nobody takes a prop on the head, or a cut.", "Maybe a blow at the flank is meant: prop-round or prop-straight.");
            }

            if (technique.Prop is { } need)
            {
                Served(source, need, props);
                if (need.Holder == PropHolder.Hero)
                {
                    Practice(source, need, technique.Height == Height.High && technique.IsHit, technique.Kind == ContactKind.NonContact, technique.Band);
                }

                if (technique.TakesTwo || (technique.HasNoTarget && need.Holder == PropHolder.Attacker))
                {
                    source.Refuse("prop", technique.TakesTwo ? "It takes two, and one prop serves one." : "It has no target, so that nobody holds the prop.", "Maybe another \"with\" is meant.");
                }
            }
        }

        foreach (var (reaction, source) in records.Reactions.Where(r => r.Record.Prop is not null))
        {
            Served(source, reaction.Prop!, props);
            if (reaction.Prop!.Then is not (PropFate.Keeps or PropFate.Drops))
            {
                source.Refuse("prop", "Whoever sells a blow keeps what they hold, or lets it fall.", "Maybe \"then\": \"drops\" is meant.");
            }
        }
    }

    private static void Served(ObjectReader source, PropNeed need, PropTable props)
    {
        var two = (need.Hand ?? need.Into) == PropHand.Both;
        if (props.Kinds.Count > 0 && !props.Kinds.Any(k => k.Uses.Contains(need.Use) && (need.Hand is null && need.Into is null || k.Hands == 2 == two)))
        {
            source.Refuse("prop", $"No kind of prop that is held so serves to {EnumWords.Of(need.Use)}.", "Maybe another use or hand is meant, or the kind is missing from props.json.");
        }
    }

    private static void Practice(ObjectReader source, PropNeed need, bool high, bool misses, Band band)
    {
        var shortOf = misses && band.Limb == Limb.Arm && band.From >= ShortOfTheBody && band.StepIn.Value == 0;
        if (need.Use is PropUse.Thrust or PropUse.Press or PropUse.Throw && high)
        {
            source.Refuse("prop", "Nothing is thrust, pushed or thrown at a face.", "Maybe it goes at the belly, beside the line.");
        }
        else if (need.Use == PropUse.Slash && !shortOf)
        {
            source.Refuse("band", FormattableString.Invariant($"A cut passes short of the body: a non-contact one from {ShortOfTheBody} arms on, without a step in."), "Maybe the band begins too near.");
        }
        else if (need.Use == PropUse.Swing && high && !shortOf)
        {
            source.Refuse("band", FormattableString.Invariant($"A swing at head height is a planned miss: non-contact, from {ShortOfTheBody} arms on, without a step in."), "Maybe it goes at the arm or the flank.");
        }
        else if (need.Use == PropUse.Break && high)
        {
            source.Refuse("height", "A break-away breaks on a padded shoulder or back, never on a head.", "Maybe \"height\": \"middle\" is meant.");
        }
    }
}
