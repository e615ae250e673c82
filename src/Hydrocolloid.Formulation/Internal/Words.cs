namespace Hydrocolloid.Formulation;

/// <summary>The kebab-case words that documents and texts use for the values of enums: closed sets, never numbers.</summary>
internal static class Words
{
    private static readonly string[] Textures = ["fluid-gel", "soft", "firm", "very-firm", "thickened", "modifier"];

    private static readonly string[] Allergens =
    [
        "gluten", "crustaceans", "eggs", "fish", "peanuts", "soybeans", "milk", "tree-nuts", "celery", "mustard", "sesame", "sulphites", "lupin", "molluscs",
    ];

    private static readonly string[] TanninLevels = ["none", "low", "moderate", "high"];

    private static readonly string[] SynergyEffects =
    [
        "gel", "firmer-gel", "more-elastic", "less-syneresis", "viscosity-synergy", "precipitation", "antagonism", "no-synergy", "softer-gel",
        "texture-tuning", "lower-melting", "less-drying", "stabilises", "hydration-aid", "delayed-set",
    ];

    private static readonly string[] Categories =
    [
        "water", "juice", "cordial", "fruit", "vegetable", "dairy", "plant-drink", "stock", "infusion", "alcohol", "vinegar", "condiment", "chocolate", "mineral", "sweetener",
        "acid", "salt", "fat", "egg", "protein", "hydrocolloid",
    ];

    private static readonly string[] TitratedAcids = ["citric", "malic", "tartaric", "lactic", "acetic", "oxalic", "succinic", "gluconic", "mixed"];

    private static readonly string[] Scales = ["bloom", "gel-strength", "sag"];

    private static readonly string[] TrialCurves = ["power-law", "line"];

    private static readonly string[] SyneresisClasses = ["unknown", "low", "moderate", "high"];

    private static readonly string[] AgentProperties =
    [
        "origin", "diets", "allergens", "texture", "doses", "lowest-dose", "grades", "dispersal", "hydration", "setting", "setting-time", "melting",
        "hysteresis", "heat-stability", "clarity", "flavour", "syneresis", "freeze-thaw", "acid", "ions", "salt", "calcium", "sugar", "alcohol",
        "proteins", "enzymes", "tannins", "viscosity", "limits", "sensitivities", "synergies", "cautions",
    ];

    private static readonly string[] Qualities = ["standard", "handbook", "paper", "dataset", "regulation", "bulletin", "teaching", "common-practice", "recalled", "estimate", "measured"];

    private static readonly string[] Severities = ["information", "caution", "conflict"];

    private static readonly string[] Forms = ["mix", "pieces"];

    private static readonly string[] Hows = ["measured", "computed", "estimated"];

    private static readonly string[] Bases = ["finished", "assembled", "base"];

    private static readonly string[] Audiences = ["general", "young-children", "infants", "dysphagia"];

    private static readonly string[] Markets = ["eu", "us"];

    private static readonly string[] Diets = ["vegan", "vegetarian", "halal", "kosher"];

    private static readonly string[] Shapes = ["spooned", "slice", "cube", "sphere", "mini-cup"];

    private static readonly string[] LimitedQuantities = ["ph", "ethanol", "soluble-solids", "calcium", "potassium", "sodium", "cations", "fat", "concentration", "temperature", "minutes", "alcohol-by-volume", "calcium-per-gram"];

    private static readonly string[] LimitStages = ["hydrating", "heated", "finished", "soaking", "beside-casein", "beside-anionic-gum"];

    private static readonly string[] Sensitivities = ["protease", "tannin", "casein", "fat", "freezing", "drying", "soaking", "weeping", "cloudiness", "shear", "warmth"];

    private static readonly string[] Harms = ["none", "notable", "weakens", "fails"];

    /// <summary>The categories of ingredients.</summary>
    public static string CategoryList => string.Join(", ", Categories);

    /// <summary>What an acidity may be expressed as.</summary>
    public static string TitratedAcidList => string.Join(", ", TitratedAcids);

    public static string TanninList => string.Join(", ", TanninLevels);

    public static bool IsCategory(string word) => Array.IndexOf(Categories, word) >= 0;

    public static bool IsTitratedAcid(string word) => Array.IndexOf(TitratedAcids, word) >= 0;

    /// <summary>The name of a value of an enum in kebab-case, for sets that are only written and never read.</summary>
    public static string Kebab(string name)
        => string.Concat(name.Select((c, i) => (i > 0 && char.IsUpper(c) ? "-" : "") + char.ToLowerInvariant(c)));

    public static string Of(LimitStage value) => LimitStages[(int)value];

    public static string Of(LimitedQuantity value) => LimitedQuantities[(int)value];

    public static string Of(SensitiveTo value) => Sensitivities[(int)value];

    public static string Of(Harm value) => Harms[(int)value];

    private static readonly string[] MouldForms = ["sphere", "hemisphere", "cylinder", "frustum", "block", "tapered-block", "half-cylinder"];

    public static string Of(MouldForm value) => MouldForms[(int)value];

    private static readonly string[] Symptoms =
    [
        "did-not-set", "too-soft", "too-firm", "weeping", "cloudy", "lumps", "grainy", "bubbles", "set-too-early", "melted-at-service", "tough-skin",
        "pieces-moved", "broke", "off-taste-or-colour", "spheres-solid", "spheres-burst",
    ];

    private static readonly string[] Standings = ["shown", "open", "unlikely"];

    public static string Of(Symptom value) => Symptoms[(int)value];

    public static string Of(CauseStanding value) => Standings[(int)value];

    public static string Of(Audience value) => Audiences[(int)value];

    public static string Of(Market value) => Markets[(int)value];

    public static string Of(Diet value) => Diets[(int)value];

    public static string Of(PortionShape value) => Shapes[(int)value];

    public static string Of(Texture value) => Textures[(int)value];

    public static string Of(Allergen value) => Allergens[(int)value];

    public static string Of(GradeScale value) => Scales[(int)value];

    public static string Of(Gelation.TrialCurve value) => TrialCurves[(int)value];

    public static string Of(Choosing.SyneresisClass value) => SyneresisClasses[(int)value];

    public static string Of(Choosing.AgentProperty value) => AgentProperties[(int)value];

    public static string Of(CitationQuality value) => Qualities[(int)value];

    public static string Of(Severity value) => Severities[(int)value];

    public static string Of(SynergyEffect value) => SynergyEffects[(int)value];

    public static string Of(LineForm value) => Forms[(int)value];

    public static string Of(ReckonedHow value) => Hows[(int)value];

    public static string Of(YieldBasis value) => Bases[(int)value];

    public static bool TryTrialCurve(string? word, out Gelation.TrialCurve value)
    {
        bool found = Find(TrialCurves, word, out int index);
        value = (Gelation.TrialCurve)index;
        return found;
    }

    public static bool TryTexture(string? word, out Texture value)
    {
        bool found = Find(Textures, word, out int index);
        value = (Texture)index;
        return found;
    }

    public static bool TryAllergen(string? word, out Allergen value)
    {
        bool found = Find(Allergens, word, out int index);
        value = (Allergen)index;
        return found;
    }

    public static string Of(TanninLevel value) => TanninLevels[(int)value];

    public static bool TryTanninLevel(string? word, out TanninLevel value)
    {
        bool found = Find(TanninLevels, word, out int index);
        value = (TanninLevel)index;
        return found;
    }

    public static bool TrySynergyEffect(string? word, out SynergyEffect value)
    {
        bool found = Find(SynergyEffects, word, out int index);
        value = (SynergyEffect)index;
        return found;
    }

    public static bool TryScale(string? word, out GradeScale value)
    {
        bool found = Find(Scales, word, out int index);
        value = (GradeScale)index;
        return found;
    }

    public static bool TryForm(string? word, out LineForm value)
    {
        bool found = Find(Forms, word, out int index);
        value = (LineForm)index;
        return found;
    }

    public static bool TryAudience(string? word, out Audience value)
    {
        bool found = Find(Audiences, word, out int index);
        value = (Audience)index;
        return found;
    }

    public static bool TryMarket(string? word, out Market value)
    {
        bool found = Find(Markets, word, out int index);
        value = (Market)index;
        return found;
    }

    public static bool TryDiet(string? word, out Diet value)
    {
        bool found = Find(Diets, word, out int index);
        value = (Diet)index;
        return found;
    }

    public static bool TryPortionShape(string? word, out PortionShape value)
    {
        bool found = Find(Shapes, word, out int index);
        value = (PortionShape)index;
        return found;
    }

    public static bool TryLimitedQuantity(string? word, out LimitedQuantity value)
    {
        bool found = Find(LimitedQuantities, word, out int index);
        value = (LimitedQuantity)index;
        return found;
    }

    public static bool TryLimitStage(string? word, out LimitStage value)
    {
        bool found = Find(LimitStages, word, out int index);
        value = (LimitStage)index;
        return found;
    }

    public static bool TrySensitiveTo(string? word, out SensitiveTo value)
    {
        bool found = Find(Sensitivities, word, out int index);
        value = (SensitiveTo)index;
        return found;
    }

    public static bool TryHarm(string? word, out Harm value)
    {
        bool found = Find(Harms, word, out int index);
        value = (Harm)index;
        return found;
    }

    public static bool TryMouldForm(string? word, out MouldForm value)
    {
        bool found = Find(MouldForms, word, out int index);
        value = (MouldForm)index;
        return found;
    }

    public static string MouldFormList => string.Join(", ", MouldForms);

    public static bool TrySymptom(string? word, out Symptom value)
    {
        bool found = Find(Symptoms, word, out int index);
        value = (Symptom)index;
        return found;
    }

    public static string SymptomList => string.Join(", ", Symptoms);

    public static string TrialCurveList => string.Join(", ", TrialCurves);

    public static string TextureList => string.Join(", ", Textures);

    public static string AllergenList => string.Join(", ", Allergens);

    public static string ScaleList => string.Join(", ", Scales);

    public static string FormList => string.Join(", ", Forms);

    public static string AudienceList => string.Join(", ", Audiences);

    public static string MarketList => string.Join(", ", Markets);

    public static string DietList => string.Join(", ", Diets);

    public static string ShapeList => string.Join(", ", Shapes);

    private static bool Find(string[] words, string? word, out int index)
    {
        index = word is null ? -1 : Array.IndexOf(words, word);
        bool found = index >= 0;
        index = Math.Max(index, 0);
        return found;
    }
}
