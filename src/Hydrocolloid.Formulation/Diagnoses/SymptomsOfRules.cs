namespace Hydrocolloid.Formulation;

/// <summary>What the trouble that a rule sees looks like in the batch, with how strongly it explains each symptom.</summary>
internal static class SymptomsOfRules
{
    private static readonly Dictionary<string, (Symptom Symptom, double Weight)[]> s_symptoms = new(StringComparer.Ordinal)
    {
        ["decimal-slip"] = [(Symptom.DidNotSet, 1), (Symptom.TooSoft, 1), (Symptom.TooFirm, 1), (Symptom.Lumps, 0.5)],
        ["dose-under-gelling-minimum"] = [(Symptom.DidNotSet, 1), (Symptom.TooSoft, 1), (Symptom.Broke, 0.9)],
        ["dose-outside-window"] = [(Symptom.TooSoft, 0.9), (Symptom.TooFirm, 0.9), (Symptom.Weeping, 0.6), (Symptom.Broke, 0.7)],
        ["low-dose-margin"] = [(Symptom.DidNotSet, 0.6), (Symptom.TooSoft, 0.7)],
        ["too-thick-to-hydrate"] = [(Symptom.Lumps, 1), (Symptom.TooSoft, 0.6), (Symptom.DidNotSet, 0.6)],
        ["concentrated-by-evaporation"] = [(Symptom.TooFirm, 1)],
        ["dose-counts-on-water"] = [(Symptom.TooFirm, 0.9)],
        ["ph-while-heated"] = [(Symptom.DidNotSet, 0.8), (Symptom.TooSoft, 0.9), (Symptom.Weeping, 0.4)],
        ["ph-while-hydrating"] = [(Symptom.DidNotSet, 0.8), (Symptom.Lumps, 0.7), (Symptom.Grainy, 0.6)],
        ["ph-of-the-gel"] = [(Symptom.DidNotSet, 0.9), (Symptom.TooSoft, 0.9), (Symptom.Weeping, 0.6), (Symptom.Grainy, 0.6), (Symptom.SpheresBurst, 1)],
        ["gelatin-at-isoelectric-point"] = [(Symptom.Cloudy, 1), (Symptom.TooSoft, 0.5)],
        ["calcium-while-hydrating"] = [(Symptom.DidNotSet, 0.8), (Symptom.Grainy, 1), (Symptom.Lumps, 0.9), (Symptom.Cloudy, 0.8), (Symptom.SetTooEarly, 0.9), (Symptom.TooSoft, 0.7)],
        ["gelling-ions-missing"] = [(Symptom.DidNotSet, 1), (Symptom.TooSoft, 0.9)],
        ["calcium-missing"] = [(Symptom.DidNotSet, 1), (Symptom.TooSoft, 0.9)],
        ["potassium-missing"] = [(Symptom.DidNotSet, 1), (Symptom.TooSoft, 0.9)],
        ["salts-missing"] = [(Symptom.DidNotSet, 1), (Symptom.TooSoft, 0.9)],
        ["too-much-calcium"] = [(Symptom.Grainy, 1), (Symptom.Weeping, 0.9), (Symptom.Broke, 0.6)],
        ["too-much-calcium-for-dose"] = [(Symptom.Grainy, 1), (Symptom.Weeping, 0.9), (Symptom.Lumps, 0.7)],
        ["too-much-potassium"] = [(Symptom.Broke, 0.8), (Symptom.Weeping, 0.8), (Symptom.OffTasteOrColour, 1)],
        ["salt-while-hydrating"] = [(Symptom.TooSoft, 0.7), (Symptom.DidNotSet, 0.6), (Symptom.Lumps, 0.7)],
        ["beyond-solubility"] = [(Symptom.Grainy, 1), (Symptom.TooSoft, 0.5)],
        ["alcohol-while-hydrating"] = [(Symptom.DidNotSet, 0.9), (Symptom.TooSoft, 0.8), (Symptom.Lumps, 0.8)],
        ["alcohol-boils-too-low"] = [(Symptom.DidNotSet, 0.9), (Symptom.TooSoft, 0.8)],
        ["ethanol-in-the-gel"] = [(Symptom.TooSoft, 0.8), (Symptom.SpheresBurst, 0.8)],
        ["alcohol-in-the-gel"] = [(Symptom.DidNotSet, 0.9), (Symptom.TooSoft, 0.8), (Symptom.Cloudy, 0.5)],
        ["solids-while-hydrating"] = [(Symptom.Lumps, 0.9), (Symptom.TooSoft, 0.8), (Symptom.DidNotSet, 0.7)],
        ["solids-of-the-gel"] = [(Symptom.DidNotSet, 0.9), (Symptom.TooSoft, 0.8), (Symptom.Broke, 0.5)],
        ["protease-cuts-protein"] = [(Symptom.DidNotSet, 1), (Symptom.TooSoft, 0.9)],
        ["tannin-weakens"] = [(Symptom.TooSoft, 0.7), (Symptom.DidNotSet, 0.5), (Symptom.Cloudy, 0.7)],
        ["hydration-temperature"] = [(Symptom.DidNotSet, 1), (Symptom.TooSoft, 1), (Symptom.Lumps, 0.8), (Symptom.Grainy, 0.5)],
        ["boils-too-cool"] = [(Symptom.DidNotSet, 0.9), (Symptom.TooSoft, 0.9), (Symptom.Lumps, 0.7)],
        ["held-hot-too-long"] = [(Symptom.TooSoft, 0.9), (Symptom.DidNotSet, 0.6)],
        ["soak-water-too-warm"] = [(Symptom.DidNotSet, 1), (Symptom.TooSoft, 1)],
        ["joined-too-cold"] = [(Symptom.SetTooEarly, 1), (Symptom.Grainy, 0.9), (Symptom.TooSoft, 0.8), (Symptom.DidNotSet, 0.8), (Symptom.Lumps, 0.7)],
        ["cast-too-cool"] = [(Symptom.SetTooEarly, 1), (Symptom.Grainy, 0.6), (Symptom.Broke, 0.6)],
        ["served-outside-its-temperature"] = [(Symptom.MeltedAtService, 1)],
        ["warm-holding"] = [(Symptom.MeltedAtService, 0.5)],
        ["drying-uncovered"] = [(Symptom.ToughSkin, 1), (Symptom.TooFirm, 0.5)],
        ["freezing-and-thawing"] = [(Symptom.Weeping, 1), (Symptom.TooSoft, 0.5), (Symptom.Grainy, 0.4)],
    };

    /// <summary>How strongly the trouble explains a symptom, 0 to 1; 0 if it does not.</summary>
    public static double Weight(string ruleId, Symptom symptom)
        => s_symptoms.TryGetValue(ruleId, out (Symptom Symptom, double Weight)[]? symptoms)
            ? symptoms.Where(s => s.Symptom == symptom).Select(s => s.Weight).FirstOrDefault() : 0;

    public static IEnumerable<string> Rules => s_symptoms.Keys;
}
