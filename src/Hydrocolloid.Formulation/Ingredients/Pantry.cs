using Hydrocolloid.Formulation.Catalogues;

namespace Hydrocolloid.Formulation;

/// <summary>The built-in liquids, solids and seasonings by name.</summary>
public static class Pantry
{
    /// <summary>Water (<c>water</c>).</summary>
    public static Ingredient Water => BuiltInCatalogue.Get("water");

    /// <summary>Distilled water (<c>water-distilled</c>).</summary>
    public static Ingredient WaterDistilled => BuiltInCatalogue.Get("water-distilled");

    /// <summary>Hard tap water (<c>water-hard</c>).</summary>
    public static Ingredient WaterHard => BuiltInCatalogue.Get("water-hard");

    /// <summary>Pear juice (<c>pear-juice</c>).</summary>
    public static Ingredient PearJuice => BuiltInCatalogue.Get("pear-juice");

    /// <summary>Apple juice (<c>apple-juice</c>).</summary>
    public static Ingredient AppleJuice => BuiltInCatalogue.Get("apple-juice");

    /// <summary>Orange juice (<c>orange-juice</c>).</summary>
    public static Ingredient OrangeJuice => BuiltInCatalogue.Get("orange-juice");

    /// <summary>Lemon juice (<c>lemon-juice</c>).</summary>
    public static Ingredient LemonJuice => BuiltInCatalogue.Get("lemon-juice");

    /// <summary>Lime juice (<c>lime-juice</c>).</summary>
    public static Ingredient LimeJuice => BuiltInCatalogue.Get("lime-juice");

    /// <summary>Pineapple juice, raw (<c>pineapple-juice-raw</c>).</summary>
    public static Ingredient PineappleJuiceRaw => BuiltInCatalogue.Get("pineapple-juice-raw");

    /// <summary>Pineapple juice, canned (<c>pineapple-juice-canned</c>).</summary>
    public static Ingredient PineappleJuiceCanned => BuiltInCatalogue.Get("pineapple-juice-canned");

    /// <summary>Raspberry juice (<c>raspberry-juice</c>).</summary>
    public static Ingredient RaspberryJuice => BuiltInCatalogue.Get("raspberry-juice");

    /// <summary>Cucumber juice (<c>cucumber-juice</c>).</summary>
    public static Ingredient CucumberJuice => BuiltInCatalogue.Get("cucumber-juice");

    /// <summary>Beetroot juice (<c>beetroot-juice</c>).</summary>
    public static Ingredient BeetrootJuice => BuiltInCatalogue.Get("beetroot-juice");

    /// <summary>Tomato juice (<c>tomato-juice</c>).</summary>
    public static Ingredient TomatoJuice => BuiltInCatalogue.Get("tomato-juice");

    /// <summary>Tomato water (<c>tomato-water</c>).</summary>
    public static Ingredient TomatoWater => BuiltInCatalogue.Get("tomato-water");

    /// <summary>Carrot juice (<c>carrot-juice</c>).</summary>
    public static Ingredient CarrotJuice => BuiltInCatalogue.Get("carrot-juice");

    /// <summary>Elderflower cordial (<c>elderflower-cordial</c>).</summary>
    public static Ingredient ElderflowerCordial => BuiltInCatalogue.Get("elderflower-cordial");

    /// <summary>Mint infusion (<c>mint-infusion</c>).</summary>
    public static Ingredient MintInfusion => BuiltInCatalogue.Get("mint-infusion");

    /// <summary>Black tea (<c>black-tea</c>).</summary>
    public static Ingredient BlackTea => BuiltInCatalogue.Get("black-tea");

    /// <summary>Beef consommé (<c>beef-consomme</c>).</summary>
    public static Ingredient BeefConsomme => BuiltInCatalogue.Get("beef-consomme");

    /// <summary>Vegetable stock (<c>vegetable-stock</c>).</summary>
    public static Ingredient VegetableStock => BuiltInCatalogue.Get("vegetable-stock");

    /// <summary>Whole milk (<c>whole-milk</c>).</summary>
    public static Ingredient WholeMilk => BuiltInCatalogue.Get("whole-milk");

    /// <summary>Cream, 35–38 % fat (<c>cream-35</c>).</summary>
    public static Ingredient Cream35 => BuiltInCatalogue.Get("cream-35");

    /// <summary>Oat drink (<c>oat-drink</c>).</summary>
    public static Ingredient OatDrink => BuiltInCatalogue.Get("oat-drink");

    /// <summary>Coconut milk (<c>coconut-milk</c>).</summary>
    public static Ingredient CoconutMilk => BuiltInCatalogue.Get("coconut-milk");

    /// <summary>Soy drink (<c>soy-drink</c>).</summary>
    public static Ingredient SoyDrink => BuiltInCatalogue.Get("soy-drink");

    /// <summary>Red wine (<c>red-wine</c>).</summary>
    public static Ingredient RedWine => BuiltInCatalogue.Get("red-wine");

    /// <summary>White wine (<c>white-wine</c>).</summary>
    public static Ingredient WhiteWine => BuiltInCatalogue.Get("white-wine");

    /// <summary>Dry cider (<c>cider-dry</c>).</summary>
    public static Ingredient CiderDry => BuiltInCatalogue.Get("cider-dry");

    /// <summary>Spirit, 40 % vol (<c>spirit-40</c>).</summary>
    public static Ingredient Spirit40 => BuiltInCatalogue.Get("spirit-40");

    /// <summary>Wine vinegar (<c>wine-vinegar</c>).</summary>
    public static Ingredient WineVinegar => BuiltInCatalogue.Get("wine-vinegar");

    /// <summary>Sucrose (<c>sucrose</c>).</summary>
    public static Ingredient Sucrose => BuiltInCatalogue.Get("sucrose");

    /// <summary>Dextrose monohydrate (<c>dextrose</c>).</summary>
    public static Ingredient Dextrose => BuiltInCatalogue.Get("dextrose");

    /// <summary>Glucose syrup (<c>glucose-syrup</c>).</summary>
    public static Ingredient GlucoseSyrup => BuiltInCatalogue.Get("glucose-syrup");

    /// <summary>Honey (<c>honey</c>).</summary>
    public static Ingredient Honey => BuiltInCatalogue.Get("honey");

    /// <summary>Glycerol (<c>glycerol</c>).</summary>
    public static Ingredient Glycerol => BuiltInCatalogue.Get("glycerol");

    /// <summary>Salt (<c>salt</c>).</summary>
    public static Ingredient Salt => BuiltInCatalogue.Get("salt");

    /// <summary>Olive oil (<c>olive-oil</c>).</summary>
    public static Ingredient OliveOil => BuiltInCatalogue.Get("olive-oil");

    /// <summary>Pear (<c>pear</c>).</summary>
    public static Ingredient Pear => BuiltInCatalogue.Get("pear");

    /// <summary>Strawberry (<c>strawberry</c>).</summary>
    public static Ingredient Strawberry => BuiltInCatalogue.Get("strawberry");

    /// <summary>Pineapple, raw (<c>pineapple-raw</c>).</summary>
    public static Ingredient PineappleRaw => BuiltInCatalogue.Get("pineapple-raw");

    /// <summary>Kiwi, raw (<c>kiwi-raw</c>).</summary>
    public static Ingredient KiwiRaw => BuiltInCatalogue.Get("kiwi-raw");

    /// <summary>Egg white, raw (<c>egg-white</c>).</summary>
    public static Ingredient EggWhite => BuiltInCatalogue.Get("egg-white");

    /// <summary>Mint leaves (<c>mint-leaves</c>).</summary>
    public static Ingredient MintLeaves => BuiltInCatalogue.Get("mint-leaves");

    /// <summary>Citric acid, anhydrous (<c>citric-acid</c>).</summary>
    public static Ingredient CitricAcid => BuiltInCatalogue.Get("citric-acid");

    /// <summary>Trisodium citrate dihydrate (<c>sodium-citrate</c>).</summary>
    public static Ingredient SodiumCitrate => BuiltInCatalogue.Get("sodium-citrate");

    /// <summary>Calcium chloride dihydrate (<c>calcium-chloride</c>).</summary>
    public static Ingredient CalciumChloride => BuiltInCatalogue.Get("calcium-chloride");

    /// <summary>Calcium lactate pentahydrate (<c>calcium-lactate</c>).</summary>
    public static Ingredient CalciumLactate => BuiltInCatalogue.Get("calcium-lactate");
}
