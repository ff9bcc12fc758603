using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Domain;

namespace Generator.Library.Tests.Bundled;

[Properties(Arbitrary = [typeof(RandomRecords)], MaxTest = 500)]
public class MirrorTests
{
    [Property]
    public void Any_technique_mirrored_twice_is_itself(Technique technique) => AssertSame(technique, Mirror.Of(Mirror.Of(technique)));

    [Property]
    public void Any_attack_mirrored_twice_is_itself(Attack attack) => AssertSame(attack, Mirror.Of(Mirror.Of(attack)));

    [Property]
    public void A_sided_technique_is_never_its_own_mirror(Technique technique)
    {
        var mirrored = Mirror.Of(technique);
        Assert.Equal(technique.Side is null, string.Equals(technique.Id, mirrored.Id, StringComparison.Ordinal));
        Assert.Equal(technique.Side is null, string.Equals(technique.Name, mirrored.Name, StringComparison.Ordinal));
        Assert.Equal(technique.LeftNeed, mirrored.RightNeed);
        Assert.Equal(technique.Turn.HalfHours, -mirrored.Turn.HalfHours);
    }

    [Fact]
    public void The_random_records_cover_what_matters_to_a_mirror()
    {
        var techniques = RandomRecords.Techniques().Generator.Sample(300).ToList();
        Assert.InRange(techniques.Count(t => t.Side is null), 50, 250);
        Assert.Contains(techniques, t => t.Window.IsAnywhere);
        Assert.True(techniques.Count(t => Math.Abs(t.Turn.HalfHours) >= 12) >= 50);
        Assert.True(techniques.Count(t => t.Carry is Carry.Clockwise or Carry.CounterClockwise) >= 75);
        Assert.True(techniques.Count(t => t.Answers.Members.Any(l => l.Side != LineSide.Centre)) >= 150);
        Assert.True(techniques.Count(t => t.LeftNeed != t.RightNeed) >= 150);
        Assert.True(RandomRecords.Attacks().Generator.Sample(300).Count(a => a.GripsLeft != a.GripsRight) >= 75);
    }

    [Fact]
    public void Every_technique_of_the_book_stands_there_with_its_mirror()
    {
        var book = BundledLibrary.Book;
        Assert.All(book.Techniques, t =>
        {
            AssertSame(t, Mirror.Of(Mirror.Of(t)));
            if (t.Side is not null)
            {
                AssertSame(book.Technique(Mirror.Id(t.BaseId, t.Side.Value.Other())), Mirror.Of(t));
            }
        });
        Assert.All(book.Attacks, a =>
        {
            AssertSame(a, Mirror.Of(Mirror.Of(a)));
            if (a.Side is not null)
            {
                AssertSame(book.Attack(Mirror.Id(a.BaseId, a.Side.Value.Other())), Mirror.Of(a));
            }
        });
    }

    private static void AssertSame(Technique expected, Technique actual)
    {
        Assert.Equal(expected.Demands, actual.Demands);
        Assert.Equal(expected, actual with { Demands = expected.Demands });
    }

    private static void AssertSame(Attack expected, Attack actual)
    {
        Assert.Equal(expected.Demands, actual.Demands);
        Assert.Equal(expected, actual with { Demands = expected.Demands });
    }
}
