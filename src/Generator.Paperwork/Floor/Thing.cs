namespace Generator.Paperwork.Floor;

/// <summary>An obstacle on a plan.</summary>
public sealed record Thing(Box Box, string Name);
