using FsCheck.Xunit;
using Generator.Domain;
using Generator.Library.Words;

namespace Generator.Library.Tests.Bundled;

/// <summary>What records ask of bodies: a body's words, mirrors, and how the records of the book agree with what else they say.</summary>
[Properties(Arbitrary = [typeof(RandomRecords)], MaxTest = 500)]
public class LoadTests
{
    private static readonly Book Book = BundledLibrary.Book;

    [Property]
    public void Any_load_mirrored_twice_is_itself(Load load)
    {
        Assert.Equal(load, load.Mirrored.Mirrored);
        Assert.All(Enum.GetValues<LoadAct>(), act => Assert.Equal(load[act].HasFlag(BodyParts.LeftKnee), load.Mirrored[act].HasFlag(BodyParts.RightKnee)));
        Assert.Equal(load.Anywhere.HasFlag(BodyParts.Neck), load.Mirrored.Anywhere.HasFlag(BodyParts.Neck));
    }

    [Property]
    public void The_words_of_any_parts_name_these_parts(Load load) =>
        Assert.All(Enum.GetValues<LoadAct>(), act => Assert.Equal(load[act], BodyPartWords.Of(load[act]).Aggregate(BodyParts.None, (parts, word) => parts | BodyPartWords.Find(word))));

    [Fact]
    public void A_plural_names_both_sides_and_a_limb_all_its_joints()
    {
        Assert.Equal(BodyParts.LeftKnee | BodyParts.RightKnee, BodyPartWords.Find("knees"));
        Assert.Equal(BodyPartWords.Find("right-foot"), BodyPartWords.Find("right-ankle"));
        Assert.Equal(["left-leg", "right-elbow", "back"], BodyPartWords.Of(BodyParts.LeftLeg | BodyParts.RightElbow | BodyParts.Back));
        Assert.Equal(BodyParts.None, BodyPartWords.Find("tail"));
    }

    [Fact]
    public void Every_kick_of_somebody_on_the_feet_stands_on_the_other_leg()
    {
        var kicks = Book.Techniques.Where(t => t.Family == Family.Kick && t.Starts.Contains(Stance.Square) && t.Demands.Count(d => d.EndsWith("-leg", StringComparison.Ordinal)) == 1).ToList();
        Assert.True(kicks.Count >= 50);
        Assert.All(kicks, t =>
        {
            var standing = t.Demands.Contains(Demand.RightLeg) ? BodyParts.LeftLeg : BodyParts.RightLeg;
            Assert.True((t.Load.Carry | t.Load.Jump).HasFlag(standing), t.Id);
            Assert.True(t.Load.Work.HasFlag(standing.Mirrored()), t.Id);
        });
    }

    [Theory]
    [InlineData("hopping-push-kick-left", "carries weight on the right leg, jumps off with the right leg, lands on the legs, works with the left leg, takes strain in the left leg")]
    [InlineData("drop-to-knee-right", "lands on the right ankle, kneels on the right knee, bends deep in the legs")]
    [InlineData("wrist-lock-left", "works with the arms, takes strain in the wrists")]
    [InlineData("face-off", "nothing beyond standing and stepping")]
    public void A_load_in_words(string id, string words) => Assert.StartsWith(words, LoadText.Of(Book.Technique(id).Load), StringComparison.Ordinal);

    [Theory]
    [InlineData("no-back-fall", "no fall on the back")]
    [InlineData("injured-right-knee", "the right knee is injured: nothing with it or on it")]
    [InlineData("left-ankle: no load, no pivot", "puts no weight on, does not pivot on the left ankle")]
    public void A_limit_in_words(string limit, string words) => Assert.Equal(words, LimitText.Of(limit));

    [Fact]
    public void Every_limit_has_words_of_its_own() => Assert.All(Limit.All, l => Assert.DoesNotContain('-', LimitText.Of(l)));

    [Fact]
    public void A_fall_lands_on_something_and_spares_no_neck()
    {
        var falls = Book.Reactions.Where(r => r.Fall is not (FallClass.None or FallClass.ToKnee)).ToList();
        Assert.True(falls.Count >= 12);
        Assert.All(falls, r => Assert.True(r.Load.Land != BodyParts.None && r.Load.Strain.HasFlag(BodyParts.Neck), r.Id));
    }
}
