using Generator.Domain.Edits;
using Generator.Rehearsal.Documents;
using Newtonsoft.Json;

namespace Generator.Rehearsal.Offers;

/// <summary>
/// What is offered beside the fight. Questions to the solver are about the revision at which they were asked and are answered in a process of their own: nobody waits for them, they can be
/// stopped, and an answer changes nothing until somebody takes a card, as one edit.
/// </summary>
/// <param name="document">The document.</param>
/// <param name="ask">Answers a question, and ends soon once it is asked to.</param>
public sealed class Offering(Document document, Func<Question, CancellationToken, Task<Answer>> ask) : IDisposable
{
    private readonly System.Threading.Lock door = new();
    private CancellationTokenSource? running;
    private Stand now = new(0, null, 0, [], null);

    /// <summary>Told when there is another offer, or a question has been answered.</summary>
    public Action Changed { get; set; } = () => { };

    /// <summary>How it stands.</summary>
    /// <param name="Number">Another one whenever anything of it is other.</param>
    /// <param name="Running">The question that is being worked on; null for none.</param>
    /// <param name="Revision">Of the fight for which the cards are.</param>
    /// <param name="Cards">What is offered.</param>
    /// <param name="Trouble">Why there is none.</param>
    public sealed record Stand(int Number, Question? Running, int Revision, IReadOnlyList<Card> Cards, string? Trouble)
    {
        /// <summary>Of each finding what is known of its cause; empty where nobody asked.</summary>
        public IReadOnlyList<Cause> Causes { get; init; } = [];

        public bool IsEmpty => Running is null && Cards.Count == 0 && Causes.Count == 0 && Trouble is null;
    }

    public Stand Now => now;

    /// <exception cref="RefusedEditException">Another question is being worked on.</exception>
    public void Ask(Question question)
    {
        lock (door)
        {
            CheckIsFree();
            var own = running = new CancellationTokenSource();
            Become(new Stand(0, question, question.Of.Revision, [], null));
            _ = Run(question with { Told = json => Add(question, json, own) }, own);
        }
    }

    /// <summary>Offers cards that are there already.</summary>
    /// <exception cref="RefusedEditException">A question is being worked on.</exception>
    public void Show(int revision, IReadOnlyList<Card> cards, string otherwise)
    {
        lock (door)
        {
            CheckIsFree();
            Become(new Stand(0, null, revision, cards, cards.Count == 0 ? otherwise : null));
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

    /// <summary>Takes a card.</summary>
    /// <exception cref="RefusedEditException">There is none, or the fight has changed since it was made.</exception>
    public void Take(int revision, int card)
    {
        var taken = Find(card);
        if (now.Revision != revision)
        {
            throw new RefusedEditException("The fight has changed since this was begun.", "Maybe ask for it anew.") { IsStale = true };
        }

        document.Do(revision, new Take(taken.Name, taken.After));
        lock (door)
        {
            // What is still being looked for would be another way for a fight that is no more.
            running?.Cancel();
            running = null;
            Become(new Stand(0, null, 0, [], null));
        }
    }

    /// <summary>A card by its place among those that are offered, from 0.</summary>
    /// <exception cref="RefusedEditException">There is none.</exception>
    public Card Find(int card) => At(card) ?? throw new RefusedEditException("There is no such offer.", "Maybe ask for one first.");

    /// <summary>The card at a place; null where there is none, or no longer.</summary>
    public Card? At(int card) => now.Cards.ElementAtOrDefault(card);

    /// <summary>Lays the offers aside.</summary>
    public void Leave()
    {
        lock (door)
        {
            if (running is null)
            {
                Become(new Stand(0, null, 0, [], null));
            }
        }
    }

    public void Dispose() => Stop();

    private void CheckIsFree()
    {
        if (running is not null)
        {
            throw new RefusedEditException("Something is being worked on already.", "Maybe wait for it, or stop it first.");
        }
    }

    private void Become(Stand next) => now = next with { Number = now.Number + 1 };

    /// <summary>One of several answers, before the others are there.</summary>
    private void Add(Question question, string json, CancellationTokenSource of)
    {
        var more = Answers.Of(question, json, document.Book);
        lock (door)
        {
            if (!ReferenceEquals(running, of))
            {
                return;
            }

            Become(now with { Cards = [.. now.Cards, .. more] });
        }

        Changed();
    }

    private async Task Run(Question question, CancellationTokenSource stop)
    {
        IReadOnlyList<Card> found = [];
        IReadOnlyList<Cause> causes = [];
        string? wrong = null;
        try
        {
            var answer = await ask(question, stop.Token).ConfigureAwait(false);
            if (answer.Json.Length == 0)
            {
                wrong = answer.Error;
            }
            else if (question.Errand == Errand.Causes)
            {
                causes = Answers.CausesOf(answer.Json);
            }
            else
            {
                found = Answers.Of(question, answer.Json, document.Book);
            }
        }
        catch (Exception fault) when (fault is IOException or JsonException or InvalidOperationException or OperationCanceledException or System.ComponentModel.Win32Exception)
        {
            wrong = "This broke down. " + fault.Message;
        }

        lock (door)
        {
            if (ReferenceEquals(running, stop))
            {
                running = null;

                // A solver that broke down leaves what it had found.
                var cards = found.Count >= now.Cards.Count ? found : now.Cards;
                Become(new Stand(0, null, question.Of.Revision, cards, cards.Count > 0 ? null : wrong) { Causes = causes });
            }
        }

        stop.Dispose();
        Changed();
    }
}
