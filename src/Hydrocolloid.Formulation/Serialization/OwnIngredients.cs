using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>An ingredient of one's own: from its part of a document, and back.</summary>
internal static class OwnIngredients
{
    private const string InactiveEnzymes = "inactive";

    /// <summary>States on an ingredient all that the document says about it.</summary>
    public static Ingredient Describe(Ingredient ingredient, FormulaDto.Own dto, in DocumentPlace at, DocumentChecks checks)
    {
        if (dto.Synonyms is { } names)
        {
            ingredient = ingredient.WithSynonyms(Synonyms(names, at, checks));
        }

        if (dto.Composition is { } parts && Composition(parts, at, checks) is { } composition)
        {
            ingredient = ingredient.WithComposition(composition);
        }

        if (checks.Number(dto.Ph, 0, 14, "pH", at, "/ph") is { } ph)
        {
            ingredient = ingredient.WithPh(ph);
        }

        if (checks.Number(dto.Brix, 0, 100, "°Brix", at, "/brix") is { } brix)
        {
            ingredient = ingredient.WithBrix(brix);
        }

        if (checks.Quantity(dto.Density, QuantityKind.Density, 100, 30_000, at, "/density") is { } density)
        {
            ingredient = ingredient.WithDensity(Density.FromKilogramsPerCubicMeter(density));
        }

        if (dto.Category is { } category)
        {
            if (Words.IsCategory(category))
            {
                ingredient = ingredient.WithCategory(category);
            }
            else
            {
                checks.Unknown(category, Words.CategoryList, at, "/category");
            }
        }

        if (dto.TitratableAcidity is { } acidity)
        {
            double? percent = checks.Number(acidity.Percent, 0, 100, "%", at, "/titratableAcidity/percent");
            if (!Words.IsTitratedAcid(acidity.As))
            {
                checks.Unknown(acidity.As, Words.TitratedAcidList, at, "/titratableAcidity/as");
            }
            else if (percent is { } acid)
            {
                ingredient = ingredient.WithTitratableAcidity(acid, acidity.As);
            }
        }

        if (dto.Tannin is { } tannin)
        {
            if (Words.TryTanninLevel(tannin, out TanninLevel level))
            {
                ingredient = ingredient.WithTannin(level);
            }
            else
            {
                checks.Unknown(tannin, Words.TanninList, at, "/tannin");
            }
        }

        if (dto.Protease is { } protease && checks.Words(protease.Enzyme, at, "/protease/enzyme") is { } enzyme)
        {
            ingredient = ingredient.WithProtease(enzyme, protease.Active, protease.Disputed);
        }

        if (dto.MilkProtein is { } milk)
        {
            ingredient = ingredient.WithMilkProtein(milk.Casein, milk.Whey);
        }

        if (dto.Allergens is { } words)
        {
            ingredient = ingredient.WithAllergens(Allergens(words, at, checks));
        }

        if (dto.Vegan is { } vegan && dto.Vegetarian is { } vegetarian && (vegetarian || !vegan))
        {
            ingredient = ingredient.WithDiet(vegan, vegetarian);
        }
        else if (dto.Vegan is not null || dto.Vegetarian is not null)
        {
            checks.Report("diet-unclear", at, dto.Vegan is null ? "/vegetarian" : "/vegan", dto.Vegan is null || dto.Vegetarian is null
                ? "State both vegan and vegetarian, or neither: what is not stated is not known."
                : "What is vegan is vegetarian.");
        }

        if (dto.Enzymes is { } enzymes)
        {
            if (enzymes == InactiveEnzymes)
            {
                ingredient = ingredient.WithoutActiveProtease();
            }
            else
            {
                checks.Unknown(enzymes, InactiveEnzymes, at, "/enzymes");
            }
        }

        if (dto.Grade is { } grade)
        {
            if (!Words.TryScale(grade.Scale, out GradeScale scale))
            {
                checks.Unknown(grade.Scale, Words.ScaleList, at, "/grade/scale");
            }
            else if (checks.Number(grade.Value, double.Epsilon, Grade.MaxValue, Words.Of(scale), at, "/grade/value") is { } value)
            {
                ingredient = ingredient.WithGrade(new Grade(scale, value));
            }
        }

        return checks.Extensions(dto.Extensions, at, "/extensions") is { } extensions ? ingredient.WithExtensions(extensions) : ingredient;
    }

    /// <summary>What a document says about an ingredient beyond one that it is like.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="like">The one it is like; null if none.</param>
    public static FormulaDto.Own Differences(Ingredient ingredient, Ingredient? like)
    {
        bool isChanged = like is not null && ingredient.BasedOn is null;
        var dto = new FormulaDto.Own { Id = ingredient.Id, Name = isChanged ? null! : ingredient.Name, Like = like?.Id! };
        if (ingredient.Synonyms != (like?.Synonyms ?? default))
        {
            dto.Synonyms = [.. ingredient.Synonyms];
        }

        if (ingredient.Composition is { } composition && composition != like?.Composition)
        {
            dto.Composition = Composition(composition.Value);
        }

        if (ingredient.Ph is { } ph && ph != like?.Ph)
        {
            dto.Ph = ph.Value;
        }

        if (ingredient.Brix is { } brix && brix != like?.Brix)
        {
            dto.Brix = brix.Value;
        }

        if (ingredient.DensityKgPerM3 is { } density && density != like?.DensityKgPerM3)
        {
            dto.Density = new FormulaDto.Quantity { Value = density.Value, Unit = DocumentChecks.BaseCode(QuantityKind.Density) };
        }

        if (ingredient.Category != like?.Category)
        {
            dto.Category = ingredient.Category!;
        }

        if (ingredient.TitratableAcidity is { } acidity && acidity != like?.TitratableAcidity)
        {
            dto.TitratableAcidity = new FormulaDto.AcidityPart { Percent = acidity.Value.Percent, As = acidity.Value.As };
        }

        if (ingredient.Tannin is { } tannin && tannin != like?.Tannin)
        {
            dto.Tannin = Words.Of(tannin.Value);
        }

        if (ingredient.MilkProtein is { } milk && milk != like?.MilkProtein)
        {
            dto.MilkProtein = new FormulaDto.MilkProteinPart { Casein = milk.Value.Casein, Whey = milk.Value.Whey };
        }

        if (ingredient.Allergens is { } allergens && allergens != like?.Allergens)
        {
            dto.Allergens = [.. allergens.Value.Select(Words.Of)];
        }

        if (ingredient.Diet is { } diet && (diet != like?.Diet || ingredient.DietCitation != like.DietCitation))
        {
            (dto.Vegan, dto.Vegetarian) = (diet.Vegan, diet.Vegetarian);
        }

        if (ingredient.Protease is { } protease && protease != like?.Protease)
        {
            // One that was heated is told from one that is stated anew.
            if (like?.Protease is { Value.IsActive: true } active && protease.Value == active.Value with { IsActive = false })
            {
                dto.Enzymes = InactiveEnzymes;
            }
            else
            {
                dto.Protease = new FormulaDto.ProteasePart { Enzyme = protease.Value.Enzyme, Active = protease.Value.IsActive, Disputed = protease.Value.IsDisputed };
            }
        }

        if (ingredient.Grade is { } grade && grade != like?.Grade)
        {
            dto.Grade = new FormulaDto.GradePart { Scale = Words.Of(grade.Scale), Value = grade.Value };
        }

        if (ingredient.Extensions is { } extensions && !extensions.Equals(like?.Extensions))
        {
            dto.Extensions = extensions.Json;
        }

        return dto;
    }

    private static Composition? Composition(FormulaDto.CompositionPart parts, in DocumentPlace at, DocumentChecks checks)
    {
        int before = checks.Problems.Count;
        double? water = Grams(parts.Water, at, "water", checks), sugars = Grams(parts.Sugars, at, "sugars", checks),
            other = Grams(parts.OtherCarbohydrate, at, "otherCarbohydrate", checks), fibre = Grams(parts.Fibre, at, "fibre", checks),
            protein = Grams(parts.Protein, at, "protein", checks), fat = Grams(parts.Fat, at, "fat", checks), ash = Grams(parts.Ash, at, "ash", checks),
            ethanol = Grams(parts.Ethanol, at, "ethanol", checks), acids = Grams(parts.OrganicAcids, at, "organicAcids", checks);
        double? calcium = Milligrams(parts.Calcium, at, "calcium", checks), potassium = Milligrams(parts.Potassium, at, "potassium", checks),
            sodium = Milligrams(parts.Sodium, at, "sodium", checks), magnesium = Milligrams(parts.Magnesium, at, "magnesium", checks);
        if (checks.Problems.Count > before)
        {
            return null;
        }

        if (Formulation.Composition.SumFault(water, sugars, other, fibre, protein, fat, ash, ethanol, acids, calcium, potassium, sodium, magnesium) is { } fault)
        {
            checks.Report("composition-sum", at, "/compositionPer100g", fault);
            return null;
        }

        return Formulation.Composition.Per100Grams(water, sugars, other, fibre, protein, fat, ash, ethanol, acids, calcium, potassium, sodium, magnesium);
    }

    private static FormulaDto.CompositionPart Composition(Composition value) => new()
    {
        Water = value.WaterPercent ?? double.NaN,
        Sugars = value.SugarsPercent ?? double.NaN,
        OtherCarbohydrate = value.OtherCarbohydratePercent ?? double.NaN,
        Fibre = value.FibrePercent ?? double.NaN,
        Protein = value.ProteinPercent ?? double.NaN,
        Fat = value.FatPercent ?? double.NaN,
        Ash = value.AshPercent ?? double.NaN,
        Ethanol = value.EthanolPercent ?? double.NaN,
        OrganicAcids = value.OrganicAcidsPercent ?? double.NaN,
        Calcium = value.CalciumMg ?? double.NaN,
        Potassium = value.PotassiumMg ?? double.NaN,
        Sodium = value.SodiumMg ?? double.NaN,
        Magnesium = value.MagnesiumMg ?? double.NaN,
    };

    private static double? Grams(double value, in DocumentPlace at, string part, DocumentChecks checks)
        => checks.Number(value, 0, 100, "g per 100 g", at, "/compositionPer100g/" + part);

    private static double? Milligrams(double value, in DocumentPlace at, string part, DocumentChecks checks)
        => checks.Number(value, 0, 100_000, "mg per 100 g", at, "/compositionPer100g/" + part);

    private static string[] Synonyms(List<string> names, in DocumentPlace at, DocumentChecks checks)
    {
        var synonyms = new List<string>(names.Count);
        for (int i = 0; i < names.Count; i++)
        {
            string path = "/synonyms/" + Numbers.Exact(i);
            if (synonyms.Contains(names[i]))
            {
                checks.Report("synonym-repeated", at, path, $"{UnitTable.Quote(names[i])} is stated twice.");
            }
            else if (checks.Words(names[i], at, path) is { } name)
            {
                synonyms.Add(name);
            }
        }

        return [.. synonyms];
    }

    private static Allergen[] Allergens(List<string> words, in DocumentPlace at, DocumentChecks checks)
    {
        var allergens = new List<Allergen>(words.Count);
        for (int i = 0; i < words.Count; i++)
        {
            if (!Words.TryAllergen(words[i], out Allergen allergen))
            {
                checks.Unknown(words[i], Words.AllergenList, at, "/allergens/" + Numbers.Exact(i));
            }
            else if (allergens.Contains(allergen))
            {
                checks.Report("allergen-repeated", at, "/allergens/" + Numbers.Exact(i), $"\"{words[i]}\" is stated twice.");
            }
            else
            {
                allergens.Add(allergen);
            }
        }

        return [.. allergens];
    }
}
