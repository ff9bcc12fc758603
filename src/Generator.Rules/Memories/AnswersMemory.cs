namespace Generator.Rules.Memories;

/// <summary>What answers-attack remembers.</summary>
/// <param name="LastContact">Contact of the last attack in half counts; <see cref="Never"/> before the first.</param>
/// <param name="LastAttacker">Who threw it; −1 before the first.</param>
/// <param name="Pending">The last attack, when nothing has answered it and no second attack has come with it yet.</param>
public sealed record AnswersMemory(int LastContact, int LastAttacker, UnansweredAttack? Pending)
{
    /// <summary>A contact that coincides with none.</summary>
    public const int Never = -1_000_000;

    public static readonly AnswersMemory Start = new(Never, -1, null);
}
