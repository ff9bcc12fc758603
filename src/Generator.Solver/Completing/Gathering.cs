using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Completing;

/// <summary>What may be tried for one move behind one beginning: choices out of menus that suit how people are, kind by kind; where there are many, some of each kind are drawn.</summary>
/// <param name="scene">The brief.</param>
/// <param name="dice">By which they are drawn.</param>
internal sealed class Gathering(Scene scene, Dice dice)
{
    /// <summary>How few choices there must be for all of them to be tried.</summary>
    private const int Tries = 48;

    /// <summary>Where there are more: how many are tried of each kind behind one beginning, answers to attacks of everybody together.</summary>
    private const int FollowUpTries = 14, EscapeTries = 8, BeatTries = 2, SetbackTries = 4, TravelTries = 14, AllAnswerTries = 28, FewestAnswerTries = 6;

    private readonly List<(int From, int Tries)> kinds = [];

    private readonly List<(Choice Choice, int Attacker)> choices = [];

    private SketchForms? wanted;

    private int next;

    public int Count => choices.Count;

    /// <summary>Begins anew.</summary>
    /// <param name="forms">Which stances, hands and grips are wanted afterwards; null where that does not matter.</param>
    /// <param name="before">The move of the sketch before which they are wanted.</param>
    public void Begin(SketchForms? forms, int before)
    {
        (wanted, next) = (forms, before);
        choices.Clear();
        kinds.Clear();
    }

    /// <summary>Adds what of a menu suits how an attacker is.</summary>
    /// <param name="state">How everybody is.</param>
    /// <param name="a">The attacker.</param>
    /// <param name="menu">The menu.</param>
    /// <param name="soonest">The count that is said, in half counts.</param>
    public void Add(FightState state, int a, Menu menu, int soonest)
    {
        var attacker = state.Attackers[a];
        menu = Levels.Of(scene, menu, a, attacker);
        var start = Math.Max(state.Time, soonest);
        var posture = attacker.PostureAt(start);
        if (posture is { } now)
        {
            Add(state, a, menu.FollowUps[(int)now], FollowUpTries);
            Add(state, a, menu.Beats[(int)now], BeatTries);
            if (attacker is { Posture: Posture.Gripping, Grip: { } grip })
            {
                Add(state, a, menu.Escapes[grip.Index], EscapeTries);
            }
        }

        if (!attacker.IsActive)
        {
            return;
        }

        if (posture != Posture.Ready && attacker.ReadyAt <= start + Pace.DeadAirBreaks.Value)
        {
            Add(state, a, menu.FollowUps[(int)Posture.Ready], BeatTries);
            Add(state, a, menu.Beats[(int)Posture.Ready], BeatTries);
        }

        Add(state, a, menu.Answers, Math.Max(FewestAnswerTries, AllAnswerTries / scene.Cast));
        Add(state, a, menu.Setbacks);
    }

    /// <summary>Adds choices of one kind, of which as many are drawn as of setbacks.</summary>
    public void Add(FightState state, int a, Choice[] some) => Add(state, a, some, SetbackTries);

    /// <summary>Adds travel moves with an attacker that suit how they are.</summary>
    /// <param name="state">How everybody is.</param>
    /// <param name="a">The attacker.</param>
    /// <param name="menu">The ways from one mark to another.</param>
    public void Add(FightState state, int a, TravelMenu menu)
    {
        if (state.Attackers[a].IsActive)
        {
            Add(state, a, menu.Stalks[a], TravelTries);
            Add(state, a, menu.Answers[a], TravelTries);
        }
    }

    /// <summary>Adds choices with nobody, all of which are tried.</summary>
    public void AddAlone(FightState state, Choice[] some) => Add(state, -1, some, int.MaxValue);

    /// <summary>Tries all of them, or as many of each kind as are tried behind one beginning, drawn by chance.</summary>
    /// <param name="isNarrow">All, however many.</param>
    /// <param name="wider">How many times as much is tried.</param>
    /// <param name="attempt">Tries one; true when something came of it.</param>
    /// <param name="isOver">Nothing further is tried.</param>
    public void Try(bool isNarrow, int wider, Func<Choice, int, bool> attempt, Func<bool> isOver)
    {
        var all = choices.Count <= Tries * wider || isNarrow;
        for (var k = 0; k < kinds.Count; k++)
        {
            var (from, to) = (kinds[k].From, k + 1 < kinds.Count ? kinds[k + 1].From : choices.Count);
            var left = all ? int.MaxValue : (int)Math.Min(int.MaxValue, (long)kinds[k].Tries * wider);

            // Most of a long list finds the wrong feet or hands: some more are looked at.
            var last = all ? to : (int)Math.Min(to, from + (6L * left));
            for (var i = from; i < last && left > 0 && !isOver(); i++)
            {
                var other = all ? i : i + dice.Next(to - i);
                (choices[i], choices[other]) = (choices[other], choices[i]);
                left -= attempt(choices[i].Choice, choices[i].Attacker) ? 1 : 0;
            }
        }
    }

    private void Add(FightState state, int a, Choice[] some, int tries)
    {
        kinds.Add((choices.Count, tries));
        foreach (var choice in some)
        {
            if ((wanted is null ? choice : wanted.Leading(state, choice, next)) is { } left)
            {
                choices.Add((left, a));
            }
        }
    }
}
