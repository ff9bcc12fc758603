namespace Generator.Domain.Tests;

/// <summary>Values that have a mirror image can be printed: a failing check must name its record and not end the process.</summary>
public sealed class PrintingTests
{
    [Theory]
    [InlineData(-5, "-5")]
    [InlineData(0, "0")]
    [InlineData(12, "12")]
    public void Turns(int halfHours, string text) => Assert.Equal(text, new Turn(halfHours).ToString());

    [Fact]
    public void Windows()
    {
        Assert.Equal("-2 to 2", new Window(-2, 2).ToString());
        Assert.Equal("-11 to 12", Window.Anywhere.ToString());
    }

    [Fact]
    public void Lines()
    {
        var line = AttackLine.FromIndex(0);

        Assert.Equal($"{line.Kind} {line.Side}", line.ToString());
        Assert.NotEqual(line.ToString(), line.Mirrored.ToString());
        Assert.Equal($"{line}, {line.Mirrored}", LineSet.Of([line, line.Mirrored]).ToString());
        Assert.Empty(LineSet.Empty.ToString());
    }

    [Fact]
    public void Stances() => Assert.Equal("LeftLead, Square", StanceSet.Of(Stance.Square, Stance.LeftLead).ToString());

    [Theory]
    [InlineData(1, "flurry", "1 flurry")]
    [InlineData(2, "flurry", "2 flurries")]
    [InlineData(2, "way", "2 ways")]
    [InlineData(0, "move", "0 moves")]
    public void Amounts_are_of_one_or_of_several(int number, string one, string said)
    {
        Assert.Equal(said, Amounts.Many(number, one));
        Assert.Equal(one, Amounts.One(Amounts.Many(2, one)[2..]));
        Assert.Equal("m", Amounts.One("m"));
    }
}
