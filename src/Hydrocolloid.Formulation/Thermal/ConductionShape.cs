namespace Hydrocolloid.Formulation.Thermal;

/// <summary>The three bodies in which heat flows along one direction only.</summary>
internal enum ConductionShape
{
    Slab,
    Cylinder,
    Sphere,
}
