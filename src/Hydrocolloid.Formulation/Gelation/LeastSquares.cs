using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>Linear least squares by QR: coefficients, their covariance, and the leverage of each point. A weighted problem comes with its rows times √weight.</summary>
internal sealed class LeastSquares
{
    public LeastSquares(Matrix<double> design, Vector<double> observed)
    {
        QR<double> qr = design.QR(QRMethod.Thin);
        Coefficients = qr.Solve(observed);
        Residuals = observed - (design * Coefficients);
        DegreesOfFreedom = design.RowCount - design.ColumnCount;
        ResidualSumOfSquares = Residuals.DotProduct(Residuals);
        Matrix<double> inverse = qr.R.Inverse();
        // Without degrees of freedom the scatter is not known; zero is what is left.
        Covariance = inverse.TransposeAndMultiply(inverse) * (DegreesOfFreedom > 0 ? ResidualSumOfSquares / DegreesOfFreedom : 0);
        Leverages = Vector<double>.Build.Dense(design.RowCount, i => qr.Q.Row(i).DotProduct(qr.Q.Row(i)));
    }

    public Vector<double> Coefficients { get; }

    public Matrix<double> Covariance { get; }

    public Vector<double> Residuals { get; }

    public Vector<double> Leverages { get; }

    public double ResidualSumOfSquares { get; }

    public int DegreesOfFreedom { get; }

    public double ResidualDeviation => DegreesOfFreedom > 0 ? Math.Sqrt(ResidualSumOfSquares / DegreesOfFreedom) : 0;
}
