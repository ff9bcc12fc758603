namespace Generator.Rules.Memories;

/// <summary>What climax remembers.</summary>
/// <param name="Heaviest">Weight of the heaviest move so far; 0 before the first.</param>
/// <param name="RunOn">Whom the last moves with a target were all on, and nobody else; −1 for nobody.</param>
/// <param name="Run">How many these are.</param>
/// <param name="LastWeight">Weight of the move that put the last one out so far; 0 while nobody is.</param>
/// <param name="LastFight">Moves of the fight with them, that one included.</param>
/// <param name="RunsOff">Attackers who ran off.</param>
public sealed record ClimaxMemory(int Heaviest, int RunOn, int Run, int LastWeight, int LastFight, int RunsOff)
{
    public static readonly ClimaxMemory None = new(0, -1, 0, 0, 0, 0);
}
