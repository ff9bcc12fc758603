using Generator.Domain;

namespace Generator.Library.Words;

/// <summary>A load in words: <c>carries weight on the right leg, works with the left leg</c>.</summary>
public static class LoadText
{
    /// <summary>All that a record asks of the body; "nothing beyond standing" for an empty load.</summary>
    public static string Of(Load load)
    {
        IReadOnlyList<string> said = [.. Enum.GetValues<LoadAct>().Where(act => load[act] != BodyParts.None).Select(act => Of(act, load[act]))];
        return said.Count == 0 ? "nothing beyond standing and stepping" : string.Join(", ", said);
    }

    /// <summary>What one act asks of some parts, as a verb with its object: <c>carries weight on the right leg</c>.</summary>
    public static string Of(LoadAct act, BodyParts parts) => Verb(act) + " " + Parts(parts);

    /// <summary>Parts with their article: <c>the left leg and the back</c>.</summary>
    public static string Parts(BodyParts parts)
    {
        IReadOnlyList<string> words = [.. BodyPartWords.Of(parts).Select(w => "the " + w.Replace('-', ' '))];
        return words.Count < 2 ? string.Concat(words) : string.Join(", ", words.SkipLast(1)) + " and " + words[^1];
    }

    private static string Verb(LoadAct act) => act switch
    {
        LoadAct.Carry => "carries weight on",
        LoadAct.Pivot => "pivots on",
        LoadAct.Jump => "jumps off with",
        LoadAct.Land => "lands on",
        LoadAct.Kneel => "kneels on",
        LoadAct.Bend => "bends deep in",
        LoadAct.Work => "works with",
        _ => "takes strain in",
    };
}
