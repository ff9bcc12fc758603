namespace Generator.Paperwork.Floor;

/// <summary>A body on the floor, to scale and where it lies, whatever becomes of the sign beside it.</summary>
/// <param name="Performer">Number in the brief, from 0; −1 for the hero.</param>
/// <param name="Feet">Where the feet are on the drawing.</param>
/// <param name="Turned">Degrees clockwise by which a body is turned whose head is below its feet on the drawing.</param>
/// <param name="Body">The outline round the feet, before it is turned and moved.</param>
/// <param name="Style">here, out or landing.</param>
public sealed record Outline(int Performer, Point Feet, double Turned, Box Body, string Style)
{
    /// <summary>The other end of the body's axis, as far from the crown as the feet are from the soles.</summary>
    public Point Head
    {
        get
        {
            var ((sin, cos), far) = (Math.SinCos(Turned * Math.PI / 180), Body.Bottom + Body.Y);
            return new Point(Feet.X - (sin * far), Feet.Y + (cos * far));
        }
    }
}
