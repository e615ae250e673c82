namespace Hydrocolloid.Formulation.Declarations;

/// <summary>What stands beside the class of an additive.</summary>
public enum AdditiveNaming
{
    /// <summary>Its name, such as <c>gelling agent (agar)</c>.</summary>
    Name,

    /// <summary>Its E number (Codex: its INS number), such as <c>gelling agent (E 406)</c>; its name where it has none, or several.</summary>
    Number,
}
