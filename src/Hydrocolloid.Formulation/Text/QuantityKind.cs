namespace Hydrocolloid.Formulation.Text;

/// <summary>What a unit measures. A unit text is only ever read against one kind, so "C" as a reading and "C" as a difference cannot be mixed up.</summary>
public enum QuantityKind
{
    /// <summary>Mass; base unit g, 0 to 1e9 g.</summary>
    Mass,

    /// <summary>Volume; base unit mL, 0 to 1e9 mL.</summary>
    Volume,

    /// <summary>A temperature reading; base unit °C, -273.15 to 1000 °C.</summary>
    Temperature,

    /// <summary>A difference between two temperature readings; base unit K, -1000 to 1000 K.</summary>
    TemperatureDifference,

    /// <summary>A length of time; base unit s, 0 to 1e9 s.</summary>
    Duration,

    /// <summary>A length, or a height above sea level; base unit m, -1e6 to 1e6 m.</summary>
    Length,

    /// <summary>Absolute pressure; base unit Pa, 0 to 1e9 Pa.</summary>
    Pressure,

    /// <summary>Density; base unit kg/m³, 0 to 30 000 kg/m³.</summary>
    Density,

    /// <summary>Parts per hundred of a reference stated elsewhere; base unit %, 0 to 1e6 %.</summary>
    Percent,
}
