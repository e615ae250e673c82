namespace Hydrocolloid.Formulation.Thermal;

/// <summary>A quantity at the centre, at the surface and on average.</summary>
internal readonly record struct Places(double Centre, double Surface, double Mean)
{
    public static Places One => new(1, 1, 1);

    public static Places operator *(Places left, Places right) => new(left.Centre * right.Centre, left.Surface * right.Surface, left.Mean * right.Mean);

    public static Places operator *(double factor, Places right) => new(factor * right.Centre, factor * right.Surface, factor * right.Mean);

    public static Places operator +(Places left, Places right) => new(left.Centre + right.Centre, left.Surface + right.Surface, left.Mean + right.Mean);

    public static Places operator -(Places left, Places right) => new(left.Centre - right.Centre, left.Surface - right.Surface, left.Mean - right.Mean);
}
