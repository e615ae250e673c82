using System.Reflection;
using Hydrocolloid.Formulation.Chemistry;

namespace Hydrocolloid.Formulation.Tests.Chemistry;

public class ReagentTests
{
    internal static Reagent[] All { get; } = [.. typeof(Reagents).GetProperties(BindingFlags.Public | BindingFlags.Static).Select(p => (Reagent)p.GetValue(null)!)];

    private static readonly Dictionary<string, double> s_weights = new(StringComparer.Ordinal)
    {
        ["H"] = 1.008,
        ["C"] = 12.011,
        ["O"] = 15.999,
        ["Na"] = 22.990,
        ["Mg"] = 24.305,
        ["P"] = 30.974,
        ["S"] = 32.06,
        ["Cl"] = 35.45,
        ["K"] = 39.098,
        ["Ca"] = 40.078,
    };

    [Fact]
    public void Every_reagent_is_neutral()
        // Strong ions against the protons that its acids lack: a salt written without error gives a whole number of them, and no acid gives any away twice.
        => All.Where(r => Math.Abs(ProtonsOf(r)) > 1e-9).Should().BeEmpty();

    [Fact]
    public void Molar_masses_are_those_of_the_formulas()
        => All.Where(r => Math.Abs(MassOf(r.MolecularFormula) - r.MolarMassGramsPerMol) > 0.01).Select(r => $"{r.MolecularFormula}: {MassOf(r.MolecularFormula)}").Should().BeEmpty();

    [Fact]
    public void Acids_have_the_mass_of_their_formula()
        => Acids.All.Where(a => a != Acids.Boric && Math.Abs(MassOf(a.MolecularFormula) - a.MolarMassGramsPerMol) > 0.01).Should().BeEmpty();

    // Hydrogen by mass balance: M less every other atom and less the water, less what the acids would bring, plus the charge of the ions.
    private static double ProtonsOf(Reagent reagent)
    {
        double ofAcids = (reagent.AcidMolPerKg * (reagent.Acid?.MolarMassGramsPerMol ?? 0)) + (reagent.SecondAcidMolPerKg * (reagent.SecondAcid?.MolarMassGramsPerMol ?? 0));
        StrongIons ions = reagent.IonsPerKg;
        double ofIons = (ions.SodiumMolPerKg * 22.990) + (ions.PotassiumMolPerKg * 39.098) + (ions.CalciumMolPerKg * 40.078)
            + (ions.MagnesiumMolPerKg * 24.305) + (ions.ChlorideMolPerKg * 35.45) + (ions.SulphateMolPerKg * 96.06);
        double balance = 1000 - ofAcids - ofIons - (reagent.WaterShare * 1000) + (ions.DifferenceMolPerKg * 1.008);
        return Math.Abs(balance) < 0.15 ? 0 : balance;
    }

    private static double MassOf(string formula)
    {
        double sum = 0;
        foreach (string part in formula.Split('.'))
        {
            int i = 0;
            double count = Number(part, ref i);
            sum += count * Group(part, ref i);
        }

        return sum;
    }

    private static double Group(string text, ref int i)
    {
        double sum = 0;
        while (i < text.Length && text[i] != ')')
        {
            double mass;
            if (text[i] == '(')
            {
                i++;
                mass = Group(text, ref i);
                i++;
            }
            else
            {
                int length = i + 1 < text.Length && char.IsLower(text[i + 1]) ? 2 : 1;
                mass = s_weights[text.Substring(i, length)];
                i += length;
            }

            sum += mass * Number(text, ref i);
        }

        return sum;
    }

    private static double Number(string text, ref int i)
    {
        int start = i;
        while (i < text.Length && char.IsDigit(text[i]))
        {
            i++;
        }

        return i == start ? 1 : int.Parse(text[start..i], System.Globalization.CultureInfo.InvariantCulture);
    }
}
