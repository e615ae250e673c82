using Hydrocolloid.Formulation.Catalogues;

namespace Hydrocolloid.Formulation;

/// <summary>The built-in liquids, solids and seasonings by name.</summary>
public static class Pantry
{
    /// <summary>Balsamic vinegar (<c>balsamic-vinegar</c>).</summary>
    public static Ingredient BalsamicVinegar => BuiltInCatalogue.Get("balsamic-vinegar");

    /// <summary>Lager beer (<c>beer-lager</c>).</summary>
    public static Ingredient BeerLager => BuiltInCatalogue.Get("beer-lager");

    /// <summary>Stout beer (<c>beer-stout</c>).</summary>
    public static Ingredient BeerStout => BuiltInCatalogue.Get("beer-stout");

    /// <summary>Dry cider (<c>cider-dry</c>).</summary>
    public static Ingredient CiderDry => BuiltInCatalogue.Get("cider-dry");

    /// <summary>Sweet cider (<c>cider-sweet</c>).</summary>
    public static Ingredient CiderSweet => BuiltInCatalogue.Get("cider-sweet");

    /// <summary>Cider vinegar (<c>cider-vinegar</c>).</summary>
    public static Ingredient CiderVinegar => BuiltInCatalogue.Get("cider-vinegar");

    /// <summary>Coffee liqueur (<c>coffee-liqueur</c>).</summary>
    public static Ingredient CoffeeLiqueur => BuiltInCatalogue.Get("coffee-liqueur");

    /// <summary>Distilled vinegar, 5 % acetic acid (<c>distilled-vinegar-5</c>).</summary>
    public static Ingredient DistilledVinegar5 => BuiltInCatalogue.Get("distilled-vinegar-5");

    /// <summary>Fruit or herb liqueur, 25 % vol (<c>liqueur-25</c>).</summary>
    public static Ingredient Liqueur25 => BuiltInCatalogue.Get("liqueur-25");

    /// <summary>Plum liqueur (<c>plum-liqueur</c>).</summary>
    public static Ingredient PlumLiqueur => BuiltInCatalogue.Get("plum-liqueur");

    /// <summary>Port (<c>port</c>).</summary>
    public static Ingredient Port => BuiltInCatalogue.Get("port");

    /// <summary>Red wine (<c>red-wine</c>).</summary>
    public static Ingredient RedWine => BuiltInCatalogue.Get("red-wine");

    /// <summary>Rice vinegar (<c>rice-vinegar</c>).</summary>
    public static Ingredient RiceVinegar => BuiltInCatalogue.Get("rice-vinegar");

    /// <summary>Rosé wine (<c>rose-wine</c>).</summary>
    public static Ingredient RoseWine => BuiltInCatalogue.Get("rose-wine");

    /// <summary>Sake (<c>sake</c>).</summary>
    public static Ingredient Sake => BuiltInCatalogue.Get("sake");

    /// <summary>Sparkling wine (<c>sparkling-wine</c>).</summary>
    public static Ingredient SparklingWine => BuiltInCatalogue.Get("sparkling-wine");

    /// <summary>Spirit, 40 % vol (<c>spirit-40</c>).</summary>
    public static Ingredient Spirit40 => BuiltInCatalogue.Get("spirit-40");

    /// <summary>Spirit vinegar, 6 % acetic acid (<c>spirit-vinegar-6</c>).</summary>
    public static Ingredient SpiritVinegar6 => BuiltInCatalogue.Get("spirit-vinegar-6");

    /// <summary>Dry vermouth (<c>vermouth-dry</c>).</summary>
    public static Ingredient VermouthDry => BuiltInCatalogue.Get("vermouth-dry");

    /// <summary>Whisky, 43 % vol (<c>whisky-43</c>).</summary>
    public static Ingredient Whisky43 => BuiltInCatalogue.Get("whisky-43");

    /// <summary>White wine (<c>white-wine</c>).</summary>
    public static Ingredient WhiteWine => BuiltInCatalogue.Get("white-wine");

    /// <summary>Wine vinegar (<c>wine-vinegar</c>).</summary>
    public static Ingredient WineVinegar => BuiltInCatalogue.Get("wine-vinegar");

    /// <summary>Dark chocolate, 70–85 % cocoa (<c>chocolate-dark</c>).</summary>
    public static Ingredient ChocolateDark => BuiltInCatalogue.Get("chocolate-dark");

    /// <summary>Cocoa powder, alkalised (<c>cocoa-powder-alkalised</c>).</summary>
    public static Ingredient CocoaPowderAlkalised => BuiltInCatalogue.Get("cocoa-powder-alkalised");

    /// <summary>Cocoa powder, natural (<c>cocoa-powder</c>).</summary>
    public static Ingredient CocoaPowder => BuiltInCatalogue.Get("cocoa-powder");

    /// <summary>Soy sauce (<c>soy-sauce</c>).</summary>
    public static Ingredient SoySauce => BuiltInCatalogue.Get("soy-sauce");

    /// <summary>Tamari (<c>tamari</c>).</summary>
    public static Ingredient Tamari => BuiltInCatalogue.Get("tamari");

    /// <summary>Buttermilk (<c>buttermilk</c>).</summary>
    public static Ingredient Buttermilk => BuiltInCatalogue.Get("buttermilk");

    /// <summary>Cream, 35–38 % fat (<c>cream-35</c>).</summary>
    public static Ingredient Cream35 => BuiltInCatalogue.Get("cream-35");

    /// <summary>Egg white, raw (<c>egg-white</c>).</summary>
    public static Ingredient EggWhite => BuiltInCatalogue.Get("egg-white");

    /// <summary>Egg yolk, raw (<c>egg-yolk</c>).</summary>
    public static Ingredient EggYolk => BuiltInCatalogue.Get("egg-yolk");

    /// <summary>Skimmed milk (<c>skimmed-milk</c>).</summary>
    public static Ingredient SkimmedMilk => BuiltInCatalogue.Get("skimmed-milk");

    /// <summary>Whole milk (<c>whole-milk</c>).</summary>
    public static Ingredient WholeMilk => BuiltInCatalogue.Get("whole-milk");

    /// <summary>Yoghurt, whole milk (<c>yoghurt</c>).</summary>
    public static Ingredient Yoghurt => BuiltInCatalogue.Get("yoghurt");

    /// <summary>Olive oil (<c>olive-oil</c>).</summary>
    public static Ingredient OliveOil => BuiltInCatalogue.Get("olive-oil");

    /// <summary>Apple, peeled (<c>apple</c>).</summary>
    public static Ingredient Apple => BuiltInCatalogue.Get("apple");

    /// <summary>Sweet cherries (<c>cherry-sweet</c>).</summary>
    public static Ingredient CherrySweet => BuiltInCatalogue.Get("cherry-sweet");

    /// <summary>Fig, raw (<c>fig</c>).</summary>
    public static Ingredient Fig => BuiltInCatalogue.Get("fig");

    /// <summary>Grapes (<c>grape</c>).</summary>
    public static Ingredient Grape => BuiltInCatalogue.Get("grape");

    /// <summary>Grapefruit segments (<c>grapefruit-segments</c>).</summary>
    public static Ingredient GrapefruitSegments => BuiltInCatalogue.Get("grapefruit-segments");

    /// <summary>Gold kiwi, raw (<c>kiwi-gold-raw</c>).</summary>
    public static Ingredient KiwiGoldRaw => BuiltInCatalogue.Get("kiwi-gold-raw");

    /// <summary>Kiwi, raw (<c>kiwi-raw</c>).</summary>
    public static Ingredient KiwiRaw => BuiltInCatalogue.Get("kiwi-raw");

    /// <summary>Mango, raw (<c>mango</c>).</summary>
    public static Ingredient Mango => BuiltInCatalogue.Get("mango");

    /// <summary>Cantaloupe melon (<c>melon-cantaloupe</c>).</summary>
    public static Ingredient MelonCantaloupe => BuiltInCatalogue.Get("melon-cantaloupe");

    /// <summary>Honeydew melon (<c>melon-honeydew</c>).</summary>
    public static Ingredient MelonHoneydew => BuiltInCatalogue.Get("melon-honeydew");

    /// <summary>Mint leaves (<c>mint-leaves</c>).</summary>
    public static Ingredient MintLeaves => BuiltInCatalogue.Get("mint-leaves");

    /// <summary>Orange segments (<c>orange-segments</c>).</summary>
    public static Ingredient OrangeSegments => BuiltInCatalogue.Get("orange-segments");

    /// <summary>Papaya, raw (<c>papaya-raw</c>).</summary>
    public static Ingredient PapayaRaw => BuiltInCatalogue.Get("papaya-raw");

    /// <summary>Pear (<c>pear</c>).</summary>
    public static Ingredient Pear => BuiltInCatalogue.Get("pear");

    /// <summary>Pineapple, canned (<c>pineapple-canned</c>).</summary>
    public static Ingredient PineappleCanned => BuiltInCatalogue.Get("pineapple-canned");

    /// <summary>Pineapple, raw (<c>pineapple-raw</c>).</summary>
    public static Ingredient PineappleRaw => BuiltInCatalogue.Get("pineapple-raw");

    /// <summary>Raspberry (<c>raspberry</c>).</summary>
    public static Ingredient Raspberry => BuiltInCatalogue.Get("raspberry");

    /// <summary>Strawberry (<c>strawberry</c>).</summary>
    public static Ingredient Strawberry => BuiltInCatalogue.Get("strawberry");

    /// <summary>Tomato (<c>tomato</c>).</summary>
    public static Ingredient Tomato => BuiltInCatalogue.Get("tomato");

    /// <summary>Watermelon (<c>watermelon</c>).</summary>
    public static Ingredient Watermelon => BuiltInCatalogue.Get("watermelon");

    /// <summary>Apple juice (<c>apple-juice</c>).</summary>
    public static Ingredient AppleJuice => BuiltInCatalogue.Get("apple-juice");

    /// <summary>Beetroot juice (<c>beetroot-juice</c>).</summary>
    public static Ingredient BeetrootJuice => BuiltInCatalogue.Get("beetroot-juice");

    /// <summary>Blackcurrant juice (<c>blackcurrant-juice</c>).</summary>
    public static Ingredient BlackcurrantJuice => BuiltInCatalogue.Get("blackcurrant-juice");

    /// <summary>Carrot juice (<c>carrot-juice</c>).</summary>
    public static Ingredient CarrotJuice => BuiltInCatalogue.Get("carrot-juice");

    /// <summary>Celery juice (<c>celery-juice</c>).</summary>
    public static Ingredient CeleryJuice => BuiltInCatalogue.Get("celery-juice");

    /// <summary>Sour cherry juice (<c>cherry-juice-sour</c>).</summary>
    public static Ingredient CherryJuiceSour => BuiltInCatalogue.Get("cherry-juice-sour");

    /// <summary>Coconut water (<c>coconut-water</c>).</summary>
    public static Ingredient CoconutWater => BuiltInCatalogue.Get("coconut-water");

    /// <summary>Cranberry juice cocktail (<c>cranberry-juice-cocktail</c>).</summary>
    public static Ingredient CranberryJuiceCocktail => BuiltInCatalogue.Get("cranberry-juice-cocktail");

    /// <summary>Cranberry juice, unsweetened (<c>cranberry-juice</c>).</summary>
    public static Ingredient CranberryJuice => BuiltInCatalogue.Get("cranberry-juice");

    /// <summary>Cucumber juice (<c>cucumber-juice</c>).</summary>
    public static Ingredient CucumberJuice => BuiltInCatalogue.Get("cucumber-juice");

    /// <summary>Elderberry juice (<c>elderberry-juice</c>).</summary>
    public static Ingredient ElderberryJuice => BuiltInCatalogue.Get("elderberry-juice");

    /// <summary>Elderflower cordial (<c>elderflower-cordial</c>).</summary>
    public static Ingredient ElderflowerCordial => BuiltInCatalogue.Get("elderflower-cordial");

    /// <summary>Ginger juice, raw (<c>ginger-juice</c>).</summary>
    public static Ingredient GingerJuice => BuiltInCatalogue.Get("ginger-juice");

    /// <summary>Red grape juice (<c>grape-juice-red</c>).</summary>
    public static Ingredient GrapeJuiceRed => BuiltInCatalogue.Get("grape-juice-red");

    /// <summary>White grape juice (<c>grape-juice-white</c>).</summary>
    public static Ingredient GrapeJuiceWhite => BuiltInCatalogue.Get("grape-juice-white");

    /// <summary>Grapefruit juice, canned (<c>grapefruit-juice-canned</c>).</summary>
    public static Ingredient GrapefruitJuiceCanned => BuiltInCatalogue.Get("grapefruit-juice-canned");

    /// <summary>Grapefruit juice (<c>grapefruit-juice</c>).</summary>
    public static Ingredient GrapefruitJuice => BuiltInCatalogue.Get("grapefruit-juice");

    /// <summary>Kiwi juice, raw (<c>kiwi-juice-raw</c>).</summary>
    public static Ingredient KiwiJuiceRaw => BuiltInCatalogue.Get("kiwi-juice-raw");

    /// <summary>Lemon juice, bottled (<c>lemon-juice-bottled</c>).</summary>
    public static Ingredient LemonJuiceBottled => BuiltInCatalogue.Get("lemon-juice-bottled");

    /// <summary>Lemon juice (<c>lemon-juice</c>).</summary>
    public static Ingredient LemonJuice => BuiltInCatalogue.Get("lemon-juice");

    /// <summary>Lime cordial (<c>lime-cordial</c>).</summary>
    public static Ingredient LimeCordial => BuiltInCatalogue.Get("lime-cordial");

    /// <summary>Lime juice (<c>lime-juice</c>).</summary>
    public static Ingredient LimeJuice => BuiltInCatalogue.Get("lime-juice");

    /// <summary>Mandarin juice (<c>mandarin-juice</c>).</summary>
    public static Ingredient MandarinJuice => BuiltInCatalogue.Get("mandarin-juice");

    /// <summary>Mango juice (<c>mango-juice</c>).</summary>
    public static Ingredient MangoJuice => BuiltInCatalogue.Get("mango-juice");

    /// <summary>Orange juice, pasteurised (<c>orange-juice-pasteurised</c>).</summary>
    public static Ingredient OrangeJuicePasteurised => BuiltInCatalogue.Get("orange-juice-pasteurised");

    /// <summary>Orange juice (<c>orange-juice</c>).</summary>
    public static Ingredient OrangeJuice => BuiltInCatalogue.Get("orange-juice");

    /// <summary>Papaya juice, raw (<c>papaya-juice-raw</c>).</summary>
    public static Ingredient PapayaJuiceRaw => BuiltInCatalogue.Get("papaya-juice-raw");

    /// <summary>Passion fruit juice, yellow (<c>passion-fruit-juice-yellow</c>).</summary>
    public static Ingredient PassionFruitJuiceYellow => BuiltInCatalogue.Get("passion-fruit-juice-yellow");

    /// <summary>Passion fruit juice, purple (<c>passion-fruit-juice</c>).</summary>
    public static Ingredient PassionFruitJuice => BuiltInCatalogue.Get("passion-fruit-juice");

    /// <summary>Pear juice (<c>pear-juice</c>).</summary>
    public static Ingredient PearJuice => BuiltInCatalogue.Get("pear-juice");

    /// <summary>Pineapple juice, canned (<c>pineapple-juice-canned</c>).</summary>
    public static Ingredient PineappleJuiceCanned => BuiltInCatalogue.Get("pineapple-juice-canned");

    /// <summary>Pineapple juice, raw (<c>pineapple-juice-raw</c>).</summary>
    public static Ingredient PineappleJuiceRaw => BuiltInCatalogue.Get("pineapple-juice-raw");

    /// <summary>Pomegranate juice (<c>pomegranate-juice</c>).</summary>
    public static Ingredient PomegranateJuice => BuiltInCatalogue.Get("pomegranate-juice");

    /// <summary>Raspberry juice (<c>raspberry-juice</c>).</summary>
    public static Ingredient RaspberryJuice => BuiltInCatalogue.Get("raspberry-juice");

    /// <summary>Rhubarb juice (<c>rhubarb-juice</c>).</summary>
    public static Ingredient RhubarbJuice => BuiltInCatalogue.Get("rhubarb-juice");

    /// <summary>Spinach juice (<c>spinach-juice</c>).</summary>
    public static Ingredient SpinachJuice => BuiltInCatalogue.Get("spinach-juice");

    /// <summary>Strawberry juice (<c>strawberry-juice</c>).</summary>
    public static Ingredient StrawberryJuice => BuiltInCatalogue.Get("strawberry-juice");

    /// <summary>Tomato juice (<c>tomato-juice</c>).</summary>
    public static Ingredient TomatoJuice => BuiltInCatalogue.Get("tomato-juice");

    /// <summary>Tomato water (<c>tomato-water</c>).</summary>
    public static Ingredient TomatoWater => BuiltInCatalogue.Get("tomato-water");

    /// <summary>Yuzu juice (<c>yuzu-juice</c>).</summary>
    public static Ingredient YuzuJuice => BuiltInCatalogue.Get("yuzu-juice");

    /// <summary>Almond drink with calcium, unsweetened (<c>almond-drink-calcium</c>).</summary>
    public static Ingredient AlmondDrinkCalcium => BuiltInCatalogue.Get("almond-drink-calcium");

    /// <summary>Almond drink, sweetened (<c>almond-drink-sweetened</c>).</summary>
    public static Ingredient AlmondDrinkSweetened => BuiltInCatalogue.Get("almond-drink-sweetened");

    /// <summary>Coconut milk (<c>coconut-milk</c>).</summary>
    public static Ingredient CoconutMilk => BuiltInCatalogue.Get("coconut-milk");

    /// <summary>Oat drink (<c>oat-drink</c>).</summary>
    public static Ingredient OatDrink => BuiltInCatalogue.Get("oat-drink");

    /// <summary>Soy drink with calcium (<c>soy-drink-calcium</c>).</summary>
    public static Ingredient SoyDrinkCalcium => BuiltInCatalogue.Get("soy-drink-calcium");

    /// <summary>Soy drink (<c>soy-drink</c>).</summary>
    public static Ingredient SoyDrink => BuiltInCatalogue.Get("soy-drink");

    /// <summary>Calcium carbonate (<c>calcium-carbonate</c>).</summary>
    public static Ingredient CalciumCarbonate => BuiltInCatalogue.Get("calcium-carbonate");

    /// <summary>Calcium chloride, anhydrous (<c>calcium-chloride-anhydrous</c>).</summary>
    public static Ingredient CalciumChlorideAnhydrous => BuiltInCatalogue.Get("calcium-chloride-anhydrous");

    /// <summary>Calcium chloride dihydrate (<c>calcium-chloride</c>).</summary>
    public static Ingredient CalciumChloride => BuiltInCatalogue.Get("calcium-chloride");

    /// <summary>Calcium gluconate monohydrate (<c>calcium-gluconate</c>).</summary>
    public static Ingredient CalciumGluconate => BuiltInCatalogue.Get("calcium-gluconate");

    /// <summary>Calcium lactate gluconate (<c>calcium-lactate-gluconate</c>).</summary>
    public static Ingredient CalciumLactateGluconate => BuiltInCatalogue.Get("calcium-lactate-gluconate");

    /// <summary>Calcium lactate pentahydrate (<c>calcium-lactate</c>).</summary>
    public static Ingredient CalciumLactate => BuiltInCatalogue.Get("calcium-lactate");

    /// <summary>Calcium sulphate dihydrate (<c>calcium-sulphate</c>).</summary>
    public static Ingredient CalciumSulphate => BuiltInCatalogue.Get("calcium-sulphate");

    /// <summary>Citric acid, anhydrous (<c>citric-acid</c>).</summary>
    public static Ingredient CitricAcid => BuiltInCatalogue.Get("citric-acid");

    /// <summary>Potassium chloride (<c>potassium-chloride</c>).</summary>
    public static Ingredient PotassiumChloride => BuiltInCatalogue.Get("potassium-chloride");

    /// <summary>Salt (<c>salt</c>).</summary>
    public static Ingredient Salt => BuiltInCatalogue.Get("salt");

    /// <summary>Trisodium citrate dihydrate (<c>sodium-citrate</c>).</summary>
    public static Ingredient SodiumCitrate => BuiltInCatalogue.Get("sodium-citrate");

    /// <summary>Sodium hexametaphosphate (<c>sodium-hexametaphosphate</c>).</summary>
    public static Ingredient SodiumHexametaphosphate => BuiltInCatalogue.Get("sodium-hexametaphosphate");

    /// <summary>Tetrasodium pyrophosphate (<c>tetrasodium-pyrophosphate</c>).</summary>
    public static Ingredient TetrasodiumPyrophosphate => BuiltInCatalogue.Get("tetrasodium-pyrophosphate");

    /// <summary>Beef consommé (<c>beef-consomme</c>).</summary>
    public static Ingredient BeefConsomme => BuiltInCatalogue.Get("beef-consomme");

    /// <summary>Beef stock (<c>beef-stock</c>).</summary>
    public static Ingredient BeefStock => BuiltInCatalogue.Get("beef-stock");

    /// <summary>Black tea (<c>black-tea</c>).</summary>
    public static Ingredient BlackTea => BuiltInCatalogue.Get("black-tea");

    /// <summary>Chicken stock (<c>chicken-stock</c>).</summary>
    public static Ingredient ChickenStock => BuiltInCatalogue.Get("chicken-stock");

    /// <summary>Filter coffee (<c>coffee-filter</c>).</summary>
    public static Ingredient CoffeeFilter => BuiltInCatalogue.Get("coffee-filter");

    /// <summary>Katsuobushi and kombu dashi (<c>dashi-katsuo-kombu</c>).</summary>
    public static Ingredient DashiKatsuoKombu => BuiltInCatalogue.Get("dashi-katsuo-kombu");

    /// <summary>Kombu dashi (<c>dashi-kombu</c>).</summary>
    public static Ingredient DashiKombu => BuiltInCatalogue.Get("dashi-kombu");

    /// <summary>Shiitake dashi (<c>dashi-shiitake</c>).</summary>
    public static Ingredient DashiShiitake => BuiltInCatalogue.Get("dashi-shiitake");

    /// <summary>Espresso (<c>espresso</c>).</summary>
    public static Ingredient Espresso => BuiltInCatalogue.Get("espresso");

    /// <summary>Fish stock (<c>fish-stock</c>).</summary>
    public static Ingredient FishStock => BuiltInCatalogue.Get("fish-stock");

    /// <summary>Green tea (<c>green-tea</c>).</summary>
    public static Ingredient GreenTea => BuiltInCatalogue.Get("green-tea");

    /// <summary>Gyokuro tea (<c>gyokuro-tea</c>).</summary>
    public static Ingredient GyokuroTea => BuiltInCatalogue.Get("gyokuro-tea");

    /// <summary>Hibiscus infusion (<c>hibiscus-infusion</c>).</summary>
    public static Ingredient HibiscusInfusion => BuiltInCatalogue.Get("hibiscus-infusion");

    /// <summary>Mint infusion (<c>mint-infusion</c>).</summary>
    public static Ingredient MintInfusion => BuiltInCatalogue.Get("mint-infusion");

    /// <summary>Vegetable stock (<c>vegetable-stock</c>).</summary>
    public static Ingredient VegetableStock => BuiltInCatalogue.Get("vegetable-stock");

    /// <summary>Dextrose monohydrate (<c>dextrose</c>).</summary>
    public static Ingredient Dextrose => BuiltInCatalogue.Get("dextrose");

    /// <summary>Fructose-glucose syrup (<c>fructose-glucose-syrup</c>).</summary>
    public static Ingredient FructoseGlucoseSyrup => BuiltInCatalogue.Get("fructose-glucose-syrup");

    /// <summary>Fructose (<c>fructose</c>).</summary>
    public static Ingredient Fructose => BuiltInCatalogue.Get("fructose");

    /// <summary>Glucose syrup, high maltose (<c>glucose-syrup-maltose</c>).</summary>
    public static Ingredient GlucoseSyrupMaltose => BuiltInCatalogue.Get("glucose-syrup-maltose");

    /// <summary>Glucose syrup (<c>glucose-syrup</c>).</summary>
    public static Ingredient GlucoseSyrup => BuiltInCatalogue.Get("glucose-syrup");

    /// <summary>Glycerol (<c>glycerol</c>).</summary>
    public static Ingredient Glycerol => BuiltInCatalogue.Get("glycerol");

    /// <summary>Honey (<c>honey</c>).</summary>
    public static Ingredient Honey => BuiltInCatalogue.Get("honey");

    /// <summary>Invert sugar syrup (<c>invert-sugar-syrup</c>).</summary>
    public static Ingredient InvertSugarSyrup => BuiltInCatalogue.Get("invert-sugar-syrup");

    /// <summary>Isomalt (<c>isomalt</c>).</summary>
    public static Ingredient Isomalt => BuiltInCatalogue.Get("isomalt");

    /// <summary>Sorbitol (<c>sorbitol</c>).</summary>
    public static Ingredient Sorbitol => BuiltInCatalogue.Get("sorbitol");

    /// <summary>Sucrose (<c>sucrose</c>).</summary>
    public static Ingredient Sucrose => BuiltInCatalogue.Get("sucrose");

    /// <summary>Bottled still water (<c>water-bottled</c>).</summary>
    public static Ingredient WaterBottled => BuiltInCatalogue.Get("water-bottled");

    /// <summary>Distilled water (<c>water-distilled</c>).</summary>
    public static Ingredient WaterDistilled => BuiltInCatalogue.Get("water-distilled");

    /// <summary>Hard tap water (<c>water-hard</c>).</summary>
    public static Ingredient WaterHard => BuiltInCatalogue.Get("water-hard");

    /// <summary>Soft tap water (<c>water-soft</c>).</summary>
    public static Ingredient WaterSoft => BuiltInCatalogue.Get("water-soft");

    /// <summary>Sparkling mineral water, calcium rich (<c>water-sparkling-calcium-rich</c>).</summary>
    public static Ingredient WaterSparklingCalciumRich => BuiltInCatalogue.Get("water-sparkling-calcium-rich");

    /// <summary>Water (<c>water</c>).</summary>
    public static Ingredient Water => BuiltInCatalogue.Get("water");
}
