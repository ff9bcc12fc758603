namespace Generator.Cli.Tests;

/// <summary>What a run of the program gave back.</summary>
internal sealed record Answer(int Code, string Out, string Err)
{
    private const string Remark = "  Maybe add --brief and the name of the brief, or of a routine in JSON that holds it.\n";

    /// <summary>Standard error without the remark that a CSV holds no brief.</summary>
    public string Told => Err.IndexOf(Remark, StringComparison.Ordinal) is >= 0 and var at ? Err[(at + Remark.Length)..] : Err;
}
