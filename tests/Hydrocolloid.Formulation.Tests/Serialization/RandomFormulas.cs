using CsCheck;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Serialization;

/// <summary>Random formulas that use every part of the model.</summary>
internal static class RandomFormulas
{
    private static readonly string[] s_words = ["set", "Schale № 2", "gelée", "a \"b\" \\ / ~", "😀 top", "tab\there", "<&'+>", "\u2028 line"];

    private static readonly string[] s_extensions =
        ["{}", """{"a":1.50,"b":[true,null,{"c":"é\n\u0007"}]}""", """{"~/":{"x":1e-7,"":[[[]]]}}""", """{"n":12345678901234567890,"e":1E+400}"""];

    private static readonly double[] s_numbers = [0, -0.0, 4.9e-324, 0.1, 1e-300, 12.345678901234567, 1d / 3];

    public static Gen<Formula> Any { get; } = Gen.Int.Select(seed => Make(new Dice(seed))).Where(f => f is not null).Select(f => f!);

    private static Formula? Make(Dice dice)
    {
        FormulaBuilder builder = Formula.Named(dice.Word());
        var labels = new List<string>();
        var pool = new List<Ingredient>();
        Ingredient Next()
        {
            Ingredient ingredient = MakeIngredient(dice, pool.Count);
            pool.Add(ingredient);
            return ingredient;
        }

        Action<LineBuilder>? Details(Ingredient ingredient)
        {
            string? label = dice.Chance(4) || labels.Contains(ingredient.Id) ? dice.Word() + labels.Count : null;
            labels.Add(label ?? ingredient.Id);
            int what = dice.Next(16);
            bool isPieces = dice.Chance(6);
            return label is null && what > 8 && !isPieces ? null : l =>
            {
                _ = label is null ? l : l.Labelled(label);
                _ = isPieces ? l.Pieces() : l;
                _ = (what & 1) == 0 ? l.At(dice.Temperature()) : l;
                _ = (what & 2) == 0 ? l.Measured(dice.Measured()) : l;
                _ = (what & 4) == 0 ? l.WithExtensions(dice.Extensions()) : l;
            };
        }

        int parts = 1 + dice.Next(3);
        double rest = 100;
        builder.Base(b =>
        {
            for (int i = 0; i < parts; i++)
            {
                double share = i == parts - 1 ? rest : dice.Double() * rest;
                rest -= share;
                Ingredient ingredient = Next();
                b.Share(ingredient, share, Details(ingredient));
            }
        });
        int phases = dice.Next(4);
        for (int p = 0; p < phases; p++)
        {
            builder.Then(dice.Word() + p, phase =>
            {
                int lines = 1 + dice.Next(3);
                for (int i = 0; i < lines; i++)
                {
                    Ingredient ingredient = dice.Chance(5) ? pool[dice.Next(pool.Count)] : Next();
                    DoseReference reference = dice.Next(6) switch
                    {
                        0 => DoseReference.Base,
                        1 => DoseReference.Preceding,
                        2 => DoseReference.Total,
                        3 => DoseReference.Water,
                        _ => DoseReference.Line(labels[dice.Next(labels.Count)]),
                    };
                    phase.Add(ingredient, Dose.Percent(dice.Amount() / 4).Of(reference), Details(ingredient));
                }
            });
        }

        if (dice.Chance(2))
        {
            builder.Process(dice.Process(labels[0]));
        }

        if (dice.Chance(2))
        {
            builder.Serve(dice.Service());
        }

        builder.WithExtensions(dice.Chance(3) ? dice.Extensions() : null);
        return builder.TryBuild(out Formula? formula, out _) ? formula : null;
    }

    private static Ingredient MakeIngredient(Dice dice, int index)
    {
        Ingredient known = Catalogue.BuiltIn.All[dice.Next(Catalogue.BuiltIn.All.Count)];
        string id = $"own-{index}";
        return dice.Next(8) switch
        {
            0 => dice.Describe(Ingredient.Own(id, dice.Word())),
            1 => dice.Describe(known.As(id, dice.Word())),
            2 => Ingredient.Unknown("unknown-" + index),
            3 => dice.Describe(dice.Describe(Ingredient.Own(id + "-root", dice.Word())).As(id, dice.Word())),
            4 => dice.Describe(known).As(id, known.Name),
            5 => dice.Describe(known),
            _ => known,
        };
    }

    internal sealed class Dice(int seed)
    {
        private readonly Random _random = new(seed);

        public int Next(int count) => _random.Next(count);

        public double Double() => _random.NextDouble();

        public bool Chance(int of) => _random.Next(of) == 0;

        public double Amount() => Chance(4) ? s_numbers[Next(s_numbers.Length)] : Chance(3) ? Next(1000) / 100.0 : Double() * Math.Pow(10, Next(7) - 5);

        public string Word() => s_words[Next(s_words.Length)];

        public ExtensionData Extensions() => ExtensionData.Parse(s_extensions[Next(s_extensions.Length)]);

        public Temperature Temperature() => UnitsNet.Temperature.FromDegreesCelsius(Chance(2) ? Next(100) : Double() * 1200 - 273);

        public Measurements Measured() => new()
        {
            Ph = Chance(2) ? Double() * 14 : null,
            Brix = Chance(2) ? Double() * 100 : null,
            Density = Chance(2) ? Density.FromKilogramsPerCubicMeter(100 + Double() * 2000) : null,
        };

        public Loss Loss() => Next(3) switch
        {
            0 => Formulation.Loss.None,
            1 => Formulation.Loss.Percent(Double() * 99),
            _ => Formulation.Loss.Of(Mass.FromGrams(Double() * 100)),
        };

        public ProcessPlan Process(string label) => new()
        {
            Carriers = Chance(3) ? ValueList<string>.From([label]) : default,
            Altitude = Chance(2) ? Length.FromMeters(Double() * 9000 - 500) : null,
            Losses = Chance(3) ? Losses.None : new Losses { Evaporation = Loss(), ToppedUp = Chance(2), Straining = Loss(), Transfer = Loss(), Trimming = Loss() },
            Mould = Chance(2) ? new MouldPlan(Word(), Chance(2) ? Volume.FromMilliliters(Double() * 1e4) : null) : null,
            CastAt = Chance(2) ? Temperature() : null,
            Cooling = Chance(2) ? ValueList<CoolingStage>.From([new CoolingStage(Word(), Temperature(), Duration.FromSeconds(Double() * 1e5)), new CoolingStage(Word(), Temperature())]) : default,
        };

        public ServicePlan Service() => new()
        {
            Texture = Chance(2) ? (Texture)Next(6) : null,
            ServedAt = Chance(2) ? Temperature() : null,
            HeldFor = Chance(2) ? Duration.FromSeconds(Double() * 1e4) : null,
            StoredFor = Chance(2) ? Duration.FromSeconds(Next(100) * 3600) : null,
            Covered = Chance(2) ? Chance(2) : null,
            Frozen = Chance(2) ? Chance(2) : null,
            Portion = Chance(2) ? Mass.FromGrams(0.001 + Double() * 100) : null,
        };

        public Ingredient Describe(Ingredient ingredient)
        {
            ingredient = Chance(3) ? ingredient.WithComposition(Composition.Per100Grams(water: Double() * 60, sugars: Chance(2) ? Double() * 30 : null, fat: Chance(2) ? 0 : null, sodium: Chance(2) ? Double() * 1000 : null)) : ingredient;
            ingredient = Chance(3) ? ingredient.WithPh(Double() * 14) : ingredient;
            ingredient = Chance(3) ? ingredient.WithBrix(Double() * 100) : ingredient;
            ingredient = Chance(4) ? ingredient.WithCategory(Chance(2) ? "juice" : "sweetener") : ingredient;
            ingredient = Chance(4) ? ingredient.WithTitratableAcidity(Double() * 10, Chance(2) ? "malic" : "mixed") : ingredient;
            ingredient = Chance(4) ? ingredient.WithTannin(Chance(2) ? TanninLevel.None : TanninLevel.High) : ingredient;
            ingredient = Chance(4) ? ingredient.WithProtease("bromelain", Chance(2), Chance(2)) : ingredient;
            ingredient = Chance(4) ? ingredient.WithSynonyms([.. Enumerable.Range(0, Next(3)).Select(_ => Word())]) : ingredient;
            ingredient = Chance(4) ? ingredient.WithMilkProtein(Chance(2), Chance(2)) : ingredient;
            ingredient = Chance(3) ? ingredient.WithDensity(Density.FromKilogramsPerCubicMeter(900 + Double() * 300)) : ingredient;
            ingredient = Chance(3) ? ingredient.WithAllergens([.. Enumerable.Range(0, Next(3)).Select(_ => (Allergen)Next(14))]) : ingredient;
            bool vegan = Chance(2);
            ingredient = Chance(3) ? ingredient.WithDiet(vegan, vegan || Chance(2)) : ingredient;
            ingredient = Chance(3) ? ingredient.WithGrade(new Grade((GradeScale)Next(3), 1 + Double() * 1000)) : ingredient;
            return Chance(4) ? ingredient.WithExtensions(Extensions()) : ingredient;
        }
    }
}
