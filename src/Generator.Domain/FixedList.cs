using System.Collections;
using System.Runtime.CompilerServices;

namespace Generator.Domain;

/// <summary>A list that never changes and is always the same class, so that the loops of a search reach its items at once and not by way of an interface.</summary>
/// <param name="items">Taken over: whoever hands them in changes them no more.</param>
[CollectionBuilder(typeof(FixedList), nameof(FixedList.Of))]
public sealed class FixedList<T>(T[] items) : IReadOnlyList<T>
    where T : class
{
    public int Count => items.Length;

    public T this[int index] => items[index];

    /// <summary>A copy to change.</summary>
    public T[] ToArray() => items.AsSpan().ToArray();

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();
}

/// <summary>Makes fixed lists of what stands in brackets.</summary>
public static class FixedList
{
    public static FixedList<T> Of<T>(ReadOnlySpan<T> items)
        where T : class => new(items.ToArray());
}
