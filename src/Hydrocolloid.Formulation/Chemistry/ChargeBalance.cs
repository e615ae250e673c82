namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// The equilibrium of one kg of water: charge balance for the pH (bracketed Newton), mass balances of calcium and magnesium inside it
/// (Newton from below, which converges without overshoot because each balance is concave), ionic strength around both.
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
        for (int round = 0; round < 100; round++)
        {
            ActivityModel.Fill(ionicStrength, _gamma);
            if (heldPH is null)
            {
                SolvePH();
            }
            else
            {
                Closing = -Evaluate(PH, out _, out _);
            }

            Evaluate(PH, out _, out double weak);
            double found = 0.5 * (strong + Math.Abs(Closing) + weak);
            bool settled = Math.Abs(found - ionicStrength) <= 1e-12 * (1 + found);
            ionicStrength = round < 20 ? found : 0.5 * (found + ionicStrength);
            if (settled)
            {
                break;
            }
        }

        IonicStrength = ionicStrength;
    }

    private void SolvePH()
    {
        double low = LowestPH, high = HighestPH, pH = PH;
        for (int step = 0; step < 100; step++)
        {
            double charge = Evaluate(pH, out double slope, out _); // falls as the pH rises
            if (charge > 0)
            {
                low = pH;
            }
            else
            {
                high = pH;
            }

            double next = pH + (charge / slope);
            if (!(next > low && next < high))
            {
                next = 0.5 * (low + high);
            }

            double change = Math.Abs(next - pH);
            pH = next;
            if (change < 1e-12)
            {
                break;
            }
        }

        PH = pH;
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

    private void SolveMetals(double h)
    {
        bool both = _ions.CalciumMolPerKg > 0 && _ions.MagnesiumMolPerKg > 0;
        for (int round = 0; round < (both ? 200 : 1); round++)
        {
            double before = FreeCalcium;
            FreeCalcium = SolveMetal(h, magnesium: false);
            FreeMagnesium = SolveMetal(h, magnesium: true);
            if (Math.Abs(FreeCalcium - before) <= 1e-13 * FreeCalcium)
            {
                break;
            }
        }
    }

    private double SolveMetal(double h, bool magnesium)
    {
        double total = magnesium ? _ions.MagnesiumMolPerKg : _ions.CalciumMolPerKg;
        if (total <= 0)
        {
            return 0;
        }

        double other = (magnesium ? FreeCalcium : FreeMagnesium) * _gamma[2];
        double free = 0;
        for (int step = 0; step < 100; step++)
        {
            double balance = free - total, slope = 1;
            for (int i = 0; i < _totals.Length; i++)
            {
                if (_totals[i] <= 0 || Acids.Ligands[i].Complexes.Length == 0)
                {
                    continue;
                }

                Acid acid = Acids.Ligands[i];
                double unbound = 0, binding = 0, power = 1;
                for (int n = 0; n < acid.Formation.Length; n++, power *= h)
                {
                    unbound += acid.Formation[n] * power / _gamma[Math.Abs(acid.Charge + n)];
                }

                foreach (Complex complex in acid.Complexes)
                {
                    double amount = complex.Beta * Power(h, complex.Protons) / _gamma[Math.Abs(acid.Charge + complex.Protons + 2)];
                    if (complex.Magnesium == magnesium)
                    {
                        binding += amount * _gamma[2];
                    }
                    else
                    {
                        unbound += amount * other;
                    }
                }

                double all = unbound + (free * binding);
                balance += _totals[i] * free * binding / all;
                slope += _totals[i] * binding * unbound / (all * all);
            }

            double change = -balance / slope;
            free += change;
            if (Math.Abs(change) <= 1e-14 * free)
            {
                break;
            }
        }

        return free;
    }

    private static double Power(double h, int protons) => protons switch { 0 => 1, 1 => h, 2 => h * h, _ => h * h * h };
}
