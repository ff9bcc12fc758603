namespace Generator.Paperwork.HandOffs;

/// <summary>One line of the cue list.</summary>
/// <param name="Moment">Half counts from count 1.</param>
/// <param name="Kind">What sort of cue: "phrase", "enters", "sets off", "voice", "sound", "touch", "knap", "fall", "out".</param>
/// <param name="Who">Whose it is.</param>
/// <param name="What">In words.</param>
/// <param name="Move">Number of the move; 0 for entrances.</param>
/// <param name="Begins">Something begins with it, and waits where its count is held; else it lands or ends, as the count comes.</param>
public sealed record CueEntry(int Moment, string Kind, string Who, string What, int Move, bool Begins);
