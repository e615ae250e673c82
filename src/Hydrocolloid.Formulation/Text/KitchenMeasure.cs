namespace Hydrocolloid.Formulation.Text;

/// <summary>The kitchen measures whose bare name means several sizes.</summary>
internal enum KitchenMeasure
{
    None,
    Teaspoon,
    Tablespoon,
    Cup,
    FluidOunce,
    Pint,
    Quart,
    Gallon,
}
