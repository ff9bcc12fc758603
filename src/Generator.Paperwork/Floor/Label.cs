namespace Generator.Paperwork.Floor;

/// <summary>A text that has found its place on the drawing.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Box">The room that is kept for it; nothing else may be written there.</param>
/// <param name="Size">Font size.</param>
/// <param name="Kind">How it is styled.</param>
/// <param name="Leader">Where the line to what it speaks of ends; null when it stands close by.</param>
public sealed record Label(string Text, Box Box, double Size, string Kind, Point? Leader)
{
    /// <summary>Middle of the text.</summary>
    public double CentreX => Box.X + (Box.Width / 2);

    /// <summary>Base line of the text.</summary>
    public double BaseY => Box.Y + (Box.Height * 0.76);
}
