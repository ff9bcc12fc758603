using Generator.Rules.Replaying;

namespace Generator.Paperwork.Following;

/// <summary>Where a prop is from a moment on, until its next spell begins.</summary>
/// <param name="From">Half count.</param>
/// <param name="State">In whose hand, or where on the floor.</param>
/// <param name="Where">The same in words: "in Bruno's right hand".</param>
public sealed record PropSpell(int From, PropState State, string Where);
