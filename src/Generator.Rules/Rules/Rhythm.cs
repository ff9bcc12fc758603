using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Rules.Rules;

/// <summary>
/// Exchanges differ in length, and quick contacts are followed by a rest: a point for each exchange that is the fourth or more of one length in a row, two where none has five moves, and one for
/// each flurry that lacks of two. A flurry is three contacts, each within a count of the one before, and then two and a half counts without.
/// </summary>
public sealed class Rhythm : Rule
{
    /// <summary>Points where no exchange is long.</summary>
    public const int NoneLong = 2;

    public override string Id => "rhythm";

    public override string Title => "Exchanges differ in length, one is long, and flurries end in a rest.";

    public override Severity Worst => Severity.Rough;

    public override Whose Looks => Whose.Hero;

    public override object? Begin(Scene scene, FightState open, Tally tally) => RhythmMemory.None;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (RhythmMemory)memory!;
        if (!scene.Judges(FightRule.Rhythm))
        {
            return was;
        }

        // Told by numbers, of which one memory is made at the end: a search asks this at every move that it tries.
        var (moves, length, alike) = (was.Moves + 1, was.Length, was.Alike);
        if (step.Opens && was.Moves > 0)
        {
            (moves, length, alike) = (1, was.Moves, AlikeWith(was));
            if (alike > Exchange.MostAlike && tally.Count(Severity.Rough, 1))
            {
                tally.Tell(Alike(At(scene, step, Severity.Rough, $"The exchange before this one has {Amounts.Many(length, "move")}, as have the {alike - 1} before it."), alike));
            }
        }

        var met = (was.Contact, was.Beats, was.Flurries);
        met = Contact.OfAttack(step) ? Met(met, step.Contact) : met;
        met = Contact.OfHero(step) ? Met(met, step.End) : met;
        return new RhythmMemory(moves, length, alike, was.IsLong || moves >= Exchange.LongFrom, met.Contact, met.Beats, met.Flurries);
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var was = (RhythmMemory)memory!;
        if (was.Moves == 0)
        {
            return;
        }

        var alike = AlikeWith(was);
        if (alike > Exchange.MostAlike && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(Alike(AtEnd(end, Severity.Rough, scene.Brief.Hero.Name, $"The last exchange has {Amounts.Many(was.Moves, "move")}, as have the {alike - 1} before it."), alike));
        }

        if (!was.IsLong && tally.Count(Severity.Rough, NoneLong))
        {
            tally.Tell(AtEnd(end, Severity.Rough, scene.Brief.Hero.Name, $"No exchange has {Exchange.LongFrom} moves.") with
            {
                Points = NoneLong,
                Advice = "Stay with somebody for five moves once.",
            });
        }

        var flurries = was.Flurries + (was.Beats == Flurry.Fewest ? 1 : 0);
        var lacking = Flurry.Wanted - flurries;
        if (lacking > 0 && tally.Count(Severity.Rough, lacking))
        {
            tally.Tell(AtEnd(end, Severity.Rough, scene.Brief.Hero.Name, $"Flurries of quick contacts with a rest after them: {flurries}; {Flurry.Wanted} are wanted.") with
            {
                Points = lacking,
                Measured = flurries,
                Allowed = Flurry.Wanted,
                Unit = "flurries",
                Advice = "Put three contacts within a count of one another, and let two and a half counts pass after them.",
            });
        }
    }

    /// <summary>How many exchanges have had the length of the one in hand, one after the other, when that ends here.</summary>
    private static int AlikeWith(RhythmMemory was) => was.Moves == was.Length ? was.Alike + 1 : 1;

    private static (int Contact, int Beats, int Flurries) Met((int Contact, int Beats, int Flurries) was, int contact)
    {
        var gap = contact - was.Contact;
        return was.Beats > 0 && gap <= 0 ? was
            : (contact, was.Beats > 0 && gap <= HalfCounts.PerCount ? Math.Min(Flurry.Fewest, was.Beats + 1) : 1, was.Flurries + (was.Beats == Flurry.Fewest && gap >= Flurry.RestFrom ? 1 : 0));
    }

    private static Finding Alike(Finding finding, int alike) => finding with
    {
        Points = 1,
        Measured = alike,
        Allowed = Exchange.MostAlike,
        Unit = "exchanges",
        Advice = "Let one of them go on longer, or break off.",
    };
}
