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

    public Enumerator GetEnumerator() => new(items);

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();

    /// <summary>Goes through the items without a new object.</summary>
    public struct Enumerator(T[] items)
    {
        private int at = -1;

        public readonly T Current => items[at];

        public bool MoveNext() => ++at < items.Length;
    }
}

/// <summary>Makes fixed lists of what stands in brackets.</summary>
public static class FixedList
{
    public static FixedList<T> Of<T>(ReadOnlySpan<T> items)
        where T : class => new(items.ToArray());
}
