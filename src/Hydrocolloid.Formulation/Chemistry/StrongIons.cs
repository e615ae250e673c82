using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// Ions that take no part in acid–base reactions. Unit: mol per kg of liquid. The default value holds none. Equal by content.
/// Calcium and magnesium are totals: what the acids bind of them is worked out by the solver.
/// </summary>
public readonly record struct StrongIons
{
    private readonly double _sodium, _potassium, _calcium, _magnesium, _chloride, _sulphate, _otherCharge;

    private StrongIons(double sodium, double potassium, double calcium, double magnesium, double chloride, double sulphate, double otherCharge)
    {
        _sodium = sodium;
        _potassium = potassium;
        _calcium = calcium;
        _magnesium = magnesium;
        _chloride = chloride;
        _sulphate = sulphate;
        _otherCharge = otherCharge;
    }

    /// <summary>Sodium, 0 to 100; the unit is mol/kg.</summary>
    public double SodiumMolPerKg { get => _sodium; init => _sodium = Guard.InRange(value, 0, 100, "mol/kg", nameof(SodiumMolPerKg)); }

    /// <summary>Potassium, 0 to 100; the unit is mol/kg.</summary>
    public double PotassiumMolPerKg { get => _potassium; init => _potassium = Guard.InRange(value, 0, 100, "mol/kg", nameof(PotassiumMolPerKg)); }

    /// <summary>Calcium in all its forms, 0 to 100; the unit is mol/kg.</summary>
    public double CalciumMolPerKg { get => _calcium; init => _calcium = Guard.InRange(value, 0, 100, "mol/kg", nameof(CalciumMolPerKg)); }

    /// <summary>Magnesium in all its forms, 0 to 100; the unit is mol/kg.</summary>
    public double MagnesiumMolPerKg { get => _magnesium; init => _magnesium = Guard.InRange(value, 0, 100, "mol/kg", nameof(MagnesiumMolPerKg)); }

    /// <summary>Chloride, 0 to 100; the unit is mol/kg.</summary>
    public double ChlorideMolPerKg { get => _chloride; init => _chloride = Guard.InRange(value, 0, 100, "mol/kg", nameof(ChlorideMolPerKg)); }

    /// <summary>Sulphate in all its forms, 0 to 100; the unit is mol/kg.</summary>
    public double SulphateMolPerKg { get => _sulphate; init => _sulphate = Guard.InRange(value, 0, 100, "mol/kg", nameof(SulphateMolPerKg)); }

    /// <summary>Charge of all other strong ions together, taken as ions of charge 1, -100 to 100; the unit is mol of charge per kg.</summary>
    public double OtherChargeMolPerKg { get => _otherCharge; init => _otherCharge = Guard.InRange(value, -100, 100, "mol/kg", nameof(OtherChargeMolPerKg)); }

    /// <summary>Strong cations less strong anions, by charge; the unit is mol of charge per kg.</summary>
    public double DifferenceMolPerKg
        => _sodium + _potassium + (2 * _calcium) + (2 * _magnesium) - _chloride - (2 * _sulphate) + _otherCharge;

    /// <summary>The ions in another unit; what a little water holds may be more than a liquid can.</summary>
    internal StrongIons Times(double factor) => new(_sodium * factor, _potassium * factor, _calcium * factor, _magnesium * factor, _chloride * factor, _sulphate * factor, _otherCharge * factor);

    internal StrongIons Plus(StrongIons other, double factor) => new()
    {
        SodiumMolPerKg = _sodium + (factor * other._sodium),
        PotassiumMolPerKg = _potassium + (factor * other._potassium),
        CalciumMolPerKg = _calcium + (factor * other._calcium),
        MagnesiumMolPerKg = _magnesium + (factor * other._magnesium),
        ChlorideMolPerKg = _chloride + (factor * other._chloride),
        SulphateMolPerKg = _sulphate + (factor * other._sulphate),
        OtherChargeMolPerKg = _otherCharge + (factor * other._otherCharge),
    };
}
