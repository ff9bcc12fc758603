namespace Generator.Domain;

/// <summary>
/// The distance between body centres at contact, as shares of a limb (arm: shoulder to fist; leg: hip to ankle), 0 to 9.
/// The hero may step in by up to <see cref="StepIn"/> or out by up to <see cref="StepOut"/> within the counts of the technique.
/// </summary>
/// <param name="Limb">Whose length the shares are of.</param>
/// <param name="From">Nearest share.</param>
/// <param name="To">Farthest share.</param>
/// <param name="StepIn">Farthest step towards the target.</param>
/// <param name="StepOut">Farthest step away from the target.</param>
/// <param name="MeetsOnTheWay">A stop-hit: the attacker is met on the way in, no nearer than <see cref="From"/>.</param>
/// <param name="Behind">How much farther out an attack stops, since it is thrown at somebody held or gripping who is put between, 0 to 2 m.</param>
public sealed record Band(Limb Limb, decimal From, decimal To, Centimetres StepIn, Centimetres StepOut, bool MeetsOnTheWay, Centimetres Behind = default);
