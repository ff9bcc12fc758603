namespace Generator.Paperwork.SafetyPapers;

/// <summary>The country whose guidance the safety papers name.</summary>
public sealed record Guidance
{
    public static readonly Guidance Generic = new(
        "generic",
        "Generic",
        ["The five steps are those of HSE INDG163 rev 3 (UK, 2011), used as a common form; no country's rules are claimed."]);

    public static readonly Guidance UnitedKingdom = new(
        "uk",
        "United Kingdom",
        [
            "The five steps: HSE INDG163 rev 3 (2011).",
            "HSE Entertainment Information Sheet 17 counts fights, with or without weapons, among hazardous production activities (Health and Safety at Work etc. Act 1974, Management Regulations).",
        ]);

    public static readonly Guidance UnitedStates = new(
        "us",
        "United States",
        [
            "The five steps are those of HSE INDG163 rev 3 (UK, 2011), used as a form.",
            "Industry-Wide Labor-Management Safety Committee, Bulletin No. 4, Stunts (rev. 26 January 2005): attach it to the call sheet. Agreements differ by contract and year.",
        ]);

    public static readonly Guidance Ontario = new(
        "ontario",
        "Ontario",
        [
            "The five steps are those of HSE INDG163 rev 3 (UK, 2011), used as a form.",
            "Ontario Live Performance guideline, Stage combat/stunts and weaponry; Film and Television Guidelines 1, 4 and 5: fight director and captain are each competent as OHSA s.1(1) has it.",
        ]);

    private Guidance(string word, string country, IReadOnlyList<string> sources) => (Word, Country, Sources) = (word, country, sources);

    public static IReadOnlyList<Guidance> All { get; } = [Generic, UnitedKingdom, UnitedStates, Ontario];

    /// <summary>What the user writes.</summary>
    public string Word { get; }

    public string Country { get; }

    /// <summary>What it rests on, one sentence each.</summary>
    public IReadOnlyList<string> Sources { get; }

    public override string ToString() => Country;
}
