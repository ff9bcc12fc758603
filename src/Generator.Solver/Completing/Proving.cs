namespace Generator.Solver.Completing;

/// <summary>Looks, beside the search, for a proof that less than what it has found cannot give; anew whenever it finds better.</summary>
/// <param name="proof">What can be asked; null for nothing, at prices that it does not know.</param>
/// <param name="stop">Ends it.</param>
internal sealed class Proving(LeastProof? proof, CancellationToken stop) : IDisposable
{
    private readonly bool canAsk = proof?.CanAsk == true;
    private CancellationTokenSource ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
    private Task<LeastAnswer> answer = Task.FromResult(LeastAnswer.Unknown);
    private long? asked;

    /// <summary>True once it is proven that nothing costs less than so much. The first time that it is asked of a price it begins to look.</summary>
    public bool IsLeast(long? price)
    {
        if (price is { } now && canAsk && now != asked)
        {
            asked = now;
            ends.Cancel();
            ends.Dispose();
            ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
            answer = After(answer, now, ends.Token);
        }

        return asked == price && answer is { IsCompletedSuccessfully: true, Result.IsLeast: true };
    }

    /// <summary>What the proof came upon, if that costs less than so much.</summary>
    public LeastFound? Less(long price) => answer is { IsCompletedSuccessfully: true, Result.Less: { } less } && less.Whole.Price < price ? less : null;

    /// <summary>Stops looking; what the solver has in hand ends first.</summary>
    public void Dispose()
    {
        ends.Cancel();
        answer.GetAwaiter().GetResult();
        ends.Dispose();
    }

    /// <summary>One at a time: models are large.</summary>
    private async Task<LeastAnswer> After(Task<LeastAnswer> before, long price, CancellationToken token)
    {
        await before.ConfigureAwait(false);
        return await Task.Run(() => proof!.Below(price, token), CancellationToken.None).ConfigureAwait(false);
    }
}
