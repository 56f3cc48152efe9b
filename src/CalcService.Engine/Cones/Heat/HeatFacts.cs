using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Cones.Heat;

/// <summary>The end whose cone is followed, as a request has it.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Pointer">Where it stands in the request: rope and socket are members of it.</param>
/// <param name="Rope">The rope.</param>
/// <param name="Basket">The basket.</param>
/// <param name="OuterAtSmallEndM">Outside of the socket at its small end.</param>
/// <param name="OuterAtMouthM">Outside of the socket at its mouth.</param>
internal sealed record HeatedEnd(string Id, string Pointer, Rope Rope, Basket Basket, double? OuterAtSmallEndM, double? OuterAtMouthM)
{
    /// <summary>The rope's metal, said as an assumption where it is estimated; null, and found, where nobody knows it.</summary>
    public double? AreaM2(CalculationScope scope)
    {
        var estimates = new List<Assumption>();
        var area = RopeFacts.Of(Rope, Pointer + "/rope", estimates, Trace.None).MetallicAreaM2;
        foreach (var estimate in estimates.Where(estimate => estimate.Pointer.EndsWith("/metallicArea", StringComparison.Ordinal)))
        {
            scope.Assume(estimate.Pointer, estimate.Text, estimate.Value, estimate.Origin);
        }

        if (area is null)
        {
            scope.Find(HeatFindings.ConeSteelUnknown, Pointer + "/rope/construction", words: new FindingWord("end", Id));
        }

        return area;
    }
}

/// <summary>What the model of the cone's heat needs of sheet and end.</summary>
internal static class HeatFacts
{
    /// <summary>Says once for all ends what the sheet doesn't give, and how its gel times are taken.</summary>
    public static void CheckHeat(this CalculationScope scope, CompoundSheet sheet, int dose, RuleNumber film)
    {
        void Need(object? fact, string member, string what)
        {
            if (fact is null)
            {
                scope.SheetSilent("/compound/sheet/" + member, what);
            }
        }

        Need(sheet.DensityKgPerM3, "cured/density", "density");
        Need(sheet.SpecificHeatJPerKgK, "cured/specificHeat", "specific heat");
        Need(sheet.ConductivityWPerMK, "cured/conductivity", "conductivity");
        Need(sheet.Reaction, "reaction", "heat and resin fraction of the reaction");
        if (sheet.GelTimes.Any(row => row.Doses == dose && row.SelfHeating == SelfHeating.Unknown))
        {
            scope.Assume("/compound/sheet/gelTimes",
                "gel times taken as held at their temperature: the sheet doesn't say whether its cup warmed itself", null,
                AssumptionOrigin.Estimate);
        }

        scope.Assume("/conditions", film);
    }

    /// <summary>The cone of an end, or null, and said why, where something is missing that it needs.</summary>
    public static ConeCure? ConeOf(this CalculationScope scope, CompoundSheet sheet, CureKinetics kinetics, TemperatureHistory air,
        double steelK, double compoundK,
        HeatedEnd end, CuringRules rules, CancellationToken cancellationToken)
    {
        var area = end.AreaM2(scope);
        // Wires that leave no room for compound make no cone, which the fit of the end finds.
        var isOverfull = area is { } wires && EndFit.IsOverfull(wires, end.Basket);
        if (end is not { OuterAtSmallEndM: not null, OuterAtMouthM: not null })
        {
            scope.Find(HeatFindings.SocketWallMissing, end.Pointer + "/socket/outerDiameter", words: new FindingWord("end", end.Id));
        }

        if (isOverfull || area is not { } metal || end is not { OuterAtSmallEndM: { } small, OuterAtMouthM: { } mouth }
            || Materials(sheet) is not { } materials)
        {
            return null;
        }

        return new(new()
        {
            Body = new()
            {
                SmallEndDiameterM = end.Basket.SmallEndDiameterM,
                LargeEndDiameterM = end.Basket.LargeEndDiameterM,
                LengthM = end.Basket.LengthM,
                OuterAtSmallEndM = small,
                OuterAtMouthM = mouth,
                MetallicAreaM2 = metal,
                RopeDiameterM = end.Rope.DiameterM,
            },
            Materials = materials,
            Law = kinetics.RateOf(kinetics.Expected),
            Surroundings = new()
            {
                CompoundK = compoundK,
                SteelK = steelK,
                AirK = new PiecewiseLinear(air.Seconds.ToArray(), air.Kelvins.ToArray()),
                FilmWPerM2K = rules.FilmCoefficient.Si,
            },
            HorizonS = air.EndS,
            Degrees = [rules.GelConversion.Si, kinetics.Shape.FullDegree],
            EndDegree = kinetics.Shape.FullDegree,
        }, kinetics, air, sheet.Service?.MaximumK, scope.Budget, cancellationToken);
    }

    private static ConeMaterials? Materials(CompoundSheet sheet) => sheet is
    {
        DensityKgPerM3: { } density, SpecificHeatJPerKgK: { } specificHeat, ConductivityWPerMK: { } conductivity, Reaction: { } reaction,
    }
        ? new()
        {
            CompoundDensityKgPerM3 = density,
            CompoundSpecificHeatJPerKgK = specificHeat,
            CompoundConductivityWPerMK = conductivity,
            ReactionHeatJPerKg = reaction.HeatJPerKg,
            ResinFraction = reaction.ResinFraction,
        }
        : null;
}
