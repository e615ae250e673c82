using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>
/// Builds a formula in the order of the kitchen: the base, then phase after phase. Mutable, not thread-safe.
/// It stays usable after <see cref="Build"/>; later calls leave what was built alone.
/// </summary>
public sealed class FormulaBuilder
{
    private readonly List<DraftLine> _base = [];
    private readonly List<DraftPhase> _phases = [];
    private string _name;
    private ProcessPlan _process = ProcessPlan.None;
    private ServicePlan _service = ServicePlan.None;
    private ExtensionData? _extensions;

    internal FormulaBuilder(string name) => _name = name;

    internal FormulaBuilder(Formula formula)
    {
        _name = formula.Name;
        _process = formula.Process;
        _service = formula.Service;
        _extensions = formula.Extensions;
        foreach (BasePart part in formula.Base.Parts)
        {
            _base.Add(new DraftLine(part.Ingredient, part.PercentOfBase, null, DoseReference.Base, part.Details));
        }

        foreach (Phase phase in formula.Phases)
        {
            var draft = new DraftPhase(phase.Name);
            foreach (Addition addition in phase.Additions)
            {
                draft.Lines.Add(new DraftLine(addition.Ingredient, addition.Dose.PercentByMass, null, addition.Dose.Reference, addition.Details));
            }

            _phases.Add(draft);
        }
    }

    internal List<DraftLine> BaseLines => _base;

    internal List<DraftPhase> PhaseDrafts => _phases;

    /// <summary>Changes the name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>This builder.</returns>
    public FormulaBuilder Named(string name)
    {
        _name = Guard.NotNull(name);
        return this;
    }

    /// <summary>Adds parts to the base phase.</summary>
    /// <param name="parts">Adds the parts.</param>
    /// <returns>This builder.</returns>
    public FormulaBuilder Base(Action<BaseBuilder> parts)
    {
        Guard.NotNull(parts)(new BaseBuilder(_base));
        return this;
    }

    /// <summary>Adds a phase after those already there. All its lines see the same preceding mix.</summary>
    /// <param name="phase">The name of the phase, unique in the formula.</param>
    /// <param name="additions">Adds the lines.</param>
    /// <returns>This builder.</returns>
    public FormulaBuilder Then(string phase, Action<PhaseBuilder> additions)
    {
        var draft = new DraftPhase(Guard.NotNull(phase));
        Guard.NotNull(additions)(new PhaseBuilder(draft));
        _phases.Add(draft);
        return this;
    }

    /// <summary>Says how the formula is to be worked.</summary>
    /// <param name="process">The plan.</param>
    /// <returns>This builder.</returns>
    public FormulaBuilder Process(ProcessPlan process)
    {
        _process = Guard.NotNull(process);
        return this;
    }

    /// <summary>Says how the gel is to be served.</summary>
    /// <param name="service">The plan.</param>
    /// <returns>This builder.</returns>
    public FormulaBuilder Serve(ServicePlan service)
    {
        _service = Guard.NotNull(service);
        return this;
    }

    /// <summary>Attaches an integrator's own data.</summary>
    /// <param name="extensions">The data; null to take it off.</param>
    /// <returns>This builder.</returns>
    public FormulaBuilder WithExtensions(ExtensionData? extensions)
    {
        _extensions = extensions;
        return this;
    }

    /// <summary>Builds the formula.</summary>
    /// <returns>The formula.</returns>
    /// <exception cref="FormulaException">The formula cannot be; the exception lists every problem.</exception>
    public Formula Build()
    {
        (Formula? formula, ValueList<FormulaProblem> problems) = Solve();
        return formula ?? throw new FormulaException($"The formula '{_name}'", problems);
    }

    /// <summary>Builds the formula without throwing.</summary>
    /// <param name="formula">The formula; null if it cannot be.</param>
    /// <param name="problems">Every problem; empty if there is none.</param>
    /// <returns>Whether the formula could be built.</returns>
    public bool TryBuild([System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out Formula? formula, out ValueList<FormulaProblem> problems)
    {
        (formula, problems) = Solve();
        return formula is not null;
    }

    private (Formula? Formula, ValueList<FormulaProblem> Problems) Solve()
        => FormulaSolver.Solve(_name, _base, _phases, _process, _service, _extensions);
}
