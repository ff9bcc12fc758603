using Generator.Cli.Guarding;

// Nothing of the library or the solver may be named here: the guard's own process never loads them.
return (Guard.IsFor(args) ? Guard.Run(args) : null) ?? Worker.Run(args);
