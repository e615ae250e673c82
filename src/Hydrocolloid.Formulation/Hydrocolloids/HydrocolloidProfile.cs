namespace Hydrocolloid.Formulation;

/// <summary>What is known of a hydrocolloid, each figure with its source. Immutable, equal by content.</summary>
public sealed record HydrocolloidProfile
{
    internal HydrocolloidProfile(
        HydrocolloidRole role,
        ValueList<DoseWindow> doseWindows,
        ValueList<PublishedDose> publishedDoses,
        Cited<NumberRange>? minimumGellingPercent,
        Dispersal dispersal,
        HydrationProtocol hydration,
        SettingBehaviour setting,
        MeltingBehaviour melting,
        PhLimits? ph,
        StrengthScale? strength,
        ValueList<AgentLimit> limits,
        ValueList<AgentSensitivity> sensitivities,
        ValueList<AgentFact> facts)
    {
        Role = role;
        DoseWindows = doseWindows;
        PublishedDoses = publishedDoses;
        MinimumGellingPercent = minimumGellingPercent;
        Dispersal = dispersal;
        Hydration = hydration;
        Setting = setting;
        Melting = melting;
        Ph = ph;
        Strength = strength;
        Limits = limits;
        Sensitivities = sensitivities;
        Facts = facts;
    }

    /// <summary>What it does alone in water.</summary>
    public HydrocolloidRole Role { get; }

    /// <summary>The working doses by texture.</summary>
    public ValueList<DoseWindow> DoseWindows { get; }

    /// <summary>Published doses that belong to none of the working windows.</summary>
    public ValueList<PublishedDose> PublishedDoses { get; }

    /// <summary>The lowest dose that gels, % by weight of the continuous mix; null for a thickener.</summary>
    public Cited<NumberRange>? MinimumGellingPercent { get; }

    /// <summary>How it is brought into the liquid.</summary>
    public Dispersal Dispersal { get; }

    /// <summary>What it needs to dissolve.</summary>
    public HydrationProtocol Hydration { get; }

    /// <summary>How it sets.</summary>
    public SettingBehaviour Setting { get; }

    /// <summary>How the gel melts.</summary>
    public MeltingBehaviour Melting { get; }

    /// <summary>The pH the gel stands; null if not stated.</summary>
    public PhLimits? Ph { get; }

    /// <summary>How producers state its strength; null if not stated.</summary>
    public StrengthScale? Strength { get; }

    /// <summary>The ranges it must be kept in.</summary>
    public ValueList<AgentLimit> Limits { get; }

    /// <summary>What harms it, and what is wrongly said to.</summary>
    public ValueList<AgentSensitivity> Sensitivities { get; }

    /// <summary>Further facts by topic.</summary>
    public ValueList<AgentFact> Facts { get; }

    /// <summary>The working doses for a texture; null if there are none.</summary>
    /// <param name="texture">The texture.</param>
    /// <returns>The window, or null.</returns>
    public DoseWindow? WindowFor(Texture texture)
    {
        foreach (DoseWindow window in DoseWindows.Span)
        {
            if (window.Texture == texture)
            {
                return window;
            }
        }

        return null;
    }

    internal AgentSensitivity? SensitivityTo(SensitiveTo what)
    {
        foreach (AgentSensitivity sensitivity in Sensitivities.Span)
        {
            if (sensitivity.To == what)
            {
                return sensitivity;
            }
        }

        return null;
    }
}
