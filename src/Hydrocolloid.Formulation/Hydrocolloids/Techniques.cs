using Hydrocolloid.Formulation.Catalogues;

namespace Hydrocolloid.Formulation;

/// <summary>What the catalogue knows of techniques.</summary>
public static class Techniques
{
    /// <summary>All techniques. They are read when they are first asked for.</summary>
    public static ValueList<Technique> All => BuiltInCatalogue.Techniques;

    internal static Technique Get(string id) => All.First(t => t.Id == id);
}
