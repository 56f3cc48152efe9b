namespace CalcService.Engine.Numerics;

/// <summary>Five-point Gauss–Legendre rule: exact for polynomials up to the ninth degree.</summary>
public static class GaussLegendre
{
    private const double InnerNode = 0.53846931010568309104;
    private const double OuterNode = 0.90617984593866399280;
    private const double MiddleWeight = 128.0 / 225;
    private const double InnerWeight = 0.47862867049936646804;
    private const double OuterWeight = 0.23692688505618908751;

    /// <summary>The integral of a function over an interval on which it is smooth.</summary>
    public static double Integral<TFunction>(TFunction function, double from, double to)
        where TFunction : IFunction
    {
        var middle = (from + to) / 2;
        var half = (to - from) / 2;
        return half * (
            (MiddleWeight * function.At(middle))
            + (InnerWeight * (function.At(middle - (InnerNode * half)) + function.At(middle + (InnerNode * half))))
            + (OuterWeight * (function.At(middle - (OuterNode * half)) + function.At(middle + (OuterNode * half)))));
    }
}

/// <summary>A function of one variable, as a type so that its calls cost nothing.</summary>
public interface IFunction
{
    /// <summary>Its value.</summary>
    double At(double x);
}
