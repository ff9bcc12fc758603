namespace Generator.Solver.Staging;

/// <summary>A rule of which a plan of exchanges can already tell something.</summary>
public interface IPlanRule
{
    /// <summary>Posts that to a plan.</summary>
    void Post(StagingModel plan);
}
