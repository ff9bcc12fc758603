namespace Generator.Figures.Poses;

/// <summary>What of the library a shape is for.</summary>
public enum RecordKind
{
    Technique,
    Attack,
    Reaction,
}
