using System.Runtime.CompilerServices;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Library.Reading;

namespace Generator.Library.Words;

/// <summary>The records of a book as <see cref="Ranking{T}"/> takes them: one for both sides. Prepared once for each book, when they are first asked for.</summary>
internal sealed class RankedRecords
{
    /// <summary>For a finish, setback or pause: a plain word means the ordinary technique.</summary>
    private const double OtherFamily = 0.12;

    /// <summary>For what only works in a hold or a grip, off the feet, or with a jump or spin.</summary>
    private const double Special = 0.08;

    /// <summary>For what is done with a prop or against one, or to two at once: whoever means it says so.</summary>
    private const double Armed = 0.4;

    private static readonly Stance[] Standing = [Stance.LeftLead, Stance.RightLead, Stance.Square];

    private static readonly ConditionalWeakTable<Book, RankedRecords> Known = [];

    private readonly Lazy<Ranking<Technique>> techniques;
    private readonly Lazy<Ranking<Attack>> attacks;
    private readonly Lazy<Ranking<Reaction>> reactions;

    private RankedRecords(Book book)
    {
        techniques = new(() => TechniquesOf(book));
        attacks = new(() => AttacksOf(book));
        reactions = new(() => ReactionsOf(book));
    }

    public static Ranking<Technique> Techniques(Book book) => Of(book).techniques.Value;

    public static Ranking<Attack> Attacks(Book book) => Of(book).attacks.Value;

    public static Ranking<Reaction> Reactions(Book book) => Of(book).reactions.Value;

    private static RankedRecords Of(Book book) => Known.GetValue(book, static b => new RankedRecords(b));

    private static Ranking<Technique> TechniquesOf(Book book) => new(book.Notebook, book.Techniques.DistinctBy(t => t.BaseId, StringComparer.Ordinal).Select(t => new Ranked<Technique>(
        t,
        [t.BaseId, SideWords.WithoutSide(t.Name, t.Side), .. t.Aliases, .. book.Notebook.Techniques.GetValueOrDefault(t.BaseId, [])],
        [t.Hazard, EnumWords.Of(t.Family), t.Height == Height.None ? string.Empty : EnumWords.Of(t.Height)],
        Handicap(t))));

    private static Ranking<Attack> AttacksOf(Book book) => new(book.Notebook, book.Attacks.DistinctBy(a => a.BaseId, StringComparer.Ordinal).Select(a => new Ranked<Attack>(
        a,
        [a.BaseId, SideWords.WithoutSide(a.Name, a.Side), .. a.Aliases, .. book.Notebook.Attacks.GetValueOrDefault(a.BaseId, [])],
        [a.Hazard, LineWords.Of(a.Line), a.LimbWords],
        a.Line.IsArmed ? Armed : 0)));

    private static Ranking<Reaction> ReactionsOf(Book book) => new(book.Notebook, book.Reactions.Select(r => new Ranked<Reaction>(r, [r.Id, r.Name, .. r.Aliases], [r.Risk, r.Sell])));

    private static double Handicap(Technique technique) =>
        (technique.Family is Family.Finish or Family.Setback or Family.Pause ? OtherFamily : 0) + (IsSpecial(technique) ? Special : 0) + (technique.Prop is not null || technique.IsAgainstPropsAlone || technique.TakesTwo ? Armed : 0);

    private static bool IsSpecial(Technique technique) =>
        technique.Supported || !technique.Bounds.HasFlag(BoundSet.Free) || !Standing.Any(technique.Starts.Contains)
        || TakesAHold(technique.LeftNeed) || TakesAHold(technique.RightNeed) || technique.Demands.Any(d => d is "jump" or "spin");

    private static bool TakesAHold(HandNeed need) => need is HandNeed.Holding or HandNeed.Held or HandNeed.HoldingOther or HandNeed.HeldByOther or HandNeed.Out;
}
