namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// The equilibrium of one kg of water: charge balance for the pH (bracketed Newton), mass balances of calcium and magnesium inside it,
/// ionic strength around both.
/// </summary>
internal ref struct ChargeBalance
{
    private const double Ln10 = 2.302585092994046;
    private const double LowestPH = -2, HighestPH = 16;
    private static readonly double s_kw = Math.Pow(10, ActivityModel.LogKw);

    private readonly ReadOnlySpan<double> _totals; // mol per kg water, by ligand index
    private readonly Span<double> _activity; // of each ligand's form without protons
    private readonly Span<double> _gamma;
    private readonly StrongIons _ions; // mol per kg water

    public ChargeBalance(ReadOnlySpan<double> totals, StrongIons ions, Span<double> activity, Span<double> gamma)
    {
        _totals = totals;
        _ions = ions;
        _activity = activity;
        _gamma = gamma;
    }

    public double PH { get; private set; }

    public double IonicStrength { get; private set; }

    public double FreeCalcium { get; private set; }

    public double FreeMagnesium { get; private set; }

    /// <summary>Charge of ions of charge 1 that closes the balance at a held pH.</summary>
    public double Closing { get; private set; }

    public void Solve(double? heldPH)
    {
        double strong = _ions.SodiumMolPerKg + _ions.PotassiumMolPerKg + _ions.ChlorideMolPerKg + Math.Abs(_ions.OtherChargeMolPerKg);
        double ionicStrength = 0.5 * (strong + (4 * (_ions.CalciumMolPerKg + _ions.MagnesiumMolPerKg + _ions.SulphateMolPerKg)));
        PH = heldPH ?? 5;
        FreeCalcium = _ions.CalciumMolPerKg;
        FreeMagnesium = _ions.MagnesiumMolPerKg;
        double last = 1;
        for (int round = 0; round < 100; round++)
        {
            ActivityModel.Fill(ionicStrength, _gamma);
            double tolerance = Math.Max(1e-10, Math.Min(1e-2, last));
            double weak;
            if (heldPH is null)
            {
                // No finer than the ionic strength is known; Newton's last step is far better than its size.
                weak = SolvePH(tolerance);
            }
            else
            {
                Closing = -Evaluate(PH, out _, out weak);
            }

            double found = 0.5 * (strong + Math.Abs(Closing) + weak);
            last = Math.Abs(found - ionicStrength);
            bool settled = last <= 1e-11 * (1 + found) && (tolerance <= 1e-9 || heldPH is not null);
            ionicStrength = round < 20 ? found : 0.5 * (found + ionicStrength);
            if (settled)
            {
                break;
            }
        }

        // The forms belong to the last step's pH and ionic strength.
        ActivityModel.Fill(ionicStrength, _gamma);
        Evaluate(PH, out _, out _);
        IonicStrength = ionicStrength;
    }

    private double SolvePH(double tolerance)
    {
        double weak = 0;
        double low = LowestPH, high = HighestPH, pH = PH;
        for (int step = 0; step < 100; step++)
        {
            double charge = Evaluate(pH, out double slope, out weak); // falls as the pH rises
            if (charge > 0)
            {
                low = pH;
            }
            else
            {
                high = pH;
            }

            double next = pH + (charge / slope);
            if (!(next >= low && next <= high))
            {
                next = 0.5 * (low + high);
            }

            double change = Math.Abs(next - pH);
            pH = next;
            if (change < tolerance)
            {
                break;
            }
        }

        PH = pH;
        return weak;
    }

    /// <summary>The charge per kg of water at a pH, its fall per pH with the metals held, and Σ c z² of all but the ions of charge 1.</summary>
    private double Evaluate(double pH, out double fallPerPH, out double weak)
    {
        double h = Math.Pow(10, -pH);
        SolveMetals(h);
        double proton = h / _gamma[1], hydroxide = s_kw / h / _gamma[1];
        double calcium = FreeCalcium * _gamma[2], magnesium = FreeMagnesium * _gamma[2];
        double charge = proton - hydroxide + (2 * (FreeCalcium + FreeMagnesium))
            + _ions.SodiumMolPerKg + _ions.PotassiumMolPerKg - _ions.ChlorideMolPerKg + _ions.OtherChargeMolPerKg;
        double buffer = proton + hydroxide;
        weak = proton + hydroxide + (4 * (FreeCalcium + FreeMagnesium));
        for (int i = 0; i < _totals.Length; i++)
        {
            if (_totals[i] <= 0)
            {
                continue;
            }

            Acid acid = Acids.Ligands[i];
            double sum = 0, mean = 0, square = 0, z1 = 0, z2 = 0, power = 1;
            for (int n = 0; n < acid.Formation.Length; n++, power *= h)
            {
                int z = acid.Charge + n;
                double amount = acid.Formation[n] * power / _gamma[Math.Abs(z)];
                Add(amount, n, z, ref sum, ref mean, ref square, ref z1, ref z2);
            }

            foreach (Complex complex in acid.Complexes)
            {
                double metal = complex.Magnesium ? magnesium : calcium;
                if (metal > 0)
                {
                    int z = acid.Charge + complex.Protons + 2;
                    Add(complex.Beta * metal * Power(h, complex.Protons) / _gamma[Math.Abs(z)], complex.Protons, z, ref sum, ref mean, ref square, ref z1, ref z2);
                }
            }

            double activity = _totals[i] / sum;
            _activity[i] = activity;
            charge += activity * z1;
            weak += activity * z2;
            mean /= sum;
            buffer += _totals[i] * ((square / sum) - (mean * mean));
        }

        fallPerPH = Ln10 * buffer;
        return charge;
    }

    private static void Add(double amount, int protons, int z, ref double sum, ref double mean, ref double square, ref double z1, ref double z2)
    {
        sum += amount;
        mean += amount * protons;
        square += amount * protons * protons;
        z1 += amount * z;
        z2 += amount * z * z;
    }

    /// <summary>
    /// Free calcium x and magnesium y at given protons: x + Σ T P x/(U + P x + Q y) = total, and the same for y. Newton in both, from what was free before;
    /// with one metal the balance is concave, so that it converges from any start at 0 or above.
    /// </summary>
    private void SolveMetals(double h)
    {
        double calcium = _ions.CalciumMolPerKg, magnesium = _ions.MagnesiumMolPerKg;
        if (calcium <= 0 && magnesium <= 0)
        {
            return;
        }

        Span<double> unbound = stackalloc double[_totals.Length], p = stackalloc double[_totals.Length], q = stackalloc double[_totals.Length];
        Bind(h, unbound, p, q);
        double x = FreeCalcium, y = FreeMagnesium;
        for (int step = 0; step < 200; step++)
        {
            double f = x - calcium, g = y - magnesium, fx = 1, gy = 1, cross = 0, fy = 0;
            for (int i = 0; i < _totals.Length; i++)
            {
                if (p[i] <= 0 && q[i] <= 0)
                {
                    continue;
                }

                double all = unbound[i] + (x * p[i]) + (y * q[i]), perAll = _totals[i] / all, perSquare = perAll / all;
                f += perAll * x * p[i];
                g += perAll * y * q[i];
                fx += perSquare * p[i] * (unbound[i] + (y * q[i]));
                gy += perSquare * q[i] * (unbound[i] + (x * p[i]));
                fy -= perSquare * x * p[i] * q[i];
                cross -= perSquare * y * p[i] * q[i];
            }

            double determinant = (fx * gy) - (fy * cross);
            double nextX = Within(x, x - (((f * gy) - (g * fy)) / determinant), calcium);
            double nextY = Within(y, y - (((g * fx) - (f * cross)) / determinant), magnesium);
            bool settled = Math.Abs(nextX - x) <= 1e-10 * nextX && Math.Abs(nextY - y) <= 1e-10 * nextY;
            x = nextX;
            y = nextY;
            if (settled)
            {
                break;
            }
        }

        FreeCalcium = x;
        FreeMagnesium = y;
    }

    private static double Within(double before, double next, double total) => Math.Min(Math.Max(next, before * 0.01), total);

    private void Bind(double h, scoped Span<double> unbound, scoped Span<double> p, scoped Span<double> q)
    {
        for (int i = 0; i < _totals.Length; i++)
        {
            p[i] = q[i] = unbound[i] = 0;
            Acid acid = Acids.Ligands[i];
            if (_totals[i] <= 0 || acid.Complexes.Length == 0)
            {
                continue;
            }

            double power = 1;
            for (int n = 0; n < acid.Formation.Length; n++, power *= h)
            {
                unbound[i] += acid.Formation[n] * power / _gamma[Math.Abs(acid.Charge + n)];
            }

            foreach (Complex complex in acid.Complexes)
            {
                double amount = complex.Beta * Power(h, complex.Protons) * _gamma[2] / _gamma[Math.Abs(acid.Charge + complex.Protons + 2)];
                if (complex.Magnesium)
                {
                    q[i] += amount;
                }
                else
                {
                    p[i] += amount;
                }
            }
        }
    }

    private static double Power(double h, int protons) => protons switch { 0 => 1, 1 => h, 2 => h * h, _ => h * h * h };
}
