namespace Generator.Paperwork.Following;

/// <summary>A run of half counts in which a performer does one thing, from <paramref name="From"/> up to but not including <paramref name="To"/>.</summary>
public readonly record struct Span(int From, int To, Doing Doing, int Move);
