using Generator.Paperwork.Text;

namespace Generator.Paperwork.Printing;

/// <summary>A paper as a page of the house: its pieces in groups that are set as one.</summary>
/// <param name="Head">Of the routine.</param>
/// <param name="Blocks">What the paper says, in its order.</param>
public sealed record SheetView(PaperHead Head, IReadOnlyList<Block> Blocks)
{
    private static readonly BlockKind[] Unseen = [BlockKind.Gap, BlockKind.Rule];

    public string Title => Blocks[0].Text;

    /// <summary>What stands under the title.</summary>
    public IEnumerable<Block> Gist => Blocks.Skip(1).TakeWhile(b => b.Kind != BlockKind.Rule);

    /// <summary>
    /// What stands below the head: rows of the same columns together, with what hangs under one of them, and likewise lines to be filled in; everything else by itself.
    /// </summary>
    public IEnumerable<IReadOnlyList<Block>> Groups
    {
        get
        {
            var group = new List<Block>();
            foreach (var block in Blocks.SkipWhile(b => b.Kind != BlockKind.Rule).Where(b => !Unseen.Contains(b.Kind)))
            {
                if (group.Count > 0 && !GoesOn(group, block))
                {
                    yield return group;
                    group = [];
                }

                group.Add(block);
            }

            if (group.Count > 0)
            {
                yield return group;
            }
        }
    }

    private static bool GoesOn(List<Block> group, Block block) => (group[0].Kind, block.Kind) switch
    {
        (BlockKind.Row or BlockKind.Columns, BlockKind.Row) => group[0].Cells.Select(c => c.Width).SequenceEqual(block.Cells.Select(c => c.Width)),
        (BlockKind.Row or BlockKind.Columns, BlockKind.Item) => IsUnder(block),
        (BlockKind.Field, BlockKind.Field) => true,
        (BlockKind.Item, BlockKind.Item) => IsUnder(group[0]) == IsUnder(block) && IsCheck(group[0]) == IsCheck(block),
        _ => false,
    };

    /// <summary>It hangs under the row before it.</summary>
    public static bool IsUnder(Block block) => block.Mark.StartsWith("     ", StringComparison.Ordinal);

    /// <summary>It is ticked when it is done.</summary>
    public static bool IsCheck(Block block) => block.Mark.Contains('[', StringComparison.Ordinal);
}
