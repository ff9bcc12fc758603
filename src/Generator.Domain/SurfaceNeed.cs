namespace Generator.Domain;

/// <summary>What floor a reaction or a fall of the hero needs.</summary>
public enum SurfaceNeed
{
    Any,

    /// <summary>Dry and even.</summary>
    Dry,

    /// <summary>Clear floor as far as the attacker is sent.</summary>
    Lane,

    /// <summary>A mat, or a sprung floor with pads.</summary>
    Mat,
}
