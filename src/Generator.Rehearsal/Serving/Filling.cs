using Generator.Domain.Edits;
using Generator.Domain.Sketches;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Rehearsal.Documents;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Serving;

/// <summary>
/// Fills what is open, of the revision at which it began, in a process of its own: nobody waits for it, it can be stopped, and its answer is an offer beside the fight until
/// somebody takes it, as one edit.
/// </summary>
/// <param name="document">The document.</param>
/// <param name="work">Fills a sketch that is given as JSON.</param>
internal sealed class Filling(Document document, Func<string, CancellationToken, Task<Filled>> work) : IDisposable
{
    private readonly System.Threading.Lock door = new();
    private CancellationTokenSource? running;
    private Offer? offer;
    private string? trouble;

    /// <summary>Told when a filling has ended.</summary>
    public Action Ended { get; set; } = () => { };

    private sealed record Offer(int Revision, Take Edit, JArray News);

    /// <summary>How it stands, for the page; null where there is nothing to say.</summary>
    public JObject? Told()
    {
        lock (door)
        {
            return running is not null ? new JObject { ["running"] = true }
                : offer is not null ? new JObject { ["news"] = offer.News, ["isPresent"] = offer.Revision == document.Now.Revision }
                : trouble is not null ? new JObject { ["trouble"] = trouble } : null;
        }
    }

    public void Begin()
    {
        lock (door)
        {
            if (running is not null)
            {
                throw new RefusedEditException("A filling is on its way already.", "Maybe wait for it, or stop it first.");
            }

            (running, offer, trouble) = (new CancellationTokenSource(), null, null);
            _ = Run(document.Now, running);
        }
    }

    /// <summary>Ends the search; what it has found by then is still offered.</summary>
    public void Stop()
    {
        lock (door)
        {
            running?.Cancel();
        }
    }

    /// <summary>Takes the offer.</summary>
    /// <exception cref="RefusedEditException">There is none, or the fight has changed since it was begun.</exception>
    public void Take(int revision)
    {
        var taken = offer ?? throw new RefusedEditException("There is no offer.", "Maybe ask for a filling first.");
        if (taken.Revision != revision)
        {
            throw new RefusedEditException("The fight has changed since this was begun.", "Maybe fill it anew.") { IsStale = true };
        }

        document.Do(revision, taken.Edit);
        Leave();
    }

    /// <summary>Lays the offer aside.</summary>
    public void Leave()
    {
        lock (door)
        {
            (offer, trouble) = (null, null);
        }
    }

    public void Dispose() => Stop();

    private async Task Run(Document.State state, CancellationTokenSource stop)
    {
        Offer? found = null;
        string? wrong = null;
        try
        {
            var filled = await work(SketchWriter.Text(state.Sketch), stop.Token).ConfigureAwait(false);
            (found, wrong) = (filled.Json.Length > 0 ? OfferOf(state, filled.Json) : null, filled.Error);
        }
        catch (Exception fault) when (fault is IOException or JsonException or InvalidOperationException or OperationCanceledException or System.ComponentModel.Win32Exception)
        {
            wrong = "The filling broke down. " + fault.Message;
        }

        lock (door)
        {
            (running, offer, trouble) = (null, found, wrong);
        }

        stop.Dispose();
        Ended();
    }

    private Offer OfferOf(Document.State state, string json)
    {
        var answer = JObject.Parse(json);
        var routine = RoutineReader.Parse(new SourceFile("filling.json", answer["routine"]!.ToString()), document.Book, state.Sketch.Brief);
        if (!routine.IsGood)
        {
            throw new InvalidOperationException(routine.ToText());
        }

        var before = state.Sketch;
        var after = Opening.Whole(routine.Value);
        after = after with { Moves = Locked(before.Moves, after.Moves) };
        var gave = answer["gave"]!.Select(g => (JToken)new JObject { ["move"] = g["move"], ["text"] = $"{g["cell"]}: {g["was"]} gives way to {g["is"]}", ["why"] = g["message"] });
        var rows = after.Moves.Select((m, i) => (JToken)new JObject
        {
            ["count"] = SketchWriter.Typed(after, m, Column.Count),
            ["attacker"] = SketchWriter.Typed(after, m, Column.Attacker),
            ["text"] = string.Join(" > ", new[] { m.Attack is { } a ? StateJson.Meant(document.Book, Column.Attack, a.Ids) : null, m.Technique is { } t ? StateJson.Meant(document.Book, Column.Technique, t.Ids) : null }.OfType<string>())
                + (m.Reaction is { } r ? $" ({StateJson.Meant(document.Book, Column.Reaction, r.Ids)})" : string.Empty),
            ["isNew"] = i >= before.Moves.Count || !Stands(before.Moves[i], m),
        });
        return new Offer(state.Revision, new Take("fill what was open", after.Moves, after.Placements), new JArray(rows.Concat(gave)));
    }

    private static bool Stands(SketchMove said, SketchMove found) =>
        said.Attacker == found.Attacker && Is(said.Technique, found.Technique) && (said.FollowsUp || Is(said.Attack, found.Attack)) && Is(said.Reaction, found.Reaction) && said.Count == found.Count;

    private static bool Is(SketchCell? said, SketchCell? found) => said is { Ids: [var one] } ? found?.Ids is [var id] && string.Equals(one, id, StringComparison.Ordinal) : said is null && found is null;

    /// <summary>Padlocks stay on what they were put on: locked words never give, so each finds its move again, in order.</summary>
    private static SketchMove[] Locked(IReadOnlyList<SketchMove> before, IReadOnlyList<SketchMove> after)
    {
        var moves = after.ToArray();
        var from = 0;
        foreach (var said in before.Where(m => new[] { m.Attack, m.Technique, m.Reaction }.Any(c => c?.Firmness == Firmness.Fixed)))
        {
            for (var i = from; i < moves.Length; i++)
            {
                if (Holds(said.Attack, moves[i].Attack) && Holds(said.Technique, moves[i].Technique) && Holds(said.Reaction, moves[i].Reaction) && (said.Attacker is null || said.Attacker == moves[i].Attacker))
                {
                    moves[i] = moves[i] with { Attack = Kept(said.Attack, moves[i].Attack), Technique = Kept(said.Technique, moves[i].Technique), Reaction = Kept(said.Reaction, moves[i].Reaction) };
                    from = i + 1;
                    break;
                }
            }
        }

        return moves;

        static bool Holds(SketchCell? said, SketchCell? found) => said?.Firmness != Firmness.Fixed || (found is not null && said.Ids.Contains(found.Ids[0], StringComparer.Ordinal));

        static SketchCell? Kept(SketchCell? said, SketchCell? found) => said?.Firmness == Firmness.Fixed ? found! with { Firmness = Firmness.Fixed } : found;
    }
}
