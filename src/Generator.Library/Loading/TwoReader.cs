using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Reads what a technique for two says of the second attacker.</summary>
internal static class TwoReader
{
    private static readonly Quantity Reach = new("a distance", 0.3m, 2.5m, "m", "Maybe it is in centimetres; write metres from the mark, such as 1.2.");
    private static readonly Quantity Apart = new("a number", 2m, 12m, "half hours", "Maybe 4 to 8 are meant: a right angle is 6.");

    /// <summary>Null for a technique on one alone.</summary>
    public static SecondNeed? Of(ObjectReader source)
    {
        if (source.Object("two") is not { } two)
        {
            return null;
        }

        if (!two.Has("apart"))
        {
            two.Missing("apart", "\"apart\": [4, 8]");
        }

        var apart = two.Wholes("apart", 2, Apart) ?? [4, 8];
        var needs = PostureSet.Of([.. two.Words<Posture>("needs")]);
        if (needs.IsEmpty)
        {
            two.Refuse("needs", "Nothing says in which postures the second one may be found.", "Maybe add \"needs\": [\"ready\", \"off-balance\"].");
        }
        else if (needs.Members.FirstOrDefault(p => !Allowed.Contains(p), Posture.Ready) is var other && !Allowed.Contains(other))
        {
            two.Refuse("needs", $"Nobody is taken as a second one who is {EnumWords.Of(other)}.", $"Maybe one of these is meant: {string.Join(", ", Allowed.Members.Select(EnumWords.Of))}.");
        }

        var (near, far) = (two.Metres("from", Reach) ?? new(50), two.Metres("to", Reach) ?? new(120));
        if (near > far || apart is [var low, var high] && low > high)
        {
            two.Refuse(near > far ? "to" : "apart", "The greatest is less than the least.", "Maybe the two are swapped.");
        }

        two.Finish();
        return new SecondNeed(apart[0], apart[1], near, far, needs);
    }

    /// <summary>What contradicts itself in a technique for two.</summary>
    /// <param name="technique">The technique.</param>
    /// <param name="source">Where it was read from.</param>
    /// <param name="reactions">All of the library.</param>
    public static void Check(Technique technique, ObjectReader source, IEnumerable<Reaction> reactions)
    {
        if (technique.TakesTwo && reactions.FirstOrDefault(r => technique.Reactions.Contains(r.Id) && !Shared(r)) is { } alone)
        {
            source.Refuse("reactions", $"{FieldText.Quote(alone.Id)} cannot be shared: it holds, goes round, runs off, answers the blow or sends one into another.", "Maybe list reactions that leave each where they are or send them straight back.");
        }
    }

    private static bool Shared(Reaction reaction) =>
        reaction is { Posture: { } posture, Round: < 2, RunsOff: false, HitsSecond: false, AnswersBlow: false } && posture != Posture.Gripping && !posture.IsControlled();

    /// <summary>Where somebody is on the feet and neither holds nor is held: holds of two at once are not played.</summary>
    private static PostureSet Allowed { get; } = PostureSet.Of(Posture.Ready, Posture.OffBalance, Posture.HeadBack, Posture.Turned, Posture.Folded, Posture.Kneeling);
}
