using System.Diagnostics;
using System.Globalization;
using Generator.Library.Files;

namespace Generator.Library.Tests.Killed;

/// <summary>A program that is killed outright while it writes leaves the old file or the new one, whole.</summary>
public sealed class KilledWriteTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("killed-");

    private string Target => Path.Combine(folder.FullName, "fight.routine.json");

    private FileInfo[] Temporaries => [.. folder.GetFiles().Where(f => f.FullName != Target)];

    public void Dispose() => folder.Delete(recursive: true);

    [Theory]
    [InlineData(1)]
    [InlineData(SlowWriter.Pieces / 2)]
    [InlineData(SlowWriter.Pieces)]
    public async Task Killed_after_so_many_pieces_the_old_file_stands_and_the_next_write_clears_up(int pieces)
    {
        RoutineFiles.Write(Target, "old");
        await Kill(number: 1, halt: pieces, after: (pieces - 1).ToString(CultureInfo.InvariantCulture));
        Assert.Equal("old", await File.ReadAllTextAsync(Target));
        var half = await File.ReadAllBytesAsync(Assert.Single(Temporaries).FullName);
        var full = SlowWriter.Text(1);
        Assert.Equal(full.Length / SlowWriter.Pieces * pieces, half.Length);
        Assert.Equal(full[..half.Length], half);

        var mine = Path.Combine(folder.FullName, "fight.routine.json.mine.tmp");
        await File.WriteAllTextAsync(mine, "kept");
        RoutineFiles.Write(Target, "new");
        Assert.Equal("new", await File.ReadAllTextAsync(Target));
        Assert.Equal([mine], Temporaries.Select(f => f.FullName));
    }

    [Fact]
    public async Task Killed_at_any_moment_one_of_the_two_stands_whole()
    {
        var dice = new Random(20260401);
        var (number, amid, replaced) = (1, 0, 0);
        RoutineFiles.Write(Target, stream => stream.Write(SlowWriter.Text(0)));
        var old = SlowWriter.Text(0);
        for (var run = 0; run < 24; run++, number++)
        {
            // Mostly in the last steps, where the new file takes its place.
            var last = dice.Next(3) == 0 ? dice.Next(SlowWriter.Pieces).ToString(CultureInfo.InvariantCulture) : dice.Next(2) == 0 ? SlowWriter.AllWritten : SlowWriter.Done;
            await Kill(number, halt: -1, last);
            var (now, next) = (await File.ReadAllBytesAsync(Target), SlowWriter.Text(number));
            var isNew = now.AsSpan().SequenceEqual(next);
            Assert.True(isNew || now.AsSpan().SequenceEqual(old), $"run {run}, killed after \"{last}\": {now.Length} bytes that are neither the old file nor the new one");
            Assert.True(isNew || last != SlowWriter.Done, $"run {run}: done, and still the old file");
            amid += isNew ? 0 : 1;
            replaced += isNew ? 1 : 0;
            old = now;
        }

        RoutineFiles.Write(Target, "new");
        Assert.Empty(Temporaries);
        Assert.True(amid + replaced == 24 && replaced > 0, $"{amid} killed before the new file was in its place, {replaced} after");
    }

    [Fact]
    public void What_somebody_else_is_still_writing_is_left_alone()
    {
        RoutineFiles.Write(Target, stream =>
        {
            stream.Write("slow"u8);
            RoutineFiles.Write(Target, "quick");
            Assert.Equal("quick", File.ReadAllText(Target));
            Assert.Single(Temporaries);
        });
        Assert.Equal("slow", File.ReadAllText(Target));
        Assert.Empty(Temporaries);
    }

    /// <summary>Starts a write and kills it outright as soon as it has said a line.</summary>
    private async Task Kill(int number, int halt, string after)
    {
        var start = new ProcessStartInfo("dotnet") { UseShellExecute = false, RedirectStandardOutput = true };
        foreach (var word in (string[])[typeof(SlowWriter).Assembly.Location, Target, number.ToString(CultureInfo.InvariantCulture), halt.ToString(CultureInfo.InvariantCulture)])
        {
            start.ArgumentList.Add(word);
        }

        using var writer = Process.Start(start)!;
        string? said;
        do
        {
            said = await writer.StandardOutput.ReadLineAsync();
        }
        while (said is not null && said != after);
        writer.Kill();
        await writer.WaitForExitAsync();
        Assert.Equal(after, said);
    }
}
