using Generator.Domain;

namespace Generator.Rules.Memories;

/// <summary>What echo remembers.</summary>
/// <param name="Hit">Ids, without side, of the attacks of setbacks so far.</param>
/// <param name="IsBeaten">One of them has come again and been beaten.</param>
/// <param name="Returns">How often the signature has come.</param>
/// <param name="Outcome">What became of it the last time: position of the reaction, or of the technique that met it; −1 before.</param>
/// <param name="IsOtherwise">Something else than the time before.</param>
public sealed record EchoMemory(FixedList<string> Hit, bool IsBeaten, int Returns, int Outcome, bool IsOtherwise)
{
    public static readonly EchoMemory None = new([], false, 0, -1, false);
}
