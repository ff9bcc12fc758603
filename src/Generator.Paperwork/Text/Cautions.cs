namespace Generator.Paperwork.Text;

/// <summary>What stands on every paper, whatever it says.</summary>
public static class Cautions
{
    public const string Sheet =
        "For trained performers under a qualified fight coordinator. Rehearse slow, then bring it up to speed. " +
        "Local law, codes of practice and union terms come first. A draft is a proposal, not clearance.";

    public const string Audit =
        "An audit without findings does not make a fight safe: a qualified fight coordinator decides, with the performers, on the floor.";
}
