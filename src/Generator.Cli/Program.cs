using Generator.Cli;
using Generator.Cli.Guarding;

// Nothing of the library or the solver may be named here: the guard's own process never loads them.
if (Surroundings.Missing() is { } missing)
{
    Console.Error.Write(missing);
    return ExitCode.Surroundings;
}

Console.SetError(new StandardError());
if (WatchLimits.Wrong() is { } wrong)
{
    Console.Error.Write(wrong);
    return ExitCode.Input;
}

return (Guard.IsFor(args) ? Guard.Run(args) : null) ?? Worker.Run(args);
