namespace Generator.Domain;

/// <summary>
/// The words for parts of the body in files: <c>left-knee</c>, <c>right-leg</c>, <c>neck</c>; the plural stands for both sides, <c>knees</c>.
/// A foot is its ankle, a hand its wrist.
/// </summary>
public static class BodyPartWords
{
    private const int SideShift = 6;

    private const BodyParts LeftSide = BodyParts.LeftLeg | BodyParts.LeftArm;

    /// <summary>Wide parts before those that they hold, so that a set is said in the fewest words.</summary>
    private static readonly (string One, string Both, BodyParts Left)[] Sided =
    [
        ("leg", "legs", BodyParts.LeftLeg), ("arm", "arms", BodyParts.LeftArm), ("hip", "hips", BodyParts.LeftHip),
        ("knee", "knees", BodyParts.LeftKnee), ("ankle", "ankles", BodyParts.LeftAnkle), ("shoulder", "shoulders", BodyParts.LeftShoulder),
        ("elbow", "elbows", BodyParts.LeftElbow), ("wrist", "wrists", BodyParts.LeftWrist),
    ];

    private static readonly (string Word, BodyParts Parts)[] Said =
    [
        .. Sided.Take(2).SelectMany(Words), .. Sided.Skip(2).SelectMany(Words),
        ("back", BodyParts.Back), ("neck", BodyParts.Neck),
    ];

    private static readonly (string Word, BodyParts Parts)[] Understood =
    [
        .. Said, .. Words(("foot", "feet", BodyParts.LeftAnkle)), .. Words(("hand", "hands", BodyParts.LeftWrist)),
    ];

    /// <summary>Every word that names parts.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Understood.Select(w => w.Word)];

    /// <summary>The parts that a word names; none for an unknown word.</summary>
    public static BodyParts Find(string word) => Array.Find(Understood, w => string.Equals(w.Word, word, StringComparison.Ordinal)).Parts;

    /// <summary>The fewest words for a set of parts, legs and arms first.</summary>
    public static IReadOnlyList<string> Of(BodyParts parts)
    {
        var words = new List<string>();
        foreach (var (word, named) in Said)
        {
            if ((parts & named) == named)
            {
                words.Add(word);
                parts &= ~named;
            }
        }

        return words;
    }

    /// <summary>Left and right swapped.</summary>
    public static BodyParts Mirrored(this BodyParts parts) =>
        (BodyParts)(((int)(parts & LeftSide) << SideShift) | (((int)parts >> SideShift) & (int)LeftSide)) | (parts & (BodyParts.Neck | BodyParts.Back));

    private static IEnumerable<(string Word, BodyParts Parts)> Words((string One, string Both, BodyParts Left) part) =>
        [(part.Both, part.Left | Mirrored(part.Left)), ("left-" + part.One, part.Left), ("right-" + part.One, Mirrored(part.Left))];
}
