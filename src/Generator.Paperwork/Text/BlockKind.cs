namespace Generator.Paperwork.Text;

/// <summary>What a piece of a paper is.</summary>
public enum BlockKind
{
    Title,
    Prose,

    /// <summary>What the paper does not clear.</summary>
    Caution,
    Heading,
    Item,
    Columns,
    Row,

    /// <summary>To be filled in by hand.</summary>
    Field,
    Rule,
    Gap,

    /// <summary>Plain text that has no printed form of its own.</summary>
    Typed,
}
