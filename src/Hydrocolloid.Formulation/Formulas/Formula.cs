using System.Diagnostics;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>
/// A gel as a formula by proportion: a base that counts as 100 %, then phases of additions, each dosed by weight of a stated
/// reference. Immutable, safe to share between threads, equal by content. A formula that exists is solved and possible.
/// </summary>
[DebuggerDisplay("{Name}: {Lines.Count} lines")]
public sealed class Formula : IEquatable<Formula>
{
    internal Formula(
        string name, ValueList<BasePart> baseParts, ValueList<Phase> phases, ProcessPlan process, ServicePlan service, ExtensionData? extensions, Proportions proportions)
    {
        Name = name;
        Base = new BasePhase(baseParts);
        Phases = phases;
        Process = process;
        Service = service;
        Extensions = extensions;
        Proportions = proportions;
        Lines = Flatten(baseParts, phases, proportions.Masses.Length);
    }

    /// <summary>The name.</summary>
    public string Name { get; }

    /// <summary>The base: 100 %.</summary>
    public BasePhase Base { get; }

    /// <summary>The phases, in the order of the kitchen.</summary>
    public ValueList<Phase> Phases { get; }

    /// <summary>All lines in the order of the kitchen, the base first.</summary>
    public ValueList<FormulaLine> Lines { get; }

    /// <summary>How it is to be worked.</summary>
    public ProcessPlan Process { get; }

    /// <summary>How it is to be served.</summary>
    public ServicePlan Service { get; }

    /// <summary>An integrator's own data, never read by the library; null if none.</summary>
    public ExtensionData? Extensions { get; }

    /// <summary>The masses in units of the base mass.</summary>
    public Proportions Proportions { get; }

    /// <summary>Starts a formula.</summary>
    /// <param name="name">Its name; must not be blank when the formula is built.</param>
    /// <returns>The builder.</returns>
    public static FormulaBuilder Named(string name) => new(Guard.NotNull(name));

    /// <summary>A builder that holds this formula, for changes of any kind.</summary>
    /// <returns>The builder.</returns>
    public FormulaBuilder ToBuilder() => new(this);

    /// <summary>A line by its label.</summary>
    /// <param name="label">The label: the ingredient's id unless the line has a label of its own.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentException">There is no such line; the message lists those there are.</exception>
    public FormulaLine Line(string label) => FindLine(Guard.NotNull(label))
        ?? throw new ArgumentException($"The formula has no line '{label}'. Its lines: {string.Join(", ", Lines.Select(l => l.Label))}.", nameof(label));

    /// <summary>The line of an ingredient, where the line has no label of its own.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    public FormulaLine Line(Ingredient ingredient) => Line(Guard.NotNull(ingredient).Id);

    /// <summary>The amount of a line as a percentage by weight of any reference.</summary>
    /// <param name="label">The label of the line.</param>
    /// <param name="reference">The reference: for <see cref="DoseReferenceKind.Preceding"/> and <see cref="DoseReferenceKind.Water"/> seen from the line's own phase.</param>
    /// <returns>The dose on that reference.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    /// <exception cref="FormulaException">The reference is a later line, is unknown, or weighs nothing.</exception>
    public Dose Express(string label, DoseReference reference)
    {
        FormulaLine line = Line(label);
        Guard.NotNull(reference);
        if (ProblemOf(line, reference) is { } problem)
        {
            throw new FormulaException($"The dose of '{label}' on {reference}", ValueList<FormulaProblem>.Own([problem]));
        }

        double percent = reference == line.Dose.Reference ? line.Dose.PercentByMass
            : Proportions.Masses[line.Index] / Proportions.ReferenceMass(this, reference, line.PhaseIndex) * 100;
        return new Dose(percent, reference);
    }

    /// <summary>The same formula with one dose stated on another reference; the masses stay as they are.</summary>
    /// <param name="label">The label of an addition.</param>
    /// <param name="reference">The reference.</param>
    /// <returns>The formula.</returns>
    /// <exception cref="ArgumentException">There is no such addition.</exception>
    /// <exception cref="FormulaException">The reference is a later line, is unknown, or weighs nothing.</exception>
    public Formula Reexpress(string label, DoseReference reference) => WithDose(label, Express(label, reference));

    /// <summary>The same formula under another name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The formula.</returns>
    /// <exception cref="FormulaException">The name is blank.</exception>
    public Formula WithName(string name) => ToBuilder().Named(name).Build();

    /// <summary>The formula with another dose in one line.</summary>
    /// <param name="label">The label of an addition.</param>
    /// <param name="dose">The new dose.</param>
    /// <returns>The formula.</returns>
    /// <exception cref="ArgumentException">There is no such addition.</exception>
    /// <exception cref="FormulaException">The formula with that dose cannot be.</exception>
    public Formula WithDose(string label, Dose dose)
    {
        Guard.NotNull(dose);
        return Edit(label, additionsOnly: true, line => line with { Percent = dose.PercentByMass, Reference = dose.Reference });
    }

    /// <summary>The formula with other shares of the base.</summary>
    /// <param name="percentOf">The new share of a part, % by weight of the base, from its label; all shares must add up to 100 %.</param>
    /// <returns>The formula.</returns>
    /// <exception cref="FormulaException">The shares do not add up to 100 %, or one cannot be.</exception>
    public Formula WithShares(Func<string, double> percentOf)
    {
        Guard.NotNull(percentOf);
        FormulaBuilder builder = ToBuilder();
        for (int i = 0; i < builder.BaseLines.Count; i++)
        {
            builder.BaseLines[i] = builder.BaseLines[i] with { Percent = percentOf(builder.BaseLines[i].Label) };
        }

        return builder.Build();
    }

    /// <summary>The formula with another ingredient in one line; doses and carriers that refer to the line follow it.</summary>
    /// <param name="label">The label of the line.</param>
    /// <param name="ingredient">The new ingredient.</param>
    /// <returns>The formula.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    /// <exception cref="FormulaException">The formula with that ingredient cannot be.</exception>
    public Formula WithIngredient(string label, Ingredient ingredient)
    {
        Guard.NotNull(ingredient);
        return Edit(label, additionsOnly: false, line => line with { Ingredient = ingredient });
    }

    /// <summary>The formula without one line; a phase that is left empty goes too.</summary>
    /// <param name="label">The label of the line.</param>
    /// <returns>The formula.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    /// <exception cref="FormulaException">What is left cannot be: another line is dosed on it, or the base no longer adds up to 100 %.</exception>
    public Formula Without(string label)
    {
        FormulaLine line = Line(label);
        FormulaBuilder builder = ToBuilder();
        if (line.IsBase)
        {
            builder.BaseLines.RemoveAt(line.Index);
        }
        else
        {
            DraftPhase phase = builder.PhaseDrafts[line.PhaseIndex];
            phase.Lines.RemoveAll(l => l.Label == label);
            builder.PhaseDrafts.RemoveAll(p => p.Lines.Count == 0);
        }

        return builder.Build();
    }

    /// <summary>The formula with another process plan.</summary>
    /// <param name="process">The plan.</param>
    /// <returns>The formula.</returns>
    /// <exception cref="FormulaException">The plan names a carrier that is not a line.</exception>
    public Formula WithProcess(ProcessPlan process) => ToBuilder().Process(process).Build();

    /// <summary>The formula with another service plan.</summary>
    /// <param name="service">The plan.</param>
    /// <returns>The formula.</returns>
    public Formula WithService(ServicePlan service) => ToBuilder().Serve(service).Build();

    /// <summary>The formula with other data of an integrator's.</summary>
    /// <param name="extensions">The data; null to take it off.</param>
    /// <returns>The formula.</returns>
    public Formula WithExtensions(ExtensionData? extensions) => ToBuilder().WithExtensions(extensions).Build();

    /// <summary>Fills in the mass of every line for a base mass, in the order of <see cref="Lines"/>. Allocates nothing.</summary>
    /// <param name="baseMass">The mass of the base; not negative.</param>
    /// <param name="grams">Receives one mass in g a line.</param>
    /// <exception cref="ArgumentException">The span is shorter than <see cref="Lines"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative or not finite.</exception>
    public void MassesInto(Mass baseMass, Span<double> grams)
    {
        double baseGrams = Guard.Grams(baseMass);
        ReadOnlySpan<double> masses = Proportions.Masses;
        if (grams.Length < masses.Length)
        {
            throw new ArgumentException($"Needs room for {Numbers.Exact(masses.Length)} masses, but has {Numbers.Exact(grams.Length)}.", nameof(grams));
        }

        for (int i = 0; i < masses.Length; i++)
        {
            grams[i] = masses[i] * baseGrams;
        }
    }

    /// <inheritdoc/>
    public bool Equals(Formula? other) => other is not null
        && (ReferenceEquals(this, other)
            || (Name == other.Name && Base == other.Base && Phases == other.Phases && Process == other.Process && Service == other.Service
                && Equals(Extensions, other.Extensions)));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Formula);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((StringComparer.Ordinal.GetHashCode(Name) * 31 + Base.Parts.GetHashCode()) * 31 + Phases.GetHashCode());

    /// <summary>The name and the lines, one a line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Name + "\n" + string.Join("\n", Lines.Select(l => "  " + l));

    internal FormulaLine? FindLine(string label)
    {
        foreach (FormulaLine line in Lines.Span)
        {
            if (line.Label == label)
            {
                return line;
            }
        }

        return null;
    }

    internal string PointerOf(FormulaLine line)
    {
        if (line.IsBase)
        {
            return "/base/" + Numbers.Exact(line.Index);
        }

        int first = Base.Parts.Count;
        for (int p = 0; p < line.PhaseIndex; p++)
        {
            first += Phases[p].Additions.Count;
        }

        return $"/phases/{Numbers.Exact(line.PhaseIndex)}/add/{Numbers.Exact(line.Index - first)}";
    }

    private static ValueList<FormulaLine> Flatten(ValueList<BasePart> parts, ValueList<Phase> phases, int count)
    {
        var lines = new FormulaLine[count];
        int next = 0;
        foreach (BasePart part in parts.Span)
        {
            lines[next] = new FormulaLine(next, "base", part);
            next++;
        }

        for (int p = 0; p < phases.Count; p++)
        {
            foreach (Addition addition in phases[p].Additions.Span)
            {
                lines[next] = new FormulaLine(next, p, phases[p].Name, addition);
                next++;
            }
        }

        return ValueList<FormulaLine>.Own(lines);
    }

    private FormulaProblem? ProblemOf(FormulaLine line, DoseReference reference)
    {
        string pointer = PointerOf(line);
        if (reference.Kind == DoseReferenceKind.Line)
        {
            FormulaLine? other = FindLine(reference.Label!);
            if (other is null)
            {
                return new FormulaProblem("reference-unknown", pointer, $"'{reference.Label}' is not a line of the formula.", line.Label);
            }

            if (other.Index >= line.Index)
            {
                return new FormulaProblem("reference-later", pointer, $"'{reference.Label}' does not come before {line.Label}.", line.Label);
            }
        }

        if (line.IsBase && reference.Kind is DoseReferenceKind.Preceding or DoseReferenceKind.Water)
        {
            return new FormulaProblem("reference-empty", pointer, $"{line.Label} is part of the base: nothing comes before it.", line.Label, 0, 0);
        }

        double mass = Proportions.ReferenceMass(this, reference, line.PhaseIndex);
        return double.IsNaN(mass) ? new FormulaProblem("water-unknown", pointer, "The water content of a line before it is unknown.", line.Label)
            : mass > 0 ? null
            : new FormulaProblem("reference-empty", pointer, $"{reference} weighs nothing, and nothing has no percentages.", line.Label, mass, 0);
    }

    private Formula Edit(string label, bool additionsOnly, Func<DraftLine, DraftLine> change)
    {
        FormulaLine line = Line(label);
        if (additionsOnly && line.IsBase)
        {
            throw new ArgumentException($"'{label}' is a part of the base: change its share with WithShares.", nameof(label));
        }

        FormulaBuilder builder = ToBuilder();
        List<DraftLine> lines = line.IsBase ? builder.BaseLines : builder.PhaseDrafts[line.PhaseIndex].Lines;
        int index = lines.FindIndex(l => l.Label == label);
        lines[index] = change(lines[index]);
        string newLabel = lines[index].Label;
        if (newLabel != label)
        {
            Follow(builder, label, newLabel);
        }

        return builder.Build();
    }

    private void Follow(FormulaBuilder builder, string label, string newLabel)
    {
        foreach (DraftPhase phase in builder.PhaseDrafts)
        {
            for (int i = 0; i < phase.Lines.Count; i++)
            {
                if (phase.Lines[i].Reference.Label == label)
                {
                    phase.Lines[i] = phase.Lines[i] with { Reference = DoseReference.Line(newLabel) };
                }
            }
        }

        if (Process.Carriers.Contains(label))
        {
            builder.Process(Process with { Carriers = ValueList<string>.From(Process.Carriers.Select(c => c == label ? newLabel : c)) });
        }
    }
}
