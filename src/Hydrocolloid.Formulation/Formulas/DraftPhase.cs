namespace Hydrocolloid.Formulation;

/// <summary>A phase as the builder holds it, before anything is checked.</summary>
internal sealed class DraftPhase(string name)
{
    public string Name { get; } = name;

    public List<DraftLine> Lines { get; } = [];
}
