using Generator.Paperwork;
using Generator.Paperwork.Text;

namespace Generator.Cli.Tests.Papers;

/// <summary>All papers of a routine.</summary>
/// <param name="Source">What they were made from.</param>
/// <param name="Files">By file name.</param>
internal sealed record PaperPack(PaperSource Source, IReadOnlyDictionary<string, byte[]> Files)
{
    /// <summary>The hero, then the attackers, as papers call them.</summary>
    public IReadOnlyList<string> Cast => [Page.Clean(Source.Brief.Hero.Name), .. Source.Brief.Attackers.Select(a => Page.Clean(a.Name))];
}
