namespace Generator.Rules.Rules;

/// <summary>Whose moves a rule looks at in a fight with an ally. Without one it is all the same.</summary>
public enum Whose
{
    /// <summary>The hero's and the ally's, each for itself: what one body can do, one after another.</summary>
    Each,

    /// <summary>Both in one: what attackers do and suffer, and the floor.</summary>
    Both,

    /// <summary>The hero's alone: what a brief asks of the fight as a story.</summary>
    Hero,
}
