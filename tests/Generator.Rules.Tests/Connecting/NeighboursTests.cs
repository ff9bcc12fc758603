using Generator.Library;
using Generator.Library.Loading;
using Generator.Rules.Connecting;

namespace Generator.Rules.Tests.Connecting;

public sealed class NeighboursTests
{
    private static readonly Book Book = LibraryLoader.LoadBundled().Value!;

    private static readonly Neighbours All = new(Book);

    [Theory]
    [InlineData("knee-to-head", "body-hook", "hip-throw")]
    [InlineData("leg-sweep-out", "leg-catch", "wrist-catch")]
    [InlineData("arm-break-finish", "straight-arm-lock", "outside-block")]
    [InlineData("wedge-up", "seized-in-front", "hugged-from-behind")]
    [InlineData("rebound-back-fist", "inside-parry", "duck-under")]
    public void Some_come_before_and_some_cannot(string technique, string before, string never)
    {
        var ids = All.Before(technique).Select(t => t.BaseId).ToList();
        Assert.Contains(before, ids);
        Assert.DoesNotContain(never, ids);
        Assert.Contains(technique, All.After(before).Select(t => t.BaseId));
        Assert.DoesNotContain(technique, All.After(never).Select(t => t.BaseId));
    }

    [Fact]
    public void Nothing_follows_a_finish() => Assert.All(Book.Techniques.Where(t => t.Family == Domain.Family.Finish), t => Assert.Empty(All.After(t.BaseId)));

    /// <summary>What comes after one technique is looked up at once, so one after the other is asked until nothing is left.</summary>
    [Fact]
    public void Every_follow_up_of_the_library_comes_after_something()
    {
        var left = Book.Techniques.Where(t => !t.HasNoTarget && t.Answers.IsEmpty && !t.Needs.Contains(Domain.Posture.Ready)).Select(t => t.BaseId).ToHashSet(StringComparer.Ordinal);
        Assert.True(left.Count > 100, $"{left.Count} follow-ups");
        foreach (var technique in Book.Techniques.DistinctBy(t => t.BaseId, StringComparer.Ordinal).TakeWhile(_ => left.Count > 0))
        {
            left.ExceptWith(All.After(technique.BaseId).Select(t => t.BaseId));
        }

        Assert.Empty(left);
    }
}
