namespace Generator.Domain;

/// <summary>How somebody fights, so that an audience tells them from the others.</summary>
public sealed record Manner
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>What an attacker of this manner comes with; anything else is out of manner.</summary>
    public required IReadOnlyList<AttackKind> Attacks { get; init; }

    /// <summary>Of strikes, kicks, throws and locks those that a hero of this manner works with.</summary>
    public required IReadOnlyList<Family> Families { get; init; }

    /// <summary>Of a hundred blows of the hero that they could answer those that they block, slip or catch, 0 to 50.</summary>
    public int AnsweredPercent { get; init; }

    /// <summary>Of a hundred times that they come those that go on as a combination, 0 to 100; 0: they throw none.</summary>
    public int CombinationPercent { get; init; }

    /// <summary>A draft gives it to attackers whose brief says none, in the order of the file.</summary>
    public bool Usual { get; init; }

    /// <summary>What it looks like, in a sentence.</summary>
    public string Note { get; init; } = string.Empty;
}
