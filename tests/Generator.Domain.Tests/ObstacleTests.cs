namespace Generator.Domain.Tests;

/// <summary>People name things as they call them, with an article or without.</summary>
public sealed class ObstacleTests
{
    [Theory]
    [InlineData("rail", "the rail")]
    [InlineData("the rail", "the rail")]
    [InlineData("The Rail", "the Rail")]
    [InlineData("a wall", "a wall")]
    [InlineData("his desk", "his desk")]
    [InlineData("Bruno's car", "Bruno's car")]
    [InlineData("theatre seat", "the theatre seat")]
    public void No_name_gets_a_second_article_in_a_sentence(string name, string said) =>
        Assert.Equal(said, new Obstacle(name, new(0), new(0), new(50), new(50)).InWords);
}
