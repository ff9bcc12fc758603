using Generator.Figures.Painting;
using Generator.Figures.Posing;
using Generator.Paperwork.Following;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Html;

/// <summary>The figures of a page: what looks the same is drawn once, and shown wherever it is wanted.</summary>
/// <param name="source">The routine, with what draws its figures; without that none is drawn.</param>
public sealed class FigureSet(PaperSource source)
{
    private readonly Cards? cards = source.Options.Cards;
    private readonly Dictionary<string, FigureView> drawn = new(StringComparer.Ordinal);

    /// <summary>All that is shown somewhere, each with what is drawn.</summary>
    public IEnumerable<(string Id, string Body)> Drawn => drawn.Select(d => (d.Value.Id, d.Key));

    /// <summary>The two at the contact of a move; null where no pose is known for it.</summary>
    public FigureView? Contact(Step step) => CardOf(step) is { } card ? Shown(Drawing.Of(FigureThing.In(source.Scene, step, card), end: false)) : null;

    /// <summary>How the move ends and is sold; null where that is not known, or looks no other than the contact.</summary>
    public FigureView? End(Step step) =>
        step.Technique is not null && CardOf(step) is { } card && !card.EndsAsItMet ? Shown(Drawing.Of(FigureThing.In(source.Scene, step, card), end: true)) : null;

    private Card? CardOf(Step step) => step switch
    {
        _ when cards is null => null,
        { Technique: { } technique } => cards.Of(technique, met: FigureHands.Met(step)),
        { Attack: { } attack } => cards.Of(attack, held: FigureHands.Held(step)),
        _ => null,
    };

    private FigureView Shown(Drawing drawing)
    {
        if (!drawn.TryGetValue(drawing.Body, out var view))
        {
            view = new FigureView($"f{drawn.Count + 1}", drawing.Left, drawing.Top, drawing.Width);
            drawn.Add(drawing.Body, view);
        }

        return view;
    }
}
