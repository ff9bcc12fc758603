using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads the acts of a brief: each says its share of the fight, how the hero stands and, where wanted, how many setbacks it has.</summary>
internal static class ActReader
{
    private const int Whole = 100;

    public static IReadOnlyList<Act>? Acts(ObjectReader root, int? setbacks)
    {
        if (!root.Has("acts"))
        {
            return null;
        }

        var acts = root.Objects("acts").Select(One).ToList();
        if (acts.Count == 0)
        {
            return acts;
        }

        if (acts.Sum(a => a.Percent) is var sum && sum != Whole)
        {
            root.Refuse("acts", FormattableString.Invariant($"The shares of the acts add up to {sum / 100m:0.##}."), "Maybe change one of them so that they come to 1.");
        }

        if (setbacks is { } asked && (asked < acts.Sum(a => a.FewestSetbacks) || asked > acts.Sum(a => (long)a.MostSetbacks)))
        {
            root.Refuse("setbacks", $"The brief asks for {Amounts.Many(asked, "setback")}, its acts for {acts.Sum(a => a.FewestSetbacks)}.", "Maybe leave one of the two out.");
        }

        return acts;
    }

    /// <summary>What a setback of the act hurts.</summary>
    private static Hurt? Hurts(ObjectReader reader)
    {
        if (reader.Text(HurtWords.Hurts) is not { } text)
        {
            return null;
        }

        var (hurt, message, maybe) = HurtWords.Read(text);
        if (hurt is null)
        {
            reader.Refuse(HurtWords.Hurts, message, maybe);
        }

        return hurt;
    }

    private static Act One(ObjectReader reader)
    {
        if (!reader.Has("share"))
        {
            reader.Missing("share", "\"share\": 0.4");
        }

        if (!reader.Has("hero"))
        {
            reader.Missing("hero", "\"hero\": \"on-top\"");
        }

        var act = new Act((int)Math.Round(Whole * (reader.Number("share", Measures.ActShare) ?? 1), MidpointRounding.AwayFromZero), reader.Word<HeroStanding>("hero") ?? HeroStanding.Even, reader.Whole("setbacks", Measures.Asked), Hurts(reader));
        if (act is { Hurts: not null, MostSetbacks: 0 })
        {
            reader.Refuse(HurtWords.Hurts, "The act is to have no setback, so that none of its setbacks hurts.", "Maybe the hero is in trouble there: \"hero\": \"in-trouble\"; or \"setbacks\": 1.");
        }

        reader.Finish();
        return act;
    }
}
