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

    [Fact]
    public void Every_follow_up_of_the_library_has_something_before_it() =>
        Assert.All(Book.Techniques.Where(t => !t.HasNoTarget && t.Answers.IsEmpty && !t.Needs.Contains(Domain.Posture.Ready)), t => Assert.NotEmpty(All.Before(t.BaseId)));
}
