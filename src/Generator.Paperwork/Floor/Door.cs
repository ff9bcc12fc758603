namespace Generator.Paperwork.Floor;

/// <summary>A way in on a plan, or one of several marks.</summary>
public sealed record Door(Point At, string Name, bool IsMark = false);
