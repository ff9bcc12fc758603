using Generator.Domain;

namespace Generator.Rules;

/// <summary>The places that cameras on the floor and their operators take up: discs through which nobody comes, stands or is sent.</summary>
public static class CameraPosts
{
    /// <summary>One for each camera that stands on the ground.</summary>
    public static IReadOnlyList<Post> Of(IReadOnlyList<Camera> cameras) => [.. cameras.Where(c => c.IsOnTheGround).Select(c =>
    {
        var (x, y) = c.Bearing.Direction;
        return new Post(c.Text, c.Distance.Value * x, c.Distance.Value * y);
    })];

    /// <summary>A camera and its operator.</summary>
    /// <param name="Text">As it is named in a sentence.</param>
    /// <param name="X">From the mark towards 3 o'clock, in centimetres.</param>
    /// <param name="Y">From the mark towards 12, in centimetres.</param>
    public sealed record Post(string Text, double X, double Y)
    {
        /// <summary>Centimetres from the mark along a ray to the disc grown by a clearance; unlimited where the ray passes it by.</summary>
        /// <param name="dx">Step of the ray towards 3 o'clock, of length 1 with <paramref name="dy"/>.</param>
        /// <param name="dy">Step towards 12.</param>
        /// <param name="clearance">Kept free round the disc, in centimetres.</param>
        public double Along(double dx, double dy, int clearance)
        {
            var radius = Camera.Around.Value + clearance;
            var (along, aside) = ((X * dx) + (Y * dy), (X * dy) - (Y * dx));
            if (along <= 0 || Math.Abs(aside) >= radius)
            {
                return double.MaxValue;
            }

            return Math.Max(0, along - Math.Sqrt((radius * radius) - (aside * aside)));
        }
    }
}
