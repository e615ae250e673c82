namespace Hydrocolloid.Formulation;

/// <summary>How a hydrocolloid is brought into a liquid without lumps.</summary>
/// <param name="Medium">In what to disperse it; the first fact is the rule.</param>
/// <param name="SugarPartsPerPart">Parts of dry sugar to blend with one part of the agent, by weight; null if not stated.</param>
/// <param name="LumpsAbove">Liquid warmer than this makes it lump; null if not stated.</param>
/// <param name="SoakWaterPartsPerPart">Parts of cold water to swell one part of the agent in, by weight, for agents that are soaked first; null for others.</param>
/// <param name="Slurry">Carriers in which it does not swell, and other ways.</param>
/// <param name="Shear">How to stir while dispersing.</param>
public sealed record Dispersal(
    ValueList<Cited<string>> Medium,
    Cited<NumberRange>? SugarPartsPerPart,
    Cited<TemperatureRange>? LumpsAbove,
    Cited<NumberRange>? SoakWaterPartsPerPart,
    ValueList<Cited<string>> Slurry,
    ValueList<Cited<string>> Shear);
