using CalcService.Engine.Cones;
using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Reuse;

/// <summary>What the socket carries and what it is made of.</summary>
internal sealed record StrengthCase(double RatedN, double ProofN, double DesignFactor, double BodyPa, double PinPa, double Friction, Basket Drawn);

/// <summary>The parts of a socket under load; a part of which a size isn't known is left out.</summary>
internal static class StrengthParts
{
    private const double Tension = 1;
    private const double Bearing = 1.25;

    /// <summary>Yield in shear over yield in tension, by von Mises.</summary>
    private static readonly double Shear = 1 / Math.Sqrt(3);

    /// <summary>The parts that an open socket has, the basket last.</summary>
    public static IReadOnlyList<string> Ids { get; } = ["ear-bearing", "ear-net-section", "ear-shear-out", "ear-block", "pin-shear", "pin-bending", "basket-hoop"];

    public static IReadOnlyList<PartLoad> Of(StrengthSizes sizes, StrengthCase load, bool hasEars, Trace trace)
    {
        var (force, t) = (load.RatedN, sizes.ThicknessM);
        List<PartLoad> parts = [];
        void Add(string id, double share, double strength, Func<Trace, double> stress)
        {
            // A size that isn't known makes the stress no number: then nothing is written to the trace either.
            if (double.IsFinite(stress(Trace.None)))
            {
                var found = stress(trace);
                parts.Add(new(id, found,
                    StrengthFormulas.UtilisationOf(found, load.DesignFactor, share, strength, trace),
                    StrengthFormulas.UtilisationOf(found * load.ProofN / force, 1, share, strength, trace)));
            }
        }

        if (hasEars)
        {
            var beside = (sizes.WidthM - sizes.HoleM) / 2;
            Add("ear-bearing", Bearing, load.BodyPa, to => StrengthFormulas.BearingPa(force, sizes.PinM, t, to));
            Add("ear-net-section", Tension, load.BodyPa, to => StrengthFormulas.NetSectionPa(force, t, sizes.WidthM, sizes.HoleM, to));
            Add("ear-shear-out", Shear, load.BodyPa, to => StrengthFormulas.ShearOutPa(force, t, sizes.EndDistanceM, sizes.HoleM, to));
            Add("ear-block", Tension, load.BodyPa, to => StrengthFormulas.BlockPa(force, t, sizes.EndDistanceM, sizes.HoleM, beside, to));
            Add("pin-shear", Shear, load.PinPa, to => StrengthFormulas.PinShearPa(force, sizes.PinM, to));
            Add("pin-bending", Tension, load.PinPa, to => StrengthFormulas.PinBendingPa(force, sizes.LeverThicknessM, sizes.GapM, sizes.PinM, to));
        }

        Add("basket-hoop", Tension, load.BodyPa, to => HoopPa(sizes, load, to));
        return parts;
    }

    /// <summary>Highest hoop stress along the basket. The pressure is that of the cone as drawn: a wider bore would only lessen it.</summary>
    private static double HoopPa(StrengthSizes sizes, StrengthCase load, Trace trace)
    {
        var basket = load.Drawn;
        double At((double AtM, double BoreM) place, Trace to)
        {
            var share = place.AtM / basket.LengthM;
            var outer = sizes.OuterAtSmallEndM + (share * (sizes.OuterAtMouthM - sizes.OuterAtSmallEndM));
            var (small, large) = (basket.SmallEndDiameterM / 2, basket.LargeEndDiameterM / 2);
            var mean = ConeFormulas.MeanPressurePa(load.RatedN, basket.Taper, load.Friction, small, large, to);
            var pressure = StrengthFormulas.SeatedPressurePa(mean, small, large, basket.DiameterAtM(share) / 2, to);
            return ConeFormulas.HoopStressPa(pressure, outer / place.BoreM, to);
        }

        var all = sizes.Bores.Select(place => (place, Stress: At(place, Trace.None))).ToArray();
        // One place of which the wall isn't known may be the worst.
        return all.Any(one => double.IsNaN(one.Stress)) ? double.NaN : At(all.MaxBy(one => one.Stress).place, trace);
    }
}
