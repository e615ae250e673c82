namespace Hydrocolloid.Formulation;

/// <summary>Who eats the gel.</summary>
public enum Audience
{
    /// <summary>Anyone.</summary>
    General,

    /// <summary>Young children, who choke on firm small pieces.</summary>
    YoungChildren,

    /// <summary>Infants: the library gives no advice for them.</summary>
    Infants,

    /// <summary>People with a swallowing disorder: only a licensed clinician sets their diet, and the library gives no advice for it.</summary>
    Dysphagia,
}
