namespace Generator.Paperwork.SafetyPapers;

/// <summary>One control of a hazard.</summary>
public sealed record Control(ControlOrder Order, string Text);
