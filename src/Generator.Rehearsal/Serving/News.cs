using System.Collections.Concurrent;

namespace Generator.Rehearsal.Serving;

/// <summary>Tells every open page that something is new; several things at once are told once.</summary>
internal sealed class News
{
    private readonly ConcurrentDictionary<Seat, bool> seats = new();

    public void Tell()
    {
        foreach (var seat in seats.Keys)
        {
            seat.Ring();
        }
    }

    /// <summary>A place for one page; null when all are taken.</summary>
    public Seat? Sit(int most)
    {
        if (seats.Count >= most)
        {
            return null;
        }

        var seat = new Seat(this);
        seats[seat] = true;
        return seat;
    }

    /// <summary>One page that listens.</summary>
    public sealed class Seat(News news) : IDisposable
    {
        private readonly SemaphoreSlim bell = new(0, 1);

        public void Ring()
        {
            try
            {
                bell.Release();
            }
            catch (Exception fault) when (fault is SemaphoreFullException or ObjectDisposedException)
            {
                // It has been rung already, or nobody listens any more.
                return;
            }
        }

        public async Task<bool> Next(CancellationToken over)
        {
            await bell.WaitAsync(over).ConfigureAwait(false);
            return true;
        }

        public void Dispose()
        {
            news.seats.TryRemove(this, out _);
            bell.Dispose();
        }
    }
}
