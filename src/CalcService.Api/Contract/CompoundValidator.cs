using CalcService.Api.Catalogues;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>Exactly one of profile and sheet, and a profile that exists.</summary>
public sealed class CompoundValidator(CompoundCatalogue compounds) : Contradictions<Compound>
{
    protected override void Check(Compound compound, ValidationContext<Compound> context)
    {
        if ((compound.Profile is null) == (compound.Sheet is null))
        {
            context.Contradict(nameof(Compound.Profile), nameof(Compound.Sheet), "Exactly one of profile and sheet is expected.");
        }
        else
        {
            context.MustKnow(nameof(Compound.Profile), compound.Profile, [.. compounds.All.Select(known => known.Profile!)], "profile");
        }
    }
}
