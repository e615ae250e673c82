using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// An acid of food, or of a buffer that checks the calculation: molar mass and dissociation constants at 25 °C and zero ionic strength.
/// Immutable; the named ones of <see cref="Acids"/> are all there are.
/// </summary>
public sealed class Acid
{
    internal Acid(int index, string name, string formula, double molarMass, int titrated, int charge, Cited<double>[] pKa, params Complex[] complexes)
    {
        Index = index;
        Name = name;
        MolecularFormula = formula;
        MolarMassGramsPerMol = molarMass;
        TitratedProtons = titrated;
        Charge = charge;
        PKa = ValueList<Cited<double>>.From(pKa);
        Complexes = complexes;
        LogFormation = new double[pKa.Length + 1];
        Formation = new double[pKa.Length + 1];
        for (int h = 0; h <= pKa.Length; h++)
        {
            LogFormation[h] = h == 0 ? 0 : LogFormation[h - 1] + pKa[pKa.Length - h].Value;
            Formation[h] = Math.Pow(10, LogFormation[h]);
        }
    }

    /// <summary>Name, such as <c>citric acid</c>.</summary>
    public string Name { get; }

    /// <summary>Formula of the anhydrous acid.</summary>
    public string MolecularFormula { get; }

    /// <summary>Molar mass of the anhydrous acid in g/mol, from the standard atomic weights [recalled]. Unit: g/mol.</summary>
    public double MolarMassGramsPerMol { get; }

    /// <summary>How many protons a titration to pH 8.1 counts.</summary>
    public int TitratedProtons { get; }

    /// <summary>Grams of acid that one mole of titrated protons stands for. Unit: g/mol.</summary>
    public double EquivalentMassGramsPerMol => MolarMassGramsPerMol / TitratedProtons;

    /// <summary>The pKa of each step at 25 °C and zero ionic strength, first step first, each with its source.</summary>
    public ValueList<Cited<double>> PKa { get; }

    internal int Index { get; }

    /// <summary>Charge of the form without protons.</summary>
    internal int Charge { get; }

    /// <summary>Complexes with calcium and magnesium.</summary>
    internal Complex[] Complexes { get; }

    /// <summary>log β of the form with h protons, from the form without.</summary>
    internal double[] LogFormation { get; }

    internal double[] Formation { get; }

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
