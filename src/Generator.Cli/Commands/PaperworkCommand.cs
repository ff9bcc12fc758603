using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Library.Reading;
using Generator.Paperwork;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.SafetyPapers;
using Generator.Paperwork.Printing;
using Generator.Rules;
using Generator.Solver.Cameras;

namespace Generator.Cli.Commands;

/// <summary><c>generator paperwork</c>: makes from a routine what each person on the crew needs, as files in one folder.</summary>
internal static class PaperworkCommand
{
    public static Command Of(Desk desk)
    {
        var routine = CommonOptions.File("ROUTINE", "The routine as a file: JSON, CSV or notes, any cell open; or - for standard input.");
        var brief = CommonOptions.Brief("The brief it answers; without it the one in the routine, else defaults. It may leave out the length.");
        var output = new Option<string?>("--out") { HelpName = "FOLDER", Description = "The folder for the papers; it is made when it is not there. Papers of the same names are replaced." };
        var from = DateOption.Of("--from", "The first rehearsal day, such as 2027-03-15: dates in the teaching plan, and a calendar file.");
        var frames = WordOption.Of("--frames", "RATE", "Frames a second of the timecodes: 24, 25, 29.97 (drop-frame) or 30; 25 when nothing is said.", "a frame rate", "these papers know", FrameRate.All, r => r.Name);
        var guidance = WordOption.Of("--guidance", "COUNTRY", "Whose guidance the safety papers name: generic, uk, us or ontario; generic when nothing is said.", "a country", "these papers know", Guidance.All, g => g.Word);
        var page = WordOption.Of("--page", "PAPER", "The paper of pack.pdf and, twice and four times as large, of the wall: a4 or letter; when nothing is said letter with the guidance of us or ontario, else a4.", "a paper", "these papers know", PageSize.All, p => p.Word);
        var noPdf = new Option<bool>("--no-pdf") { Description = "Makes no PDF; nothing is printed with a browser." };
        var library = CommonOptions.Library();
        var command = new HouseCommand("paperwork", "Makes the papers of a routine: what each person on the crew needs, in one folder.")
        {
            routine, brief, output, from, frames, guidance, page, noPdf, library,
        };
        command.Example = "generator paperwork ferry.routine.json --out ferry";
        command.ExitCodes =
        [
            (ExitCode.Good, "The papers are made, and the audit found nothing unsafe or broken."),
            (ExitCode.Forbidden, "The papers are made, but something is unsafe or broken; they say where."),
            (ExitCode.Input, "Something that was given is wrong."),
            ExitCode.BrokenDownHere,
        ];
        command.SetAction(parsed => Run(
            desk,
            parsed.GetValue(routine),
            parsed.GetValue(brief),
            parsed.GetValue(output),
            Options(parsed.GetValue(from), parsed.GetValue(frames), parsed.GetValue(guidance) ?? PaperOptions.Default.Guidance, parsed.GetValue(page)),
            !parsed.GetValue(noPdf),
            parsed.GetValue(library) ?? []));
        return command;
    }

    private static PaperOptions Options(DateOnly? from, FrameRate? frames, Guidance guidance, PageSize? page) => new()
    {
        From = from,
        Frames = frames ?? PaperOptions.Default.Frames,
        Guidance = guidance,
        Page = page ?? (guidance == Guidance.UnitedStates || guidance == Guidance.Ontario ? PageSize.Letter : PageSize.A4),
    };

    private static int Run(Desk desk, string? path, string? briefPath, string? folder, PaperOptions options, bool pdf, IReadOnlyList<string> library)
    {
        Pairs.Check("paperwork", path, briefPath);
        if (folder is null)
        {
            throw new RefusedException("generator paperwork: --out is missing.", "Maybe add --out and the name of a folder for the papers.");
        }

        OutputFolder.Check(folder);
        var book = Inputs.Book(library);
        var routine = Pairs.Routine(path, briefPath, book, desk, "these papers use");

        desk.Limit(Desk.Untimed);
        options = options with { Cards = Pictures.Of(book), ChangeLog = OutputFolder.ChangeLog(folder), Calendar = OutputFolder.Calendar(folder) };
        var source = PaperSource.Of(new Scene(routine.Brief, book), routine).With(options);
        var ally = routine.Brief.Ally;
        source = source.With(options with { Cameras = ally is null ? CameraCover.Of(source.Scene, source.Steps, source.Acted?.Gaps, desk.Stop) : null });
        if (ally is not null)
        {
            desk.Err.WriteLine($"Not made, since they cannot show {ally.Part.Name} beside {routine.Brief.Hero.Name} yet: {string.Join(", ", Pack.LeftOut(source))}, and no PDF.");
            desk.Err.WriteLine("  Maybe wall.txt and tracks.csv serve in their place.");
        }
        else if (source.Options.Cameras is null)
        {
            desk.Err.WriteLine("camera-plan.txt is not made: the search for the fewest set-ups was stopped.");
            desk.Err.WriteLine("  Maybe run it again and wait a little longer.");
        }

        var papers = Pack.Of(source);
        OutputFolder.Write(folder, papers, source);
        var width = Math.Max(PackPage.FileName.Length, papers.Max(p => p.FileName.Length));
        foreach (var paper in papers)
        {
            PaperList.Tell(desk, paper.FileName, width, paper.Purpose);
        }

        IReadOnlyList<string> printed = pdf && ally is null ? PackPrint.Make(desk, folder, source, width) : [];
        StalePapers.Tell(desk, folder, [.. papers.Select(p => p.FileName), .. printed]);

        desk.Err.WriteLine($"The papers are in {folder}.");
        if (source.Verdict.IsClean)
        {
            return ExitCode.Good;
        }

        desk.Err.WriteLine($"{source.Head.Warning} The papers say why.");
        return ExitCode.Forbidden;
    }
}
