using CsCheck;
using Hydrocolloid.Formulation.Gelation;

namespace Hydrocolloid.Formulation.Tests.Gelation;

public class TrialTests
{
    /// <summary>Random curves with scatter: 4 to 12 doses from 0.2 to 5 %.</summary>
    private static Gen<TrialPoint[]> Trials => Gen.Select(Gen.Double[1, 3], Gen.Double[1, 500], Gen.Double[-0.1, 0.1].Array[4, 12]).Select((n, a, scatter) =>
        scatter.Select((s, i) => 0.2 + (4.8 * i / (scatter.Length - 1)) is var dose ? new TrialPoint(dose, a * Math.Pow(dose, n) * Math.Exp(s)) : default).ToArray());

    [Fact]
    public void Dose_for_the_strength_of_a_dose_is_that_dose()
        => Gen.Select(Trials, Gen.Double[0.2, 5], Gen.Bool).Sample((points, dose, line) =>
        {
            TrialFit fit = line ? TrialFit.Line(points) : TrialFit.PowerLaw(points);
            double strength = fit.StrengthAt(dose).Strength;
            return strength < 1e-9 || Math.Abs(fit.DoseFor(strength).Dose!.Value - dose) < 1e-9 * dose;
        });

    [Fact]
    public void More_dose_is_never_softer_where_the_curve_rises()
        => Gen.Select(Trials, Gen.Double[0.2, 4], Gen.Double[0, 1]).Sample((points, dose, more) =>
        {
            TrialFit fit = TrialFit.PowerLaw(points);
            return fit.Slope <= 0 || fit.StrengthAt(dose + more).Strength >= fit.StrengthAt(dose).Strength;
        });

    [Fact]
    public void Intervals_hold_the_curve_and_the_next_gel_scatters_more_than_the_curve()
        => Gen.Select(Trials, Gen.Double[0.2, 5]).Sample((points, dose) =>
        {
            TrialPrediction at = TrialFit.PowerLaw(points).StrengthAt(dose);
            return at.Prediction!.Value.Min <= at.Confidence!.Value.Min && at.Confidence.Value.Contains(at.Strength) && at.Confidence.Value.Max <= at.Prediction.Value.Max;
        });

    [Fact]
    public void Ends_of_the_dose_interval_are_where_the_target_touches_the_interval_of_the_curve()
        => Trials.Sample(points =>
        {
            TrialFit fit = TrialFit.PowerLaw(points);
            double target = fit.StrengthAt(1).Strength;
            NumberRange doses = fit.DoseFor(target).Confidence!.Value;
            // At the lower dose the top of the interval reaches the target, at the upper one its bottom.
            return Near(fit.StrengthAt(doses.Min!.Value).Confidence!.Value.Max!.Value, target) && Near(fit.StrengthAt(doses.Max!.Value).Confidence!.Value.Min!.Value, target);

            static bool Near(double a, double b) => Math.Abs(a - b) < 1e-8 * b;
        });

    [Fact]
    public void Exact_data_leave_no_doubt_and_no_outlier()
    {
        // S = 3 c²
        TrialFit fit = TrialFit.PowerLaw([new(1, 3), new(2, 12), new(3, 27), new(4, 48), new(5, 75)]);

        fit.Issues.Should().BeEmpty();
        fit.ToString().Should().Be("S = 3 c^2");
        TrialDose dose = fit.DoseFor(27);
        dose.Dose.Should().BeApproximately(3, 1e-12);
        dose.Confidence!.Value.Min.Should().BeApproximately(3, 1e-9);
        dose.Confidence.Value.Max.Should().BeApproximately(3, 1e-9);
    }

    [Fact]
    public void A_critical_concentration_is_taken_off_the_dose()
    {
        // S = 50 (c - 0.2)²
        TrialFit fit = TrialFit.PowerLaw([new(0.4, 2), new(0.7, 12.5), new(1.2, 50), new(2.2, 200)], criticalDose: 0.2);

        fit.Slope.Should().BeApproximately(2, 1e-12);
        fit.ToString().Should().Be("S = 50 (c - 0.2)^2");
        fit.DoseFor(50).Dose.Should().BeApproximately(1.2, 1e-12);
        FluentActions.Invoking(() => fit.StrengthAt(0.2)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*critical dose 0.2*");
        FluentActions.Invoking(() => TrialFit.PowerLaw([new(0.2, 2), new(1, 3)], criticalDose: 0.2)).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Two_points_give_a_curve_but_no_interval()
    {
        TrialFit fit = TrialFit.PowerLaw([new(0.5, 82), new(1.5, 535)]);

        fit.Issues.Should().Contain(TrialIssue.NoInterval);
        fit.StrengthAt(1).Confidence.Should().BeNull();
        fit.StrengthAt(1).Prediction.Should().BeNull();
        fit.DoseFor(200).ToString().Should().EndWith("two points give no interval");
    }

    [Fact]
    public void Three_points_are_few()
        => TrialFit.PowerLaw([new(1, 3), new(2, 11), new(3, 27)]).Issues.Should().Equal(TrialIssue.FewPoints);

    [Fact]
    public void Extrapolation_says_so()
    {
        TrialFit fit = TrialFit.PowerLaw([new(1, 3), new(2, 12.3), new(3, 26), new(4, 49)]);

        fit.StrengthAt(6).Outside!.Range.Should().Be(new NumberRange(1, 4));
        fit.DoseFor(1000).InRange.Should().BeFalse();
        fit.StrengthAt(3).InRange.Should().BeTrue();
    }

    [Fact]
    public void A_point_far_off_is_named()
    {
        TrialPoint odd = new(4, 130);
        TrialFit fit = TrialFit.PowerLaw([new(1, 3), new(2, 12.2), new(3, 26.6), odd, new(5, 75.5), new(6, 107), new(7, 148)]);

        fit.Outliers.Should().Equal(odd);
        fit.Issues.Should().Equal(TrialIssue.Outlier);
    }

    [Fact]
    public void A_trial_without_a_trend_gives_no_dose()
    {
        TrialFit falling = TrialFit.Line([new(1, 30), new(2, 20), new(3, 11), new(4, 1)]);
        falling.Issues.Should().Contain(TrialIssue.NotRising);
        falling.DoseFor(15).Dose.Should().BeNull();

        TrialFit level = TrialFit.Line([new(1, 20), new(2, 23), new(3, 19), new(4, 22.5)]);
        level.Issues.Should().Contain(TrialIssue.SlopeUncertain);
        level.DoseFor(21.5).Confidence.Should().BeNull();
        level.DoseFor(21.5).ToString().Should().EndWith("the slope is too uncertain for an interval");
        level.DoseFor(1).Dose.Should().BeNull("the line is above 1 at every dose");
    }

    [Fact]
    public void Equal_weights_are_no_weights_and_one_scale_of_them_does_not_matter()
    {
        (double Dose, double Strength)[] points = [(1, 3.1), (2, 11.6), (3, 27.9), (4, 47)];
        TrialFit plain = TrialFit.Line(points.Select(p => new TrialPoint(p.Dose, p.Strength)));
        TrialFit weighted = TrialFit.Line(points.Select(p => new TrialPoint(p.Dose, p.Strength, 2.5)));

        weighted.Slope.Should().BeApproximately(plain.Slope, 1e-12);
        weighted.SlopeVariance.Should().BeApproximately(plain.SlopeVariance, 1e-12);
        weighted.ResidualDeviation.Should().BeApproximately(plain.ResidualDeviation, 1e-12);
    }

    [Fact]
    public void Fits_are_equal_by_content()
        => TrialFit.Line([new(1, 3), new(2, 12), new(3, 26)]).Should().Be(TrialFit.Line([new(1, 3), new(2, 12), new(3, 26)]));

    [Fact]
    public void Misuse_is_refused()
    {
        FluentActions.Invoking(() => TrialFit.Line([])).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => TrialFit.Line([new(1, 3), new(1, 4)])).Should().Throw<ArgumentException>().WithMessage("*two different doses*").WithParameterName("points");
        FluentActions.Invoking(() => TrialFit.PowerLaw([new(1, 3), new(Math.BitIncrement(1.0), 4)])).Should().Throw<ArgumentException>().WithMessage("*two different doses*");
        FluentActions.Invoking(() => TrialFit.Line([new(1, 3, 0.1), new(2, 4)])).Should().Throw<ArgumentException>().WithMessage("*every point or of none*");
        FluentActions.Invoking(() => new TrialPoint(double.NaN, 1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => TrialFit.Line([new(1, 3), new(2, 4)]).StrengthAt(1, 100)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void A_steep_curve_far_out_stays_a_number()
    {
        TrialFit steep = TrialFit.PowerLaw([new(1, 1e-9), new(1.001, 1e9), new(1.0011, 2e9)]);
        double.IsFinite(steep.StrengthAt(1e6).Strength).Should().BeTrue();
        double.IsFinite(steep.StrengthAt(1e-6).Prediction!.Value.Max!.Value).Should().BeTrue();
    }
}
