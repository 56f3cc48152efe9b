using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;

namespace CalcService.Engine.Curing;

/// <summary>What the coupled model needs of the sheet.</summary>
internal static class CoupledFacts
{
    /// <summary>The compound's heat, or null where the sheet doesn't give it; the end of <see cref="Check"/> says so.</summary>
    public static ConeMaterials? Materials(CureScope scope) => scope.Input.Compound is
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

    /// <summary>Says once for all ends what the sheet doesn't give, and which way a cup of unknown kind errs.</summary>
    public static void Check(CureScope scope, int dose)
    {
        var sheet = scope.Input.Compound;
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
            scope.Find(CuringFindings.GelCupUnknown, CurePointers.GelTimes);
        }
    }
}
