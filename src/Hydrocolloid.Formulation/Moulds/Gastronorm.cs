namespace Hydrocolloid.Formulation;

/// <summary>The gastronorm pans of which a usable volume is published.</summary>
public static class Gastronorm
{
    private static readonly Citation s_bulletin = new(
        new Source("gastronorm-bulletin", "Gastronorm sizes, depths and usable volumes, with the plan sizes of EN 631-1", SourceKind.Bulletin), "table of usable volumes");

    private static readonly (string Size, double Length, double Width, (double Depth, double Litres)[] Depths)[] s_sizes =
    [
        ("2/1", 650, 530, [(20, 4.5)]),
        ("1/1", 530, 325, [(20, 1.9), (40, 4.5), (65, 7.4), (100, 12.6), (150, 18), (200, 25)]),
        ("2/3", 354, 325, [(20, 1.25), (40, 3), (65, 5.25), (100, 8), (150, 11.5)]),
        ("2/4", 530, 162, [(65, 3.5), (100, 5.5)]),
        ("1/2", 325, 265, [(20, 0.85), (40, 1.75), (65, 3.5), (100, 5.5), (150, 8.5), (200, 11)]),
        ("1/3", 325, 176, [(40, 1.5), (65, 2.25), (100, 3.5), (150, 5.5), (200, 7.25)]),
        ("1/4", 265, 162, [(65, 1.5), (100, 2.5), (150, 3.75), (200, 5.25)]),
        ("1/6", 176, 162, [(65, 1), (100, 1.5), (150, 2.25)]),
    ];

    /// <summary>The pans, the largest size first, then by depth.</summary>
    public static ValueList<GastronormPan> Pans { get; } = ValueList<GastronormPan>.From(
        from size in s_sizes
        from depth in size.Depths
        select new GastronormPan(size.Size, size.Length, size.Width, depth.Depth, new Cited<double>(depth.Litres, s_bulletin)));

    /// <summary>A pan by size and depth.</summary>
    /// <param name="size">The size, such as <c>1/2</c>.</param>
    /// <param name="depthMillimetres">The depth, mm.</param>
    /// <returns>The pan.</returns>
    /// <exception cref="KeyNotFoundException">No volume is published for that size and depth; the message lists those there are.</exception>
    public static GastronormPan Pan(string size, double depthMillimetres)
    {
        foreach (GastronormPan pan in Pans)
        {
            if (pan.Size == size && Math.Abs(pan.DepthMetres * 1000 - depthMillimetres) < 0.5)
            {
                return pan;
            }
        }

        throw new KeyNotFoundException($"No usable volume is known of a gastronorm {size} of {Internal.Numbers.Significant(depthMillimetres, 4)} mm. Known: {string.Join("; ", Pans)}.");
    }
}
