using FsCheck.Xunit;

namespace Generator.Domain.Tests;

/// <summary>Limits that name a part of the body and what it must not do.</summary>
public class PartLimitTests
{
    [Fact]
    public void A_part_and_what_it_must_not_do()
    {
        var limit = PartLimit.Find("right-knee:no pivot ,no kneel")!;
        Assert.Equal("right-knee: no pivot, no kneel", limit.Text);
        Assert.Equal(BodyParts.RightKnee, limit.Load.Pivot);
        Assert.Equal(BodyParts.RightKnee, limit.Load.Kneel);
        Assert.Equal(new Load { Pivot = BodyParts.RightKnee, Kneel = BodyParts.RightKnee }, limit.Load);
    }

    [Fact]
    public void Load_is_all_weight_and_use_is_everything()
    {
        var load = Limit.Forbids("ankles: no load");
        var both = BodyParts.LeftAnkle | BodyParts.RightAnkle;
        Assert.All(Enum.GetValues<LoadAct>(), act => Assert.Equal(act is LoadAct.Work or LoadAct.Strain ? BodyParts.None : both, load[act]));
        Assert.Equal(Limit.Forbids("injured-neck"), Limit.Forbids("neck: no use"));
    }

    [Theory]
    [InlineData("tail: no load", "tail")]
    [InlineData("right-knee: no dancing", "no dancing")]
    [InlineData("right-knee: pivot", "pivot")]
    [InlineData("right-knee:", "")]
    [InlineData("right-knee: no load, ", "")]
    public void What_is_not_understood_is_told(string text, string word)
    {
        Assert.Null(PartLimit.Find(text));
        Assert.Equal(word, PartLimit.Unknown(text)!.Value.Word);
    }

    [Theory]
    [InlineData("no-left-hand", BodyParts.LeftWrist)]
    [InlineData("no-right-leg", BodyParts.RightLeg)]
    [InlineData("no-jump", BodyParts.None)]
    [InlineData("injured-back", BodyParts.Back)]
    public void Short_words(string limit, BodyParts parts) => Assert.All(Enum.GetValues<LoadAct>(), act => Assert.Equal(parts, Limit.Forbids(limit)[act]));

    [Property]
    public void Any_text_is_understood_or_told(string text) => Assert.True(text is null || !PartLimit.IsMeant(text) || (PartLimit.Find(text) is null) == (PartLimit.Unknown(text) is not null));
}
