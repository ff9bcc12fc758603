using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Connecting;

/// <summary>How the hero is at the moment a technique starts.</summary>
/// <param name="Stance">The stance.</param>
/// <param name="Left">The left hand.</param>
/// <param name="Right">The right hand.</param>
/// <param name="Bound">The bound.</param>
/// <param name="BoundBy">Who binds.</param>
/// <param name="Closes">A grab closes its grip first, and the technique escapes from it.</param>
internal sealed record FormStart(Stance Stance, Hand Left, Hand Right, Bound Bound, int BoundBy, bool Closes);
