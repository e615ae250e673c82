using Hydrocolloid.Formulation.Catalogues;

namespace Hydrocolloid.Formulation;

/// <summary>The built-in hydrocolloids by name. Each is an <see cref="Ingredient"/> whose <see cref="Ingredient.Profile"/> says how it is worked.</summary>
public static class Hydrocolloids
{
    /// <summary>Agar (<c>agar</c>).</summary>
    public static Ingredient Agar => BuiltInCatalogue.Get("agar");

    /// <summary>Kappa-carrageenan (<c>carrageenan-kappa</c>).</summary>
    public static Ingredient CarrageenanKappa => BuiltInCatalogue.Get("carrageenan-kappa");

    /// <summary>Iota-carrageenan (<c>carrageenan-iota</c>).</summary>
    public static Ingredient CarrageenanIota => BuiltInCatalogue.Get("carrageenan-iota");

    /// <summary>Sodium alginate (<c>sodium-alginate</c>).</summary>
    public static Ingredient SodiumAlginate => BuiltInCatalogue.Get("sodium-alginate");

    /// <summary>Gelatin, type A (<c>gelatin-type-a</c>).</summary>
    public static Ingredient GelatinTypeA => BuiltInCatalogue.Get("gelatin-type-a");

    /// <summary>Low-methoxyl pectin (<c>pectin-low-methoxyl</c>).</summary>
    public static Ingredient PectinLowMethoxyl => BuiltInCatalogue.Get("pectin-low-methoxyl");

    /// <summary>Locust bean gum (<c>locust-bean-gum</c>).</summary>
    public static Ingredient LocustBeanGum => BuiltInCatalogue.Get("locust-bean-gum");

    /// <summary>Low-acyl gellan gum (<c>gellan-low-acyl</c>).</summary>
    public static Ingredient GellanLowAcyl => BuiltInCatalogue.Get("gellan-low-acyl");

    /// <summary>High-acyl gellan gum (<c>gellan-high-acyl</c>).</summary>
    public static Ingredient GellanHighAcyl => BuiltInCatalogue.Get("gellan-high-acyl");

    /// <summary>Xanthan gum (<c>xanthan-gum</c>).</summary>
    public static Ingredient XanthanGum => BuiltInCatalogue.Get("xanthan-gum");
}
