using FsCheck;
using FsCheck.Fluent;
using Generator.Domain;

namespace Generator.Testing;

/// <summary>Tells FsCheck how to make briefs: <c>[Property(Arbitrary = [typeof(Briefs)])]</c>. They use the words of <see cref="TinyBook"/>.</summary>
public static class Briefs
{
    public static Arbitrary<Brief> Brief() => Arb.From(Seeds().Select(s => RandomBrief.Of(s, TinyBook.Book)), Smaller);

    /// <summary>Seeds of random briefs and routines, all equally likely.</summary>
    public static Gen<int> Seeds() => Gen.Choose(0, int.MaxValue - 1);

    private static IEnumerable<Brief> Smaller(Brief brief)
    {
        if (brief.Moments.Count > 0)
        {
            yield return brief with { Moments = [] };
        }

        if (brief.Cameras.Count > 0)
        {
            yield return brief with { Cameras = [] };
        }

        if (brief.Attackers.Count > 1)
        {
            yield return brief with { Attackers = [brief.Attackers[0]], Moments = [], Ending = null };
        }
    }
}
