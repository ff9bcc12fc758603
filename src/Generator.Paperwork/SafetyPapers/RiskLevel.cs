namespace Generator.Paperwork.SafetyPapers;

/// <summary>How soon a risk is looked at. No level clears anything.</summary>
public enum RiskLevel
{
    /// <summary>Keep the controls, look again at the review.</summary>
    Green,

    /// <summary>Better the controls before the first run at performance speed.</summary>
    Yellow,

    /// <summary>Not performed like this: change the move or the controls first.</summary>
    Red,
}
