namespace Generator.Paperwork.Floor;

/// <summary>A way in on a plan.</summary>
public sealed record Door(Point At, string Name);
