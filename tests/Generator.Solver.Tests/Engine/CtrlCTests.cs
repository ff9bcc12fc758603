using System.Globalization;
using System.Runtime.InteropServices;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Tests.Engine;

/// <summary>
/// The program answers Ctrl-C itself. The solver would set a handler of its own and afterwards the default one, by which the next Ctrl-C
/// ends the program and loses the routine. Linux shows which signals are caught; elsewhere nothing can be seen.
/// </summary>
public sealed class CtrlCTests
{
    private const string Caught = "SigCgt:";

    private const string Ignored = "SigIgn:";

    private const ulong Interrupt = 1UL << 1;

    [Fact]
    public void After_a_search_the_program_still_catches_it()
    {
        // Started in the background of a script, a process ignores the signal from the first and the runtime leaves it so: the handler shows nowhere.
        if (!OperatingSystem.IsLinux() || Has(Ignored))
        {
            return;
        }

        using var ours = PosixSignalRegistration.Create(PosixSignal.SIGINT, context => context.Cancel = true);
        Assert.True(Has(Caught), "not caught before the search");
        var model = new CpModel();
        model.Maximize(model.NewIntVar(0, 7, "x"));
        using var session = new CpSession(model);
        Assert.Equal(CpAnswer.Optimal, session.Solve(new SearchSettings()));
        Assert.True(Has(Caught), "not caught after the search");
    }

    private static bool Has(string mask)
    {
        var line = File.ReadLines("/proc/self/status").First(l => l.StartsWith(mask, StringComparison.Ordinal));
        return (ulong.Parse(line[mask.Length..].Trim(), NumberStyles.HexNumber, CultureInfo.InvariantCulture) & Interrupt) != 0;
    }
}
