using Generator.Paperwork.SafetyPapers;

namespace Generator.Outside.Tests;

/// <summary>The risk matrix against the conditions of Cox 2008, Risk Analysis 28:497; both axes run evenly from 0 to 1, and risk is their product.</summary>
public class RiskMatrixTests
{
    private const int Size = RiskMatrix.Size;

    private static readonly (int Row, int Column)[] Cells = [.. Enumerable.Range(0, Size).SelectMany(r => Enumerable.Range(0, Size).Select(c => (r, c)))];

    [Fact(DisplayName = "Cox 2008: the matrix covers every harm and likelihood, and uses three colours")]
    public void Whole()
    {
        Assert.Equal((Size, Size), (Enum.GetValues<Harm>().Length, Enum.GetValues<Likelihood>().Length));
        Assert.Equal(3, Cells.Select(Colour).Distinct().Count());
    }

    [Fact(DisplayName = "Cox 2008, weak consistency: every risk in a red cell is at least as great as every risk in a green one")]
    public void Weak_consistency() =>
        Assert.True(Cells.Where(c => Colour(c) == RiskLevel.Red).Min(Least) >= Cells.Where(c => Colour(c) == RiskLevel.Green).Max(Most));

    [Fact(DisplayName = "Cox 2008, betweenness: a rising way from green to red passes through a yellow cell")]
    public void Betweenness()
    {
        foreach (var (row, column) in Cells.Where(c => Colour(c) == RiskLevel.Green))
        {
            foreach (var (up, right) in new[] { (1, 0), (0, 1), (1, 1) })
            {
                Assert.True(row + up >= Size || column + right >= Size || Colour((row + up, column + right)) != RiskLevel.Red, $"{row},{column}");
            }
        }
    }

    [Fact(DisplayName = "Cox 2008: left column and bottom row are green")]
    public void Edges_are_green() => Assert.All(Cells.Where(c => c.Row == 0 || c.Column == 0), c => Assert.Equal(RiskLevel.Green, Colour(c)));

    [Fact(DisplayName = "Cox 2008, consistent colouring: a cell is red if it holds risks as great as other red ones and none as small as a green one, green the other way round, else yellow")]
    public void Consistent_colouring()
    {
        var (red, green) = (Cells.Where(c => Colour(c) == RiskLevel.Red).ToList(), Cells.Where(c => Colour(c) == RiskLevel.Green).ToList());
        foreach (var cell in Cells)
        {
            var asRed = Most(cell) >= red.Min(Least) && Least(cell) >= green.Max(Most);
            Assert.Equal(Colour(cell) == RiskLevel.Red, asRed);
            if (Colour(cell) == RiskLevel.Yellow)
            {
                var between = green.Any(g => g.Row <= cell.Row && g.Column <= cell.Column) && red.Any(r => r.Row >= cell.Row && r.Column >= cell.Column);
                Assert.True(between || (Most(cell) > red.Min(Least) && Least(cell) < green.Max(Most)), $"{cell}");
            }
        }
    }

    [Fact(DisplayName = "Cox 2008: more harm or more likelihood never lowers the colour, and the axes may be swapped")]
    public void Rising()
    {
        foreach (var (row, column) in Cells)
        {
            Assert.Equal(Colour((row, column)), Colour((column, row)));
            Assert.True(row + 1 == Size || Colour((row + 1, column)) >= Colour((row, column)));
        }
    }

    private static RiskLevel Colour((int Row, int Column) cell) => RiskMatrix.Of((Harm)cell.Row, (Likelihood)cell.Column);

    /// <summary>Sixteen times the least risk in a cell.</summary>
    private static int Least((int Row, int Column) cell) => cell.Row * cell.Column;

    /// <summary>Sixteen times the greatest.</summary>
    private static int Most((int Row, int Column) cell) => (cell.Row + 1) * (cell.Column + 1);
}
