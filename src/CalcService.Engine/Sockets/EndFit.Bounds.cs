using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Sockets;

/// <content>What can't be: sizes, strengths and positions that are a slip of the pen or the wrong part.</content>
public sealed partial record EndFit
{
    private void CheckCone()
    {
        var (bounds, angle) = (Rules.Fit, Basket.IncludedAngleRad(Basket.SmallEndDiameterM, Basket.LargeEndDiameterM, Basket.LengthM, Trace.None));
        if (Judged.IsBelow(angle, bounds.LeastCone.Si))
        {
            Add(BoundFindings.NoCone, BasketAt, Measure.Angle(angle), bounds.LeastCone.Value);
        }

        var inDiameters = (GripLengthM ?? Basket.LengthM) / Rope.DiameterM;
        if (Judged.IsBelow(inDiameters, bounds.ShortestBasket.Si))
        {
            Add(BoundFindings.BasketTooShort, BasketAt + "/length", Measure.Count(inDiameters), bounds.ShortestBasket.Value, RopeAt + "/diameter");
        }
        else if (Judged.IsBelow(inDiameters, bounds.ShortBasket.Si) && Basket.IsTypeTested != true)
        {
            Add(BoundFindings.BasketTooShort, BasketAt + "/length", Measure.Count(inDiameters), bounds.ShortBasket.Value, RopeAt + "/diameter", Severity.Unknown);
        }
    }

    private void CheckRopeItself()
    {
        var bounds = Rules.Fit;
        if (Rope.CertifiedBreakingForceN is { } certified && Facts.EstimatedBreakingForceN is { } estimated
            && Judged.IsAbove(Math.Abs(certified - estimated), bounds.StrengthSpread.Si * estimated))
        {
            Find(new(BoundFindings.StrengthImplausible, Severity.Unknown, RopeAt + "/certificate/breakingForce")
            {
                Measured = Measure.Force(certified), Limit = Measure.Force(estimated), Related = [RopeAt + "/diameter", RopeAt + "/grade"],
                Words = [new("spread", bounds.StrengthSpread.Value!.Value)],
            });
        }

        if (Rope.MeasuredDiameterM is { } measured && Judged.IsBelow(measured, (1 - bounds.Thinning.Si) * Rope.DiameterM))
        {
            Add(BoundFindings.RopeThin, RopeAt + "/measuredDiameter", Measure.Length(measured), Measure.Length((1 - bounds.Thinning.Si) * Rope.DiameterM), RopeAt + "/diameter");
        }

        if (ThickestM(Rope, bounds) is { } thickest)
        {
            Add(BoundFindings.RopeThick, RopeAt + "/measuredDiameter", Measure.Length(Rope.OverallDiameterM), Measure.Length(thickest), RopeAt + "/diameter");
        }
    }

    /// <summary>How thick the rope may measure at most, where it measures thicker.</summary>
    public static double? ThickestM(Rope rope, FitRules bounds) =>
        (1 + bounds.Thickening.Si) * rope.DiameterM is var most && Judged.IsAbove(rope.OverallDiameterM, most) ? most : null;

    private void CheckPosition()
    {
        if (TiltRad is { } tilt && Judged.IsAbove(tilt, Rules.Fit.MostTilt.Si))
        {
            Add(BoundFindings.RopeTilted, Pointer + "/tilt", Measure.Angle(tilt), Rules.Fit.MostTilt.Value, severity: Severity.Unknown);
        }

        if (StraightBelowM is { } straight && !Judged.IsAbove(straight, 0))
        {
            Add(BoundFindings.NoStraightRope, Pointer + "/straightBelow");
        }
        else if (StraightBelowM is { } some && Rules.Fit.StraightRope.Si * Rope.DiameterM is var least && Judged.IsBelow(some, least))
        {
            Add(BoundFindings.StraightRopeShort, Pointer + "/straightBelow", Measure.Length(some), Measure.Length(least), RopeAt + "/diameter");
        }
    }

    /// <summary>What stands against a socket of this metal, whatever rope it is for; null where nothing does or nobody said.</summary>
    public static Finding? AgainstMetal(SocketMetal? metal, string socketAt)
    {
        (Severity Weight, string Name)? unfit = metal switch
        {
            SocketMetal.GreyIron => (Severity.Stop, "grey cast iron"),
            SocketMetal.DuctileIron => (Severity.Unknown, "ductile or malleable iron"),
            SocketMetal.Other => (Severity.Unknown, "another metal than steel"),
            _ => null,
        };
        return unfit is var (weight, name) ? new(BoundFindings.SocketMetalUnfit, weight, socketAt + "/material/kind") { Words = [new("metal", name)] } : null;
    }

    private void CheckSocketItself()
    {
        if (AgainstMetal(Metal, SocketAt) is { } unfit)
        {
            Find(unfit);
        }

        if (RopeRange is { } range && (Judged.IsBelow(Rope.DiameterM, range.MinimumM) || Judged.IsAbove(Rope.DiameterM, range.MaximumM)))
        {
            var (minimum, maximum) = (Measure.Length(range.MinimumM), Measure.Length(range.MaximumM));
            Find(new(BoundFindings.RopeOutsideRange, Severity.Caution, SocketAt + "/ropeRange")
            {
                Measured = Measure.Length(Rope.DiameterM), Limit = Rope.DiameterM < range.MinimumM ? minimum : maximum, Related = [RopeAt + "/diameter"],
                Words = [new("minimum", minimum), new("maximum", maximum)],
            });
        }
    }
}
