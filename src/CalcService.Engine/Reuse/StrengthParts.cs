using CalcService.Engine.Cones;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>What the socket carries and what it is made of.</summary>
/// <param name="RatedN">Rated load.</param>
/// <param name="ProofN">Proof load.</param>
/// <param name="DesignFactor">Strength over stress at the rated load.</param>
/// <param name="BodyPa">Strength of the body.</param>
/// <param name="PinPa">Strength of the pin.</param>
/// <param name="AtRated">The cone in the socket as drawn at the rated load; null where it can't be computed.</param>
/// <param name="AtProof">The same at the proof load.</param>
internal sealed record StrengthCase(double RatedN, double ProofN, double DesignFactor, double BodyPa, double PinPa, ConeState? AtRated,
    ConeState? AtProof);

/// <summary>The parts of a socket under load.</summary>
/// <param name="Loaded">Those that can be computed.</param>
/// <param name="Gone">Those of which no metal is left.</param>
internal sealed record PartLoads(IReadOnlyList<PartLoad> Loaded, IReadOnlyList<string> Gone);

/// <summary>The parts of a socket under load; a part of which a size isn't known is left out.</summary>
internal static class StrengthParts
{
    private const double Tension = 1;
    private const double Bearing = 1.25;

    /// <summary>Yield in shear over yield in tension, by von Mises.</summary>
    private static readonly double Shear = 1 / Math.Sqrt(3);

    /// <summary>The parts that an open socket has, the basket last.</summary>
    public static IReadOnlyList<string> Ids { get; } = ["ear-bearing", "ear-net-section", "ear-shear-out", "ear-block", "pin-shear",
        "pin-bending", "basket-hoop"];

    public static PartLoads Of(StrengthSizes sizes, StrengthCase load, bool hasEars, Trace trace)
    {
        var t = Math.Max(0, sizes.ThicknessM);
        List<PartLoad> parts = [];
        List<string> gone = [];
        void Add(string id, double share, double strength, Func<bool, Trace, double> stress)
        {
            // A size that isn't known makes the stress no number, a part that is gone makes it infinite or turns it round.
            var (rated, proof) = (stress(false, Trace.None), stress(true, Trace.None));
            if (double.IsNaN(rated) || double.IsNaN(proof))
            {
                return;
            }

            if (rated <= 0 || double.IsInfinity(rated))
            {
                gone.Add(id);
                return;
            }

            parts.Add(new(id, stress(false, trace),
                StrengthFormulas.UtilisationOf(rated, load.DesignFactor, share, strength, trace),
                StrengthFormulas.UtilisationOf(proof, 1, share, strength, trace)));
        }

        double Force(bool isProof) => isProof ? load.ProofN : load.RatedN;
        if (hasEars)
        {
            Add("ear-bearing", Bearing, load.BodyPa, (proof, to) => StrengthFormulas.BearingPa(Force(proof), sizes.PinM, t, to));
            Add("ear-net-section", Tension, load.BodyPa, (proof, to) => StrengthFormulas.NetSectionPa(Force(proof), t, sizes.WidthM,
                sizes.HoleM, to));
            Add("ear-shear-out", Shear, load.BodyPa, (proof, to) => StrengthFormulas.ShearOutPa(Force(proof), t, sizes.EndDistanceM,
                sizes.HoleM, to));
            Add("ear-block", Tension, load.BodyPa, (proof, to) => StrengthFormulas.BlockPa(Force(proof), t, sizes.EndDistanceM,
                sizes.HoleM, sizes.BesideHoleM / 2, to));
            Add("pin-shear", Shear, load.PinPa, (proof, to) => StrengthFormulas.PinShearPa(Force(proof), sizes.PinM, to));
            Add("pin-bending", Tension, load.PinPa, (proof, to) => StrengthFormulas.PinBendingPa(Force(proof), sizes.LeverThicknessM,
                sizes.GapM, sizes.PinM, to));
        }

        Add("basket-hoop", Tension, load.BodyPa, (proof, to) => HoopPa(sizes, proof ? load.AtProof : load.AtRated, to));
        return new(parts, gone);
    }

    /// <summary>
    /// Highest hoop stress along the basket. The pressure is that of the cone in the socket as drawn: a wider bore would only lessen
    /// it.
    /// </summary>
    private static double HoopPa(StrengthSizes sizes, ConeState? cone, Trace trace)
    {
        if (cone is null)
        {
            return double.NaN;
        }

        // One place of which the wall isn't known may be the worst.
        var (pressure, ratio) = cone.MostStressed(at => sizes.OuterAtM(at) / sizes.BoreAtM(at));
        return ratio <= 1 ? double.PositiveInfinity : ConeFormulas.HoopStressPa(pressure, ratio, trace);
    }
}
