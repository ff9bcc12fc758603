using FsCheck.Xunit;
using Generator.Domain;
using Generator.Library.Words;
using Newtonsoft.Json.Linq;

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

    /// <summary>A record that asks nothing says so with an empty load; only what stays on both feet and does nothing with a limb may.</summary>
    [Fact]
    public void Every_record_says_what_it_asks()
    {
        var records = LibraryTexts.All().SelectMany(f => JObject.Parse(f.Text).Properties().Where(p => p.Name is "techniques" or "attacks" or "reactions" && p.Value is JArray).SelectMany(p => p.Value)).ToList();
        Assert.Equal(Book.Techniques.DistinctBy(t => t.BaseId).Count() + Book.Attacks.DistinctBy(a => a.BaseId).Count() + Book.Reactions.Count, records.Count(r => r["load"] is JObject));
        Assert.All(Book.Techniques.Where(t => t.Load == default), t => Assert.True(t.Demands.Count == 0 && t.HeroFall == FallClass.None, t.Id));
        Assert.All(Book.Attacks.Where(a => a.Load == default), a => Assert.True(a.IsWalkIn, a.Id));
        Assert.All(Book.Reactions.Where(r => r.Load == default), r => Assert.True(r.Fall == FallClass.None && r.Back.Value <= 20, r.Id));
    }

    /// <summary>A hand that keeps hold takes the pull, and so does whoever is held or grips.</summary>
    [Fact]
    public void Every_hold_and_every_grip_says_what_it_asks_while_it_lasts()
    {
        var grabs = Book.Attacks.Where(a => a.IsGrab).ToList();
        Assert.All(grabs, a => Assert.True(Book.Holds.OfGrip(a.Line) is { } grip && grip.Load.Strain != BodyParts.None && (grip.HeroLoad.Strain | grip.HeroLoad.Carry) != BodyParts.None, a.Id));
        Assert.All(grabs, a => Assert.Equal(Book.Holds.OfGrip(a.Line).Load.Mirrored, Book.Holds.OfGrip(a.Line.Mirrored).Load));
        Assert.All(Enum.GetValues<Posture>(), p => Assert.Equal(p.IsControlled(), Book.Holds.OfHeld(p).Strain != BodyParts.None));
        Assert.Equal((BodyParts.LeftArm, BodyParts.RightArm), (Book.Holds.OfHand(Side.Left).Strain, Book.Holds.OfHand(Side.Right).Strain));
        Assert.True(grabs.Count >= 40);
    }

    [Fact]
    public void A_fall_lands_on_something_and_spares_no_neck()
    {
        var falls = Book.Reactions.Where(r => r.Fall is not (FallClass.None or FallClass.ToKnee)).ToList();
        Assert.True(falls.Count >= 12);
        Assert.All(falls, r => Assert.True(r.Load.Land != BodyParts.None && r.Load.Strain.HasFlag(BodyParts.Neck), r.Id));
    }
}
