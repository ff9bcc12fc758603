using System.Text;

namespace Generator.Paperwork.Printing;

/// <summary>Sets the dates inside a PDF to a fixed one of the same length, so that nothing tells when it was printed.</summary>
public static class PdfDates
{
    private static readonly byte[][] Keys = ["/CreationDate (D:"u8.ToArray(), "/ModDate (D:"u8.ToArray()];

    private static readonly byte[] Date = Encoding.ASCII.GetBytes("20000101000000");

    /// <summary>The same bytes with other dates; nothing moves.</summary>
    public static byte[] Fixed(byte[] pdf)
    {
        var copy = (byte[])pdf.Clone();
        foreach (var key in Keys)
        {
            for (var at = copy.AsSpan().IndexOf(key); at >= 0;)
            {
                var from = at + key.Length;
                if (from + Date.Length <= copy.Length && copy.AsSpan(from, Date.Length).IndexOfAnyExceptInRange((byte)'0', (byte)'9') < 0)
                {
                    Date.CopyTo(copy, from);
                }

                var next = copy.AsSpan(from).IndexOf(key);
                at = next < 0 ? -1 : from + next;
            }
        }

        return copy;
    }
}
