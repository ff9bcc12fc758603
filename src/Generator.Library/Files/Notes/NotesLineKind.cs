namespace Generator.Library.Files.Notes;

/// <summary>What a line of notes is.</summary>
internal enum NotesLineKind
{
    /// <summary>Begins with <c>#</c>.</summary>
    Remark,

    /// <summary>Says who somebody is or where they stand.</summary>
    Person,

    /// <summary>Says what lies on the floor.</summary>
    Floor,

    /// <summary>A name and what is done.</summary>
    Moves,

    /// <summary>"…": further moves may stand here.</summary>
    Gap,

    /// <summary>Something without an attacker, such as a pause.</summary>
    Beat,
}
