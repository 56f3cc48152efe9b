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
        var (bounds, angle) = (Rules.Fit, IncludedAngle);
        if (bounds.LeastCone.Judge(angle) is { IsBelow: true } slim)
        {
            Add(BoundFindings.NoCone, BasketAt, slim);
        }

        if (bounds.ShortestBasket.Judge(InDiameters) is { IsBelow: true } shortest)
        {
            Add(BoundFindings.BasketTooShort, BasketAt + "/length", shortest, RopeAt + "/diameter");
        }
        else if (bounds.ShortBasket.Judge(InDiameters) is { IsBelow: true } few && Basket.IsTypeTested != true)
        {
            Add(BoundFindings.BasketTooShort, BasketAt + "/length", few, RopeAt + "/diameter", Severity.Unknown);
        }
    }

    private void CheckRopeItself()
    {
        var bounds = Rules.Fit;
        if (Rope.CertifiedBreakingForceN is { } certified && Facts.EstimatedBreakingForceN is { } estimated
            && new Judged(Measure.Force(Math.Abs(certified - estimated)), bounds.StrengthSpread.Times(Measure.Force(estimated))).IsAbove)
        {
            Find(new(BoundFindings.StrengthImplausible, Severity.Unknown, RopeAt + "/certificate/breakingForce")
            {
                Judged = Judged.Force(certified, estimated), Related = [RopeAt + "/diameter", RopeAt + "/grade"],
                Words = [new("spread", bounds.StrengthSpread)],
            });
        }

        if (Rope.MeasuredDiameterM is { } measured && new Judged(Measure.Length(measured),
            Thinnest(Rope, bounds)) is { IsBelow: true } thin)
        {
            Add(BoundFindings.RopeThin, RopeAt + "/measuredDiameter", thin, RopeAt + "/diameter");
        }

        if (Thickness(Rope, bounds) is { IsAbove: true } thick)
        {
            Add(BoundFindings.RopeThick, RopeAt + "/measuredDiameter", thick, RopeAt + "/diameter");
        }
    }

    /// <summary>How thin the rope may measure at least.</summary>
    public static Limit Thinnest(Rope rope, FitRules bounds) => bounds.Thinning.Below(Measure.Length(rope.DiameterM));

    /// <summary>The rope against how thick it may measure at most.</summary>
    public static Judged Thickness(Rope rope, FitRules bounds) =>
        new(Measure.Length(rope.OverallDiameterM), bounds.Thickening.Above(Measure.Length(rope.DiameterM)));

    private void CheckPosition()
    {
        if (TiltRad is { } tilt && Rules.Fit.MostTilt.Judge(Measure.Angle(tilt)) is { IsAbove: true } tilted)
        {
            Add(BoundFindings.RopeTilted, Pointer + "/tilt", tilted, severity: Severity.Unknown);
        }

        if (StraightBelowM <= 0)
        {
            Add(BoundFindings.NoStraightRope, Pointer + "/straightBelow");
        }
        else if (StraightBelowM is { } some
            && new Judged(Measure.Length(some), Rules.Fit.StraightRope.Times(Measure.Length(Rope.DiameterM))) is { IsBelow: true } less)
        {
            Add(BoundFindings.StraightRopeShort, Pointer + "/straightBelow", less, RopeAt + "/diameter");
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
        return unfit is var (weight, name)
            ? new(BoundFindings.SocketMetalUnfit, weight, socketAt + "/material/kind") { Words = [new("metal", name)] } : null;
    }

    private void CheckSocketItself()
    {
        if (AgainstMetal(Metal, SocketAt) is { } unfit)
        {
            Find(unfit);
        }

        if (RopeRange is { } range && Judged.Outside(Measure.Length(Rope.DiameterM), Measure.Length(range.MinimumM),
            Measure.Length(range.MaximumM)) is { } outside)
        {
            Find(new(BoundFindings.RopeOutsideRange, Severity.Caution, SocketAt + "/ropeRange")
            {
                Judged = outside, Related = [RopeAt + "/diameter"],
                Words = [new("minimum", Measure.Length(range.MinimumM)), new("maximum", Measure.Length(range.MaximumM))],
            });
        }
    }
}
