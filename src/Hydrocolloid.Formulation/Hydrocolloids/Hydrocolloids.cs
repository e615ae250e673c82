using Hydrocolloid.Formulation.Catalogues;

namespace Hydrocolloid.Formulation;

/// <summary>The built-in hydrocolloids by name. Each is an <see cref="Ingredient"/> whose <see cref="Ingredient.Profile"/> says how it is worked.</summary>
public static class Hydrocolloids
{
    /// <summary>Fish gelatin (<c>gelatin-fish</c>).</summary>
    public static Ingredient GelatinFish => BuiltInCatalogue.Get("gelatin-fish");

    /// <summary>Gelatin, type A (<c>gelatin-type-a</c>).</summary>
    public static Ingredient GelatinTypeA => BuiltInCatalogue.Get("gelatin-type-a");

    /// <summary>Gelatin, type B (<c>gelatin-type-b</c>).</summary>
    public static Ingredient GelatinTypeB => BuiltInCatalogue.Get("gelatin-type-b");

    /// <summary>Carboxymethyl cellulose (<c>cmc</c>).</summary>
    public static Ingredient Cmc => BuiltInCatalogue.Get("cmc");

    /// <summary>Hydroxypropyl methylcellulose (<c>hpmc</c>).</summary>
    public static Ingredient Hpmc => BuiltInCatalogue.Get("hpmc");

    /// <summary>Microcrystalline cellulose, colloidal (<c>mcc-colloidal</c>).</summary>
    public static Ingredient MccColloidal => BuiltInCatalogue.Get("mcc-colloidal");

    /// <summary>Methylcellulose (<c>methylcellulose</c>).</summary>
    public static Ingredient Methylcellulose => BuiltInCatalogue.Get("methylcellulose");

    /// <summary>Curdlan, high-set gel (<c>curdlan-high-set</c>).</summary>
    public static Ingredient CurdlanHighSet => BuiltInCatalogue.Get("curdlan-high-set");

    /// <summary>Curdlan, low-set gel (<c>curdlan-low-set</c>).</summary>
    public static Ingredient CurdlanLowSet => BuiltInCatalogue.Get("curdlan-low-set");

    /// <summary>Curdlan (<c>curdlan</c>).</summary>
    public static Ingredient Curdlan => BuiltInCatalogue.Get("curdlan");

    /// <summary>High-acyl gellan gum (<c>gellan-high-acyl</c>).</summary>
    public static Ingredient GellanHighAcyl => BuiltInCatalogue.Get("gellan-high-acyl");

    /// <summary>Low-acyl gellan gum (<c>gellan-low-acyl</c>).</summary>
    public static Ingredient GellanLowAcyl => BuiltInCatalogue.Get("gellan-low-acyl");

    /// <summary>Xanthan gum (<c>xanthan-gum</c>).</summary>
    public static Ingredient XanthanGum => BuiltInCatalogue.Get("xanthan-gum");

    /// <summary>Cassia gum (<c>cassia-gum</c>).</summary>
    public static Ingredient CassiaGum => BuiltInCatalogue.Get("cassia-gum");

    /// <summary>Citrus fibre (<c>citrus-fibre</c>).</summary>
    public static Ingredient CitrusFibre => BuiltInCatalogue.Get("citrus-fibre");

    /// <summary>Guar gum (<c>guar-gum</c>).</summary>
    public static Ingredient GuarGum => BuiltInCatalogue.Get("guar-gum");

    /// <summary>Gum arabic (<c>gum-arabic</c>).</summary>
    public static Ingredient GumArabic => BuiltInCatalogue.Get("gum-arabic");

    /// <summary>Gum karaya (<c>gum-karaya</c>).</summary>
    public static Ingredient GumKaraya => BuiltInCatalogue.Get("gum-karaya");

    /// <summary>Gum tragacanth (<c>gum-tragacanth</c>).</summary>
    public static Ingredient GumTragacanth => BuiltInCatalogue.Get("gum-tragacanth");

    /// <summary>Inulin (<c>inulin</c>).</summary>
    public static Ingredient Inulin => BuiltInCatalogue.Get("inulin");

    /// <summary>Konjac glucomannan, as thickener (<c>konjac-glucomannan-thickener</c>).</summary>
    public static Ingredient KonjacGlucomannanThickener => BuiltInCatalogue.Get("konjac-glucomannan-thickener");

    /// <summary>Konjac glucomannan (<c>konjac-glucomannan</c>).</summary>
    public static Ingredient KonjacGlucomannan => BuiltInCatalogue.Get("konjac-glucomannan");

    /// <summary>Locust bean gum (<c>locust-bean-gum</c>).</summary>
    public static Ingredient LocustBeanGum => BuiltInCatalogue.Get("locust-bean-gum");

    /// <summary>Amidated low-methoxyl pectin (<c>pectin-amidated-low-methoxyl</c>).</summary>
    public static Ingredient PectinAmidatedLowMethoxyl => BuiltInCatalogue.Get("pectin-amidated-low-methoxyl");

    /// <summary>High-methoxyl pectin, medium rapid set (<c>pectin-high-methoxyl-medium-rapid-set</c>).</summary>
    public static Ingredient PectinHighMethoxylMediumRapidSet => BuiltInCatalogue.Get("pectin-high-methoxyl-medium-rapid-set");

    /// <summary>High-methoxyl pectin, rapid set (<c>pectin-high-methoxyl-rapid-set</c>).</summary>
    public static Ingredient PectinHighMethoxylRapidSet => BuiltInCatalogue.Get("pectin-high-methoxyl-rapid-set");

    /// <summary>High-methoxyl pectin, slow set (<c>pectin-high-methoxyl-slow-set</c>).</summary>
    public static Ingredient PectinHighMethoxylSlowSet => BuiltInCatalogue.Get("pectin-high-methoxyl-slow-set");

    /// <summary>High-methoxyl pectin, ultra rapid set (<c>pectin-high-methoxyl-ultra-rapid-set</c>).</summary>
    public static Ingredient PectinHighMethoxylUltraRapidSet => BuiltInCatalogue.Get("pectin-high-methoxyl-ultra-rapid-set");

    /// <summary>High-methoxyl pectin (<c>pectin-high-methoxyl</c>).</summary>
    public static Ingredient PectinHighMethoxyl => BuiltInCatalogue.Get("pectin-high-methoxyl");

    /// <summary>Low-methoxyl pectin (<c>pectin-low-methoxyl</c>).</summary>
    public static Ingredient PectinLowMethoxyl => BuiltInCatalogue.Get("pectin-low-methoxyl");

    /// <summary>Psyllium husk (<c>psyllium</c>).</summary>
    public static Ingredient Psyllium => BuiltInCatalogue.Get("psyllium");

    /// <summary>Tara gum (<c>tara-gum</c>).</summary>
    public static Ingredient TaraGum => BuiltInCatalogue.Get("tara-gum");

    /// <summary>Agar (<c>agar</c>).</summary>
    public static Ingredient Agar => BuiltInCatalogue.Get("agar");

    /// <summary>Iota-carrageenan (<c>carrageenan-iota</c>).</summary>
    public static Ingredient CarrageenanIota => BuiltInCatalogue.Get("carrageenan-iota");

    /// <summary>Kappa-carrageenan (<c>carrageenan-kappa</c>).</summary>
    public static Ingredient CarrageenanKappa => BuiltInCatalogue.Get("carrageenan-kappa");

    /// <summary>Lambda-carrageenan (<c>carrageenan-lambda</c>).</summary>
    public static Ingredient CarrageenanLambda => BuiltInCatalogue.Get("carrageenan-lambda");

    /// <summary>Propylene glycol alginate (<c>propylene-glycol-alginate</c>).</summary>
    public static Ingredient PropyleneGlycolAlginate => BuiltInCatalogue.Get("propylene-glycol-alginate");

    /// <summary>Sodium alginate, high-G (<c>sodium-alginate-high-g</c>).</summary>
    public static Ingredient SodiumAlginateHighG => BuiltInCatalogue.Get("sodium-alginate-high-g");

    /// <summary>Sodium alginate, high-M (<c>sodium-alginate-high-m</c>).</summary>
    public static Ingredient SodiumAlginateHighM => BuiltInCatalogue.Get("sodium-alginate-high-m");

    /// <summary>Sodium alginate (<c>sodium-alginate</c>).</summary>
    public static Ingredient SodiumAlginate => BuiltInCatalogue.Get("sodium-alginate");

    /// <summary>Arrowroot starch (<c>starch-arrowroot</c>).</summary>
    public static Ingredient StarchArrowroot => BuiltInCatalogue.Get("starch-arrowroot");

    /// <summary>Maize starch (<c>starch-maize</c>).</summary>
    public static Ingredient StarchMaize => BuiltInCatalogue.Get("starch-maize");

    /// <summary>Potato starch (<c>starch-potato</c>).</summary>
    public static Ingredient StarchPotato => BuiltInCatalogue.Get("starch-potato");

    /// <summary>Pregelatinised starch (<c>starch-pregelatinised</c>).</summary>
    public static Ingredient StarchPregelatinised => BuiltInCatalogue.Get("starch-pregelatinised");

    /// <summary>Rice starch (<c>starch-rice</c>).</summary>
    public static Ingredient StarchRice => BuiltInCatalogue.Get("starch-rice");

    /// <summary>Tapioca starch (<c>starch-tapioca</c>).</summary>
    public static Ingredient StarchTapioca => BuiltInCatalogue.Get("starch-tapioca");

    /// <summary>Waxy maize starch (<c>starch-waxy-maize</c>).</summary>
    public static Ingredient StarchWaxyMaize => BuiltInCatalogue.Get("starch-waxy-maize");

    /// <summary>Wheat starch (<c>starch-wheat</c>).</summary>
    public static Ingredient StarchWheat => BuiltInCatalogue.Get("starch-wheat");
}
