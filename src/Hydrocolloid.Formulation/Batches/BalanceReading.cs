using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>What to weigh on which balance. Immutable, equal by content.</summary>
public sealed record BalanceReading
{
    /// <summary>More goes than this is no weighing.</summary>
    internal const int MostGoes = 100;

    internal BalanceReading(Balance balance, double grams, int goes, double uncertaintyGrams)
    {
        Balance = balance;
        Grams = grams;
        Goes = goes;
        UncertaintyGrams = uncertaintyGrams;
    }

    /// <summary>The balance.</summary>
    public Balance Balance { get; }

    /// <summary>What it shall show, all goes together.</summary>
    public Mass Shown => Mass.FromGrams(Grams);

    /// <summary>In how many goes: more than one where the mass is above the capacity.</summary>
    public int Goes { get; }

    /// <summary>How far the reading may be off by the rule of the plan, either way.</summary>
    public Mass Uncertainty => Mass.FromGrams(UncertaintyGrams);

    /// <summary>The error that the class of the balance permits in service, either way, all goes together; null if its class is not known.</summary>
    public Mass? PermissibleError
        => Balance.PermissibleError(Mass.FromGrams(Math.Min(Grams / Goes, Balance.CapacityGrams)), inService: true) is { } each ? Mass.FromGrams(each.Grams * Goes) : null;

    internal double Grams { get; }

    internal double UncertaintyGrams { get; }

    /// <summary>The mass and the balance.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => $"{Numbers.Significant(Grams, 8)} g ({(Goes > 1 ? $"in {Numbers.Exact(Goes)} goes, " : "")}{Numbers.Significant(Balance.DivisionGrams, 6)} g steps)";

    internal BalanceReading At(double grams) => new(Balance, grams, Goes, UncertaintyGrams);
}
