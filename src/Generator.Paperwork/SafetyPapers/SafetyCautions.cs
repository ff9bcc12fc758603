namespace Generator.Paperwork.SafetyPapers;

/// <summary>What stands on every safety paper.</summary>
internal static class SafetyCautions
{
    public const string NoClearance =
        "A proposal made from the routine by a program. It clears nothing: a qualified fight coordinator judges every line with the performers, on the floor, " +
        "and may stop the fight at any time. Trained performers only. Local law, codes of practice and union terms come first.";
}
