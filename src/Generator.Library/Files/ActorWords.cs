using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads the column <c>by</c>: who of hero and ally does a move.</summary>
internal static class ActorWords
{
    /// <summary>The name of the column.</summary>
    public const string By = "by";

    /// <summary>The word for the hero, whatever their name.</summary>
    public const string Hero = "hero";

    /// <summary>Whether the ally does it; an empty cell is the hero's. What is wrong is told.</summary>
    public static bool Of(RoutineRow row, Brief brief)
    {
        if (row.Text(By) is not { } word || Is(word, Hero, brief.Hero))
        {
            return false;
        }

        if (brief.Ally is not { } ally)
        {
            row.Refuse(By, $"{FieldText.Quote(word)} is not the hero, and the brief has no ally.", "Maybe the brief lacks \"ally\": { \"name\": \"Mira\" }, or the cell can stay empty.");
            return false;
        }

        if (!Is(word, Ally.Word, ally.Part))
        {
            string[] both = [brief.Hero.Name, ally.Part.Name];
            row.Refuse(By, $"{FieldText.Quote(word)} is neither the hero nor the ally.", NearestWords.Maybe(word, both, NearestWords.OneOf(both)));
        }

        return true;
    }

    /// <summary>Moves of the two in the order in which they start, so that each has one number: everybody's own stay in the order written, and of two that start at once the one written first is first.</summary>
    public static IReadOnlyList<Move> InOrder(IReadOnlyList<Move> moves)
    {
        var (hers, others) = (new Queue<(Move Move, int Row)>(), new Queue<(Move Move, int Row)>());
        for (var i = 0; i < moves.Count; i++)
        {
            (moves[i].ByAlly ? hers : others).Enqueue((moves[i], i));
        }

        var ordered = new List<Move>();
        while (hers.Count > 0 && others.Count > 0)
        {
            var (one, other) = (hers.Peek(), others.Peek());
            ordered.Add((one.Move.Start, one.Row).CompareTo((other.Move.Start, other.Row)) < 0 ? hers.Dequeue().Move : others.Dequeue().Move);
        }

        return [.. ordered, .. hers.Concat(others).Select(m => m.Move)];
    }

    private static bool Is(string word, string role, Performer person) =>
        string.Equals(word, role, StringComparison.OrdinalIgnoreCase) || string.Equals(word, person.Name, StringComparison.OrdinalIgnoreCase);
}
