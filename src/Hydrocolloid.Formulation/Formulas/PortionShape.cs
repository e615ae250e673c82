namespace Hydrocolloid.Formulation;

/// <summary>How a portion is shaped, which decides how it can lodge in a throat.</summary>
public enum PortionShape
{
    /// <summary>In a bowl or glass, eaten by the spoon.</summary>
    Spooned,

    /// <summary>A thin slice or sheet.</summary>
    Slice,

    /// <summary>A cube or another block of one bite.</summary>
    Cube,

    /// <summary>A ball of one bite.</summary>
    Sphere,

    /// <summary>A small semi-rigid cup or capsule, pressed so that the jelly is taken in one bite.</summary>
    MiniCup,
}
