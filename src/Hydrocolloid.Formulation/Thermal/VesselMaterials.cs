using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>Specific heat of what bowls and moulds are made of, near room temperature.</summary>
public static class VesselMaterials
{
    private static readonly Source s_textbook = new("heat-transfer-textbooks", "Standard tables of heat-transfer textbooks", SourceKind.Handbook);
    private static readonly Source s_calorimetry = new("calorimetry-problem", "Solved calorimetry problem: an aluminium block in water in an insulating cup", SourceKind.Teaching, year: "2019");

    /// <summary>Stainless steel, 0.46 kJ/(kg·K).</summary>
    public static Cited<SpecificEntropy> StainlessSteel { get; } = Of(0.46, new Citation(s_textbook, basis: CitationBasis.Recalled));

    /// <summary>Aluminium, 0.90 kJ/(kg·K).</summary>
    public static Cited<SpecificEntropy> Aluminium { get; } = Of(0.9, new Citation(s_calorimetry));

    /// <summary>Copper, 0.385 kJ/(kg·K).</summary>
    public static Cited<SpecificEntropy> Copper { get; } = Of(0.385, new Citation(s_textbook, basis: CitationBasis.Recalled));

    /// <summary>Glass, 0.84 kJ/(kg·K).</summary>
    public static Cited<SpecificEntropy> Glass { get; } = Of(0.84, new Citation(s_textbook, basis: CitationBasis.Recalled));

    /// <summary>Porcelain, 1.07 kJ/(kg·K).</summary>
    public static Cited<SpecificEntropy> Porcelain { get; } = Of(1.07, new Citation(s_textbook, basis: CitationBasis.Recalled));

    private static Cited<SpecificEntropy> Of(double kilojoules, Citation citation) => new(SpecificEntropy.FromKilojoulesPerKilogramKelvin(kilojoules), citation);
}
