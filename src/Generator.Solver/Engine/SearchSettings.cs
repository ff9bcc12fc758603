using System.Globalization;

namespace Generator.Solver.Engine;

/// <summary>The solver's parameters that we use, typed. A misspelt or culture-formatted parameter would end the process.</summary>
public sealed record SearchSettings
{
    /// <summary>
    /// Further parameters in the solver's own words, for developers, such as <c>log_search_progress:true</c>. The solver ends the process over a word that it does not know.
    /// </summary>
    public const string DevelopersVariable = "GENERATOR_SOLVER_PARAMETERS";

    /// <summary>Wall time, 0.01 s and more.</summary>
    public TimeSpan Time { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>Deterministic work, a machine-independent measure that makes a cut-off search repeatable; null for no limit.</summary>
    public double? Work { get; init; }

    /// <summary>1 is reproducible; several are not.</summary>
    public int Workers { get; init; } = 1;

    /// <summary>0 and more.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Use linear relaxations.</summary>
    public bool Linear { get; init; } = true;

    /// <summary>
    /// No presolve and no clean-up during search: for models of a few rows, which are solved in less time than either takes.
    /// </summary>
    public bool Bare { get; init; }

    /// <summary>Follow the model's own order of decisions (<see cref="Filling.DecisionOrder"/>) instead of the solver's.</summary>
    public bool OwnOrder { get; init; }

    /// <summary>Everything but the time as the solver's makers set it: presolve, all cores (benchmarks).</summary>
    public bool AsMade { get; init; }

    internal string ToParameters()
    {
        if (AsMade)
        {
            return string.Create(CultureInfo.InvariantCulture, $"catch_sigint_signal:false,max_time_in_seconds:{Math.Max(0.01, Time.TotalSeconds):0.###}");
        }

        // Ctrl-C is ours: the solver's own handler, one for all its searches, ends the process when one search is over and another goes on.
        var parts = new List<string>
        {
            "catch_sigint_signal:false",
            string.Create(CultureInfo.InvariantCulture, $"max_time_in_seconds:{Math.Max(0.01, Time.TotalSeconds):0.###}"),
            string.Create(CultureInfo.InvariantCulture, $"num_workers:{Workers}"),
            string.Create(CultureInfo.InvariantCulture, $"random_seed:{Seed & 0x7fffffff}"),
        };
        if (Work is { } work)
        {
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"max_deterministic_time:{work:0.###}"));
        }

        // Otherwise a short presolve, best for runs of a few seconds: no probing, one round.
        parts.Add(Bare ? "cp_model_presolve:false,use_sat_inprocessing:false,cp_model_probing_level:0,symmetry_level:0" : "cp_model_probing_level:0,max_presolve_iterations:1,symmetry_level:0");

        if (!Linear)
        {
            parts.Add("linearization_level:0");
        }

        if (OwnOrder)
        {
            parts.Add("search_branching:FIXED_SEARCH");
        }

        if (Environment.GetEnvironmentVariable(DevelopersVariable) is { Length: > 0 } more)
        {
            parts.Add(more);
        }

        return string.Join(',', parts);
    }
}
