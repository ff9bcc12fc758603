namespace Generator.Paperwork.Html;

/// <summary>One move as its performer needs it: lines of what and how, in the order in which it happens.</summary>
/// <param name="Number">Number of the move, from 1.</param>
/// <param name="AtCount">When the move starts: the same count as on every other paper.</param>
/// <param name="Partner">Number of the other in the brief, from 0; −1 for the hero, −2 for nobody.</param>
/// <param name="Heading">What they do, in a few words.</param>
/// <param name="Lines">Label and text: cue, contact, sell, where it ends, when they go again.</param>
/// <param name="Pictures">At the contact and, where that shows more, how it is sold; none where no figures are drawn.</param>
/// <param name="Safety">How it is kept safe.</param>
/// <param name="Findings">What the audit says of it.</param>
public sealed record PartMove(int Number, string AtCount, int Partner, string Heading, IReadOnlyList<(string Label, string Text)> Lines, IReadOnlyList<FigureView> Pictures, IReadOnlyList<string> Safety, IReadOnlyList<FindingView> Findings);
