using Generator.Domain;

namespace Generator.Library.Words;

/// <summary>One record with the words that stand for it. The words name no side, but for an alias that means one side only ("straight right").</summary>
internal sealed record WordEntry<T>(T Record, string BaseId, string Name, IReadOnlyList<string> Aliases, Side? Side)
{
    public IEnumerable<string> Words => [BaseId, SideWords.WithoutSide(Name, Side), .. Aliases];
}
