namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Finds the phase that a line goes into, or makes it.</summary>
internal static class PhasePlace
{
    public static DraftPhase Of(FormulaBuilder builder, string name, string? before)
    {
        List<DraftPhase> phases = builder.PhaseDrafts;
        if (phases.Find(p => p.Name == name) is { } there)
        {
            return there;
        }

        int index = before is null ? phases.Count : phases.FindIndex(p => p.Name == before);
        if (index < 0)
        {
            throw new ArgumentException($"The formula has no phase '{before}'. Its phases: {string.Join(", ", phases.Select(p => p.Name))}.", nameof(before));
        }

        var made = new DraftPhase(name);
        phases.Insert(index, made);
        return made;
    }
}
