namespace Generator.Solver.Repertoires;

/// <summary>The travel moves from one mark to the next that are as long as the way.</summary>
/// <param name="To">Number of the mark to which they lead.</param>
/// <param name="Heading">Its bearing from the one before, in half hours.</param>
/// <param name="ByWill">Those that concern nobody else.</param>
/// <param name="Answers">For each attacker, those that an attack brings about.</param>
/// <param name="Stalks">For each attacker, those on which they come after the hero from ready.</param>
internal sealed record TravelMenu(int To, int Heading, Choice[] ByWill, Choice[][] Answers, Choice[][] Stalks)
{
    /// <summary>All of them.</summary>
    public IEnumerable<Choice> All => [.. ByWill, .. Answers.Concat(Stalks).SelectMany(c => c)];
}
