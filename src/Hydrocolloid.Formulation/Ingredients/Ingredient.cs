using System.Diagnostics;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>
/// Anything that is weighed into a formula: a liquid, a solid, a seasoning, a hydrocolloid. Immutable, equal by content.
/// The built-in ones are in <see cref="Pantry"/> and <see cref="Hydrocolloids"/>; own ones come from <see cref="Own"/> or from
/// <see cref="As"/> on an existing one.
/// </summary>
[DebuggerDisplay("{Id}")]
public sealed record Ingredient
{
    private static readonly Lazy<IngredientFacts> NoFacts = new(() => IngredientFacts.None);

    private readonly string? _name;

    private readonly Lazy<IngredientFacts> _facts;

    internal Ingredient(string id, string name, Lazy<IngredientFacts> facts)
        : this(id, facts) => _name = name;

    /// <summary>An entry that is named by its facts.</summary>
    internal Ingredient(string id, Lazy<IngredientFacts> facts)
    {
        Id = id;
        _facts = facts;
    }

    /// <summary>Kebab-case id, such as <c>pear-juice</c>.</summary>
    public string Id { get; private init; }

    /// <summary>Name for people.</summary>
    public string Name
    {
        get => _name ?? Facts.Name!;
        private init => _name = value;
    }

    /// <summary>False if a document named an id that no catalogue knows: the ingredient is kept, and only what needs its data is missing.</summary>
    public bool IsKnown { get; private init; } = true;

    /// <summary>The catalogue entry this one was made from by <see cref="As"/>; null if none.</summary>
    public Ingredient? BasedOn { get; private init; }

    /// <summary>Other names.</summary>
    public ValueList<string> Synonyms => Facts.Synonyms;

    /// <summary>What shelf it stands on, in one word, such as <c>juice</c> or <c>sweetener</c>; null if not stated.</summary>
    public string? Category => Facts.Category;

    /// <summary>The record the entry was made from; null for an own ingredient.</summary>
    public string? Provenance => Facts.Provenance;

    /// <summary>The numbers it is declared under, if it is an additive.</summary>
    public AdditiveNumbers? Additive => Facts.Additive;

    /// <summary>What it is made from; null if not stated.</summary>
    public Origin? Origin => Facts.Origin;

    /// <summary>Facts about diets; null if not stated.</summary>
    public DietaryFacts? Diet => Facts.Diet;

    /// <summary>Where the dietary facts come from; null if not stated.</summary>
    public Citation? DietCitation => Facts.DietCitation;

    /// <summary>The allergens it contains; null if not known, which is not the same as none.</summary>
    public Cited<ValueList<Allergen>>? Allergens => Facts.Allergens;

    /// <summary>What 100 g hold; null if not known.</summary>
    public Cited<Composition>? Composition => Facts.Composition;

    /// <summary>Typical pH, 0 to 14; null if not known.</summary>
    public Cited<double>? Ph => Facts.Ph;

    /// <summary>Range of pH over published readings; null if not known.</summary>
    public Cited<NumberRange>? PhRange => Facts.PhRange;

    /// <summary>Soluble solids in °Brix (g per 100 g); null if not known.</summary>
    public Cited<double>? Brix => Facts.Brix;

    /// <summary>Density at 20 °C; null if not known.</summary>
    public Density? DensityAt20C => DensityKgPerM3 is { } figure ? Density.FromKilogramsPerCubicMeter(figure.Value) : null;

    /// <summary>Where the density comes from; null if there is none.</summary>
    public Citation? DensityCitation => DensityKgPerM3?.Citation;

    /// <summary>Titratable acidity; null if not known.</summary>
    public Cited<TitratableAcidity>? TitratableAcidity => Facts.TitratableAcidity;

    /// <summary>How much tannin it holds; null if not known.</summary>
    public Cited<TanninLevel>? Tannin => Facts.Tannin;

    /// <summary>The enzyme it holds that cuts proteins; null if none is known.</summary>
    public Cited<Protease>? Protease => Facts.Protease;

    /// <summary>Whether it holds the proteins of milk; null if not known.</summary>
    public Cited<MilkProtein>? MilkProtein => Facts.MilkProtein;

    /// <summary>The strength of this lot; null if not stated.</summary>
    public Grade? Grade { get; private init; }

    /// <summary>Cautions for handling and serving.</summary>
    public ValueList<Cited<string>> Cautions => Facts.Cautions;

    /// <summary>How it gels or thickens; null for anything that is not a hydrocolloid.</summary>
    public HydrocolloidProfile? Profile => Facts.Profile;

    /// <summary>An integrator's own data, never read by the library; null if none.</summary>
    public ExtensionData? Extensions { get; private init; }

    /// <summary>
    /// Water, % by weight; null if unknown. A hydrocolloid whose composition is not stated counts as dry: its powder holds some 8–15 % of
    /// water (gelatin: McGee, On Food and Cooking), which at its doses is next to nothing in the mix.
    /// </summary>
    internal double? WaterPercent => Composition?.Value.WaterPercent ?? (Profile is null ? null : 0);

    internal bool IsPlainWater => Category == "water";

    /// <summary>Crystalline sugar, as it is blended with powders: syrups and honey hold less sugar.</summary>
    internal bool IsDrySugar => Category == "sweetener" && Composition?.Value.SugarsPercent >= 85;

    internal Cited<double>? DensityKgPerM3 => Facts.DensityKgPerM3;

    internal IngredientFacts Facts
    {
        get => _facts.Value;
        private init => _facts = new Lazy<IngredientFacts>(() => value);
    }

    /// <summary>Starts an ingredient of one's own. Nothing is known of it until it is stated.</summary>
    /// <param name="id">Kebab-case id.</param>
    /// <param name="name">Name for people.</param>
    /// <returns>The ingredient.</returns>
    /// <exception cref="ArgumentException">The id is not kebab-case, or the name is blank.</exception>
    public static Ingredient Own(string id, string name) => new(Ids.Check(id, nameof(id)), Guard.NotBlank(name), NoFacts);

    /// <summary>An own ingredient with all the facts of this one; state what differs with the <c>With</c> methods.</summary>
    /// <param name="id">Kebab-case id of the new ingredient.</param>
    /// <param name="name">Its name.</param>
    /// <returns>The new ingredient.</returns>
    /// <exception cref="ArgumentException">The id is not kebab-case, or the name is blank.</exception>
    public Ingredient As(string id, string name)
        => this with { Id = Ids.Check(id, nameof(id)), Name = Guard.NotBlank(name), BasedOn = BasedOn ?? this };

    /// <summary>An entry that states what differs from this one.</summary>
    internal Ingredient AsDescribed(string id, string name, IngredientFacts facts) => As(id, name) with { Facts = facts };

    /// <summary>States the composition, replacing what was known.</summary>
    /// <param name="composition">The composition, per 100 g.</param>
    /// <returns>The changed ingredient.</returns>
    public Ingredient WithComposition(Composition composition)
        => this with { Facts = Facts with { Composition = new Cited<Composition>(Guard.NotNull(composition), Citation.Measured) } };

    /// <summary>States a measured pH.</summary>
    /// <param name="ph">pH, 0 to 14.</param>
    /// <returns>The changed ingredient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pH is not between 0 and 14.</exception>
    public Ingredient WithPh(double ph)
        => this with { Facts = Facts with { Ph = new Cited<double>(Guard.InRange(ph, 0, 14, "pH"), Citation.Measured), PhRange = null } };

    /// <summary>States measured soluble solids.</summary>
    /// <param name="brix">°Brix, 0 to 100.</param>
    /// <returns>The changed ingredient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not between 0 and 100.</exception>
    public Ingredient WithBrix(double brix)
        => this with { Facts = Facts with { Brix = new Cited<double>(Guard.InRange(brix, 0, 100, "°Brix"), Citation.Measured) } };

    /// <summary>States a measured density at 20 °C.</summary>
    /// <param name="density">The density, 100 to 30 000 kg/m³.</param>
    /// <returns>The changed ingredient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is outside its range.</exception>
    public Ingredient WithDensity(Density density)
        => this with { Facts = Facts with { DensityKgPerM3 = new Cited<double>(Guard.InRange(Guard.KilogramsPerCubicMetre(density), 100, 30_000, "kg/m³", nameof(density)), Citation.Measured) } };

    /// <summary>States what kind of ingredient it is, such as <c>juice</c> or <c>sweetener</c>: labels, weighing and methods go by it.</summary>
    /// <param name="category">One of the categories of docs/catalogue-format.md.</param>
    /// <returns>The changed ingredient.</returns>
    /// <exception cref="ArgumentException">It is no category.</exception>
    public Ingredient WithCategory(string category)
        => Words.IsCategory(Guard.NotNull(category)) ? this with { Facts = Facts with { Category = category } }
            : throw new ArgumentException($"'{category}' is not a category; there are {Words.CategoryList}.", nameof(category));

    /// <summary>States other names, replacing those that were known: a catalogue finds it by them too.</summary>
    /// <param name="synonyms">The names; one given twice counts once; none takes them off.</param>
    /// <returns>The changed ingredient.</returns>
    /// <exception cref="ArgumentException">A name is blank.</exception>
    public Ingredient WithSynonyms(params string[] synonyms)
        => this with { Facts = Facts with { Synonyms = ValueList<string>.From(Guard.NotNull(synonyms).Select(s => Guard.NotBlank(s, nameof(synonyms))).Distinct(StringComparer.Ordinal)) } };

    /// <summary>States a measured titratable acidity; with the pH it says how strongly a liquid holds its pH.</summary>
    /// <param name="percent">Acid, % by weight of the ingredient (g per 100 g); 0 to 100.</param>
    /// <param name="acid">The acid it is expressed as: <c>citric</c>, <c>malic</c>, <c>tartaric</c>, <c>lactic</c>, <c>acetic</c>, <c>oxalic</c>, <c>succinic</c>, <c>gluconic</c>; <c>mixed</c> for the sum of several.</param>
    /// <returns>The changed ingredient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is not between 0 and 100.</exception>
    /// <exception cref="ArgumentException">It is no such acid.</exception>
    public Ingredient WithTitratableAcidity(double percent, string acid)
        => Words.IsTitratedAcid(Guard.NotNull(acid))
            ? this with { Facts = Facts with { TitratableAcidity = new Cited<TitratableAcidity>(new TitratableAcidity(Guard.InRange(percent, 0, 100, "%"), acid), Citation.Measured) } }
            : throw new ArgumentException($"'{acid}' is no acid that an acidity is expressed as; there are {Words.TitratedAcidList}.", nameof(acid));

    /// <summary>States how much tannin it holds.</summary>
    /// <param name="level">The level, by total phenols: low 50 to 500 mg/L, moderate to 1500 mg/L, high above.</param>
    /// <returns>The changed ingredient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is no defined level.</exception>
    public Ingredient WithTannin(TanninLevel level)
        => this with { Facts = Facts with { Tannin = new Cited<TanninLevel>((TanninLevel)Guard.Defined((int)level, (int)TanninLevel.High, nameof(level)), Citation.Measured) } };

    /// <summary>States an enzyme that cuts proteins, gelatin among them.</summary>
    /// <param name="enzyme">Its name, such as <c>bromelain</c>.</param>
    /// <param name="isActive">Whether it is active: in the raw fruit yes, in the heated no.</param>
    /// <param name="isDisputed">Whether sources disagree that it is strong enough to matter: a rule then warns instead of forbidding.</param>
    /// <returns>The changed ingredient.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public Ingredient WithProtease(string enzyme, bool isActive = true, bool isDisputed = false)
        => this with { Facts = Facts with { Protease = new Cited<Protease>(new Protease(Guard.NotBlank(enzyme), isActive, isDisputed), Citation.Measured) } };

    /// <summary>States whether it holds the proteins of milk.</summary>
    /// <param name="casein">Whether it holds casein.</param>
    /// <param name="whey">Whether it holds whey protein.</param>
    /// <returns>The changed ingredient.</returns>
    public Ingredient WithMilkProtein(bool casein, bool whey)
        => this with { Facts = Facts with { MilkProtein = new Cited<MilkProtein>(new MilkProtein(casein, whey), Citation.Measured) } };

    /// <summary>States the allergens it contains; none if called without any.</summary>
    /// <param name="allergens">The allergens.</param>
    /// <returns>The changed ingredient.</returns>
    public Ingredient WithAllergens(params Allergen[] allergens)
        => this with { Facts = Facts with { Allergens = new Cited<ValueList<Allergen>>(ValueList<Allergen>.From(Guard.NotNull(allergens).Select(Defined).Distinct().OrderBy(a => a)), Citation.Measured) } };

    /// <summary>States whether it suits a vegan and a vegetarian diet.</summary>
    /// <param name="vegan">Free of anything from animals.</param>
    /// <param name="vegetarian">Free of anything from slaughtered animals.</param>
    /// <returns>The changed ingredient.</returns>
    /// <exception cref="ArgumentException">Stated to be vegan but not vegetarian.</exception>
    public Ingredient WithDiet(bool vegan, bool vegetarian)
        => vegan && !vegetarian ? throw new ArgumentException("What is vegan is vegetarian.", nameof(vegetarian))
            : this with { Facts = Facts with { Diet = new DietaryFacts(vegan, vegetarian), DietCitation = Citation.Measured } };

    /// <summary>States that it has been heated until its protein-cutting enzyme no longer acts; without effect if none is known.</summary>
    /// <returns>The changed ingredient.</returns>
    public Ingredient WithoutActiveProtease()
        => Protease is { Value.IsActive: true } protease
            ? this with { Facts = Facts with { Protease = new Cited<Protease>(protease.Value with { IsActive = false }, Citation.Measured) } }
            : this;

    /// <summary>States the strength of this lot, such as 900 g/cm² for an agar.</summary>
    /// <param name="grade">The grade.</param>
    /// <returns>The changed ingredient.</returns>
    public Ingredient WithGrade(Grade grade) => this with { Grade = Guard.NotNull(grade) };

    /// <summary>Attaches an integrator's own data.</summary>
    /// <param name="extensions">The data; null to take it off.</param>
    /// <returns>The changed ingredient.</returns>
    public Ingredient WithExtensions(ExtensionData? extensions) => this with { Extensions = extensions };

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    /// <summary>Equal by content.</summary>
    /// <param name="other">The other ingredient.</param>
    /// <returns>Whether they are equal.</returns>
    public bool Equals(Ingredient? other) => other is not null
        && (ReferenceEquals(this, other)
            || (Id == other.Id && IsKnown == other.IsKnown && Grade == other.Grade
                && Equals(BasedOn, other.BasedOn) && Equals(Extensions, other.Extensions)
                && (ReferenceEquals(_facts, other._facts) || Facts == other.Facts) && Name == other.Name));

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Id);

    internal static Ingredient Unknown(string id) => new(id, id, NoFacts) { IsKnown = false };

    private static Allergen Defined(Allergen allergen) => (Allergen)Guard.Defined((int)allergen, (int)Allergen.Molluscs, "allergens");
}
