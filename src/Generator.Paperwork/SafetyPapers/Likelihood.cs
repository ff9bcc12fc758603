namespace Generator.Paperwork.SafetyPapers;

/// <summary>How likely the harm is over the planned runs, from least to most.</summary>
public enum Likelihood
{
    Remote,
    Unlikely,
    Possible,
    Likely,
}
