namespace Generator.Solver.Constructing;

/// <summary>A later decision about something earlier: how much longer an attacker lingers, or when they enter.</summary>
/// <param name="Attacker">Whom it concerns.</param>
/// <param name="Row">Number of the move whose linger grows, or <see cref="Node.AtEntrance"/>.</param>
/// <param name="Value">What is added to the linger, or the new entrance, in half counts.</param>
internal readonly record struct LaterReturn(int Attacker, int Row, int Value);
