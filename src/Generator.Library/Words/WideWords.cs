namespace Generator.Library.Words;

/// <summary>Words that stand for too much to mean one record: they are answered with what might be meant.</summary>
internal static class WideWords
{
    /// <summary>Each word, and what to offer when too few records have it in their names.</summary>
    private static readonly Dictionary<string, string[]> Offers = new(StringComparer.Ordinal)
    {
        ["strike"] = ["cross", "jab", "hook"],
        ["block"] = ["outside block", "rising block", "blocked"],
        ["punch"] = ["cross", "jab", "body punch"],
        ["kick"] = ["front kick", "side kick", "low round kick", "round kick low"],
        ["throw"] = ["hip throw", "shoulder throw", "thrown over"],
        ["grab"] = ["lapel grab", "collar hold", "wrist catch", "keeps grip"],
        ["dodge"] = ["duck", "side step", "slip", "falls short"],
        ["parry"] = ["parry down", "inside parry", "limb swept in"],
        ["fall"] = ["back fall", "side fall", "knocked down", "knocked to knee", "drop to knee"],
        ["lock"] = ["straight arm lock", "wrist lock", "bends over lock"],
        ["hit"] = ["jab", "cross", "hook", "swing", "head turns", "head back", "folds"],
        ["finish"] = ["finishing cross", "throw finish", "out crumples", "out flat"],
    };

    /// <summary>"Sells it", "big sell": the attacker takes it in a way that is open.</summary>
    public static bool IsAnySell(string text) => PlainWord.Of(text).Split(' ') is ["sell" or "sells" or "reacts"] or [_, "sell"]
        or ["sell" or "sells", "it" or "that" or "big" or "hard" or "cam" or "ds" or "us" or "downstage" or "upstage", ..];

    public static bool Contains(string plain) => Offers.ContainsKey(Singular(plain));

    public static IReadOnlyList<string> OffersFor(string plain) => Offers.GetValueOrDefault(Singular(plain), []);

    private static string Singular(string plain) => plain.EndsWith('s') ? plain[..^1] : plain;
}
