namespace Generator.Rules.Memories;

/// <summary>How far one hero moment has come.</summary>
/// <param name="Done">It has happened.</param>
/// <param name="Begun">For each run of it that the last move belongs to, how many of its moves have matched; ascending.</param>
public sealed record MomentProgress(bool Done, IReadOnlyList<int> Begun)
{
    public static readonly MomentProgress Nothing = new(false, []);
}
