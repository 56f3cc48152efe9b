namespace CalcService.Engine.Numerics.BoundaryValue;

/// <summary>Two unknowns that change together along a line.</summary>
public readonly record struct Pair(double First, double Second)
{
    public static Pair operator +(Pair a, Pair b) => new(a.First + b.First, a.Second + b.Second);

    public static Pair operator *(double factor, Pair a) => new(factor * a.First, factor * a.Second);

    public static Pair Add(Pair left, Pair right) => left + right;

    public static Pair Multiply(double left, Pair right) => left * right;
}

/// <summary>The slope of two unknowns: y′ = f(x, y). Scale both to about 1, since errors are judged against 1.</summary>
public interface IPairSlope
{
    Pair At(double x, Pair y);
}
