using Hydrocolloid.Formulation.Thermal;

namespace Hydrocolloid.Formulation.Tests.Thermal;

/// <summary>
/// A second, independent solver of the same cooling: finite volumes in space, the trapezoidal rule in time with two implicit half steps at the start of each stage. Along r it is a slab,
/// cylinder or sphere; with a height it is a finite cylinder, stepped in alternating directions.
/// </summary>
internal sealed class FiniteVolumes(ConductionShape shape, double metres, ThermalProperties properties, int cells)
{
    private readonly double[] _values = new double[cells];

    /// <summary>Centre, surface and mean at the end of stages of (medium °C, film W/(m²·K), seconds).</summary>
    public Places Run(double startCelsius, int stepsPerStage, params (double Celsius, double Film, double Seconds)[] stages)
    {
        Array.Fill(_values, startCelsius);
        double biot = 0;
        foreach ((double celsius, double film, double seconds) in stages)
        {
            biot = film * metres / properties.Conductivity.WattsPerMeterKelvin;
            double fourier = properties.DiffusivitySquareMetresPerSecond * seconds / (metres * metres) / stepsPerStage;
            for (int n = 0; n < stepsPerStage; n++)
            {
                // Half steps, fully implicit, take the jolt out of the first step.
                if (n == 0)
                {
                    Step(_values, shape, biot, celsius, fourier / 2, 1);
                    Step(_values, shape, biot, celsius, fourier / 2, 1);
                }
                else
                {
                    Step(_values, shape, biot, celsius, fourier, 0.5);
                }
            }
        }

        double half = 0.5 / cells;
        int d = ConductionSeries.DimensionOf(shape);
        double surface = ((_values[^1] / half) + (biot * stages[^1].Celsius)) / ((1 / half) + biot);
        // The first cell's middle is not the centre; the profile is even, so a parabola through two cells leads there.
        return new(((9 * _values[0]) - _values[1]) / 8, surface, _values.Select((v, i) => v * (Math.Pow((i + 1.0) / cells, d) - Math.Pow((double)i / cells, d))).Sum());
    }

    /// <summary>Mean and innermost cell of a finite cylinder with both directions on one grid of relative lengths.</summary>
    public (double Inner, double Mean) RunCylinder(double halfHeightMetres, double startCelsius, int stepsPerStage, params (double Celsius, double Film, double Seconds)[] stages)
    {
        double[][] rows = [.. Enumerable.Range(0, cells).Select(_ => Enumerable.Repeat(startCelsius, cells).ToArray())];
        foreach ((double celsius, double film, double seconds) in stages)
        {
            double k = properties.Conductivity.WattsPerMeterKelvin, alpha = properties.DiffusivitySquareMetresPerSecond, dt = seconds / stepsPerStage;
            for (int n = 0; n < stepsPerStage; n++)
            {
                // Strang splitting: half along z, whole along r, half along z; the two operators commute, so this is no approximation.
                Along(rows, halfHeightMetres, film, celsius, alpha * dt / 2, k);
                foreach (double[] row in rows)
                {
                    Step(row, ConductionShape.Cylinder, film * metres / k, celsius, alpha * dt / (metres * metres), n == 0 ? 1 : 0.5);
                }

                Along(rows, halfHeightMetres, film, celsius, alpha * dt / 2, k);
            }
        }

        double mean = rows.Average(row => row.Select((v, i) => v * ((2.0 * i) + 1) / (cells * (double)cells)).Sum());
        return (rows[0][0], mean);
    }

    private void Along(double[][] rows, double metresAlong, double film, double celsius, double alphaSeconds, double k)
    {
        var column = new double[cells];
        for (int r = 0; r < cells; r++)
        {
            for (int z = 0; z < cells; z++)
            {
                column[z] = rows[z][r];
            }

            Step(column, ConductionShape.Slab, film * metresAlong / k, celsius, alphaSeconds / (metresAlong * metresAlong), 0.5);
            for (int z = 0; z < cells; z++)
            {
                rows[z][r] = column[z];
            }
        }
    }

    private static void Step(double[] u, ConductionShape shape, double biot, double medium, double fourier, double implicitShare)
    {
        int n = u.Length, d = ConductionSeries.DimensionOf(shape);
        double dx = 1.0 / n;
        double[] diagonal = new double[n], upper = new double[n], right = new double[n];
        double flowIn = 0; // conductance of the face on the inner side
        for (int i = 0; i < n; i++)
        {
            double volume = (Math.Pow((i + 1) * dx, d) - Math.Pow(i * dx, d)) / d;
            double outer = Math.Pow((i + 1) * dx, d - 1) / (i < n - 1 ? dx : (1 / biot) + (dx / 2));
            double next = i < n - 1 ? u[i + 1] : medium;
            double flux = (flowIn * ((i > 0 ? u[i - 1] : 0) - u[i])) + (outer * (next - u[i]));
            double lower = -implicitShare * fourier * flowIn;
            diagonal[i] = volume + (implicitShare * fourier * (flowIn + outer));
            upper[i] = i < n - 1 ? -implicitShare * fourier * outer : 0;
            right[i] = (volume * u[i]) + ((1 - implicitShare) * fourier * flux) + (i < n - 1 ? 0 : implicitShare * fourier * outer * medium);
            if (i > 0)
            {
                double factor = lower / diagonal[i - 1];
                diagonal[i] -= factor * upper[i - 1];
                right[i] -= factor * right[i - 1];
            }

            flowIn = outer;
        }

        // Right sides were built from old values of the neighbours, so only now are these overwritten.
        for (int i = n - 1; i >= 0; i--)
        {
            u[i] = (right[i] - (i < n - 1 ? upper[i] * u[i + 1] : 0)) / diagonal[i];
        }
    }
}
