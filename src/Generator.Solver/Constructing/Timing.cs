using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Memories;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Constructing;

/// <summary>Starts that fit the music: past a count that is held, and so that a contact lands on an accent.</summary>
/// <param name="scene">Brief and library.</param>
/// <param name="dice">By which accents are aimed at; null for never.</param>
internal sealed class Timing(Scene scene, Dice? dice)
{
    private static readonly int MusicAt = RuleBook.IndexOf("music");

    /// <summary>Of a hundred moves that could land on the next accent so many do.</summary>
    private const int Aimed = 75;

    private readonly int[] accents = [.. scene.Brief.Music?.Accents.Select(a => a.Value) ?? []];
    private readonly int[] holds = [.. scene.Brief.Music?.Holds.Select(h => h.At.Value) ?? []];

    /// <summary>The start, perhaps later; −1 where it would be later than the latest.</summary>
    /// <param name="node">Where the search stands.</param>
    /// <param name="choice">What is to be done.</param>
    /// <param name="start">The soonest start.</param>
    /// <param name="latest">The latest.</param>
    public int Of(Node node, Choice choice, int start, int latest)
    {
        if (accents.Length > 0 && !node.IsOpening && dice?.Percent(Aimed) == true)
        {
            start = OnAccent((MusicMemory)node.Score.MemoryOf(MusicAt)!, choice, start, latest);
        }

        foreach (var hold in holds)
        {
            start = Past(choice, start, hold);
        }

        return start > latest ? -1 : start;
    }

    private int OnAccent(MusicMemory so, Choice choice, int start, int latest)
    {
        var (technique, attack) = (scene.Book.Techniques[choice.Technique], choice.Attack < 0 ? null : scene.Book.Attacks[choice.Attack]);
        var best = int.MaxValue;
        for (var i = 0; i < accents.Length; i++)
        {
            if (!so.IsSettled(i))
            {
                best = Math.Min(best, attack is { IsWalkIn: false } ? From(accents[i] - scene.Settle.ContactAfter.Value) : int.MaxValue);
                best = Math.Min(best, technique.IsHitOrThrow ? From(accents[i] - technique.Length.Value) : int.MaxValue);
            }
        }

        return best <= latest ? best : start;

        int From(int moment) => moment >= start ? moment : int.MaxValue;
    }

    /// <summary>Where the move would be under way, the start that lets it begin as the hold is over.</summary>
    private int Past(Choice choice, int start, int hold)
    {
        var (length, contact) = (scene.Book.Techniques[choice.Technique].Length.Value, scene.Settle.ContactAfter.Value);
        var swing = choice.Attack < 0 ? 0 : Math.Max(0, scene.Book.Attacks[choice.Attack].Length.Value - contact);
        var over = start + (choice.Attack < 0 ? length : Math.Max(length, contact));
        return start - swing < hold && hold < over ? hold + swing : start;
    }
}
