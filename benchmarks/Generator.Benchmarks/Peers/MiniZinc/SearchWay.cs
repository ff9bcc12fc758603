namespace Generator.Benchmarks.Peers.MiniZinc;

/// <summary>How the other solver is told to search: on both cores, with restarts, without which it finds next to nothing here.</summary>
/// <param name="Name">What reports call it.</param>
/// <param name="Choice">Which variable comes next.</param>
internal sealed record SearchWay(string Name, string Choice)
{
    public static readonly IReadOnlyList<SearchWay> All = [new("row by row", "input_order"), new("by weighted failures", "dom_w_deg")];

    /// <summary>Options of Gecode: every solution, two threads, restarts by Luby's sequence.</summary>
    public static readonly IReadOnlyList<string> Options = ["-a", "-p", "2", "-restart", "luby", "-restart-scale", "50"];

    /// <summary>Row by row (or by weight among all of them), then the opening.</summary>
    public string Annotation(IReadOnlyList<IReadOnlyList<string>> rows, IReadOnlyList<string> opening) => string.Equals(Choice, "input_order", StringComparison.Ordinal)
        ? $":: seq_search([{string.Join(", ", rows.Append(opening).Select(Search))}])"
        : $":: {Search([.. rows.Append(opening).SelectMany(r => r)])}";

    private string Search(IReadOnlyList<string> variables) => $"int_search([{string.Join(", ", variables)}], {Choice}, indomain_random, complete)";
}
