using System.Runtime.CompilerServices;

namespace CalcService.Engine.Numerics;

/// <summary>
/// Exponential, logarithm, power, tangent and its inverse in double precision: the same bits on every processor. The C library, to
/// which <see cref="Math"/> goes, picks an implementation by the processor that it finds, and they differ in the last bit. Here are only
/// additions, subtractions, multiplications, divisions and comparisons, which IEEE 754 defines to the last bit, in a fixed order, and
/// whole-number operations on the bits; no fused multiplication and no vectors.
/// </summary>
/// <remarks>
/// The method is reduction by a table and a short series (P. T. P. Tang, "Table-driven implementation of the exponential function in
/// IEEE floating-point arithmetic", ACM TOMS 15, 1989, and "… of the logarithm function …", ACM TOMS 16, 1990). The argument is taken so
/// near to a place of the table that Taylor's series needs few terms, and what a single double would lose is carried beside it.
/// Special values are those of ISO C, Annex F.
/// </remarks>
public static partial class Elementary
{
    private const int SignificandBits = 52;

    /// <summary>The upper half of the significand: the product of two such numbers is exact.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Upper(double x) => BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(x) & (-1L << 27));
}
