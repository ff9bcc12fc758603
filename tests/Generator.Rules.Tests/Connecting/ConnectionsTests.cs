using Generator.Domain;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Rules.Connecting;
using Generator.Rules.Replaying;

namespace Generator.Rules.Tests.Connecting;

/// <summary>The library that comes with the program hangs together, and a library that lacks something does not.</summary>
public sealed class ConnectionsTests
{
    private static readonly Book Whole = LibraryLoader.LoadBundled().Value!;

    [Fact]
    public void There_is_no_dead_end_in_the_library()
    {
        var connections = Connections.Of(Whole);
        Assert.Empty(connections.DeadEnds);
        Assert.True(connections.FreeForms >= 25, $"{connections.FreeForms} free forms");
        Assert.True(connections.TiedForms >= 500, $"{connections.TiedForms} tied forms");
    }

    [Fact]
    public void Every_stance_every_kind_of_hand_and_every_bound_is_walked_through()
    {
        var forms = FormWalk.Of(Whole).Forms;
        Assert.All(Enum.GetValues<Stance>(), s => Assert.Contains(forms, f => f.Stance == s));
        Assert.All(Enum.GetValues<Bound>(), b => Assert.Contains(forms, f => f.Bound == b));
        Assert.All(Enum.GetValues<HandKind>(), h => Assert.Contains(forms, f => f.Left.Kind == h));
        Assert.All(new[] { Posture.HeldArm, Posture.HeldLeg, Posture.HeldBody, Posture.Pinned, Posture.Gripping }, p => Assert.Contains(forms, f => f.First.Posture == p));
        Assert.Contains(forms, f => f.Ties == 2);
        Assert.Equal(forms.Count, forms.Distinct().Count());
    }

    [Theory]
    [InlineData("leave-pinned", "a way to let go or to escape")]
    [InlineData("bridge-and-roll,knee-shove-off", "a way to let go or to escape")]
    [InlineData("floor-heel-chop,floor-heel-finish", "a follow-up on somebody on the back")]
    [InlineData("floor-roll,foot-shield,cover-up", "an answer to stomp-")]
    [InlineData("step-out-and-turn,turning-block,back-kick-stop,duck-and-turn", "an answer to round-kick-low-")]
    public void Without_these_there_are_dead_ends(string without, string lacks)
    {
        var names = without.Split(',');
        var book = new Book("less", Whole.Stances, Whole.Settle, Whole.Techniques.Where(t => t.Side != Side.Right && !names.Contains(t.BaseId)), Whole.Attacks.Where(a => a.Side != Side.Left), Whole.Reactions);
        var ends = Connections.Of(book).DeadEnds;
        Assert.Contains(ends, e => e.Lacks.StartsWith(lacks, StringComparison.Ordinal));
        Assert.All(ends, e => Assert.NotEmpty(e.WaysIn));
    }

    [Fact]
    public void A_form_is_the_same_whatever_the_tied_ones_are_called()
    {
        Tie[] ties = [new(Posture.HeldArm, null), new(Posture.Pinned, null)];
        Tie[] swapped = [ties[1], ties[0]];
        var one = HeroForm.Of(Stance.Square, new(HandKind.Holding, 0), new(HandKind.Holding, 1), Bound.Free, -1, ties);
        var other = HeroForm.Of(Stance.Square, new(HandKind.Holding, 1), new(HandKind.Holding, 0), Bound.Free, -1, swapped);
        Assert.Equal(one, other);
        Assert.Equal(2, one.Ties);
        Assert.NotEqual(one, HeroForm.Of(Stance.Square, new(HandKind.Holding, 0), new(HandKind.Holding, 1), Bound.Free, -1, swapped));
    }
}
