using Generator.Figures.Bodies;

namespace Generator.Figures.Painting;

/// <summary>From where bodies are looked at.</summary>
internal interface IEye
{
    /// <summary>Right, down and away from it; metres.</summary>
    Seen See(Vec point);
}
