using System.Globalization;
using Generator.Library.Files;

namespace Generator.Library.Tests.Killed;

/// <summary>
/// These tests as a program of their own, which <see cref="KilledWriteTests"/> starts and kills: it writes a big file through
/// <see cref="RoutineFiles"/> piece by piece, and says on standard output how far it is.
/// </summary>
internal static class SlowWriter
{
    public const int Pieces = 64;

    /// <summary>Said when the last piece is written, but not yet on the disk and in its place.</summary>
    public const string AllWritten = "all written";

    public const string Done = "done";

    private const int PieceLength = 1 << 15;

    /// <summary>What the write with this number makes of the file.</summary>
    public static byte[] Text(int number) => [.. Enumerable.Range(0, Pieces).SelectMany(piece => Piece(number, piece))];

    /// <summary>Writes; with a third argument other than −1 it waits for ever after so many pieces.</summary>
    public static int Main(string[] args)
    {
        var number = int.Parse(args[1], CultureInfo.InvariantCulture);
        var halt = int.Parse(args[2], CultureInfo.InvariantCulture);
        RoutineFiles.Write(args[0], stream =>
        {
            for (var piece = 0; piece < Pieces; piece++)
            {
                stream.Write(Piece(number, piece));
                Say(piece.ToString(CultureInfo.InvariantCulture));
                if (piece + 1 == halt)
                {
                    Thread.Sleep(Timeout.Infinite);
                }
            }

            Say(AllWritten);
        });
        Say(Done);
        return 0;
    }

    private static byte[] Piece(int number, int piece)
    {
        var bytes = new byte[PieceLength];
        new Random((number * 1000) + piece).NextBytes(bytes);
        return bytes;
    }

    private static void Say(string line)
    {
        Console.Out.WriteLine(line);
        Console.Out.Flush();
    }
}
