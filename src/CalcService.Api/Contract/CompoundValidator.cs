using CalcService.Api.Catalogues;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>Exactly one of profile and sheet, and a profile that exists.</summary>
public sealed class CompoundValidator : AbstractValidator<Compound>
{
    public CompoundValidator(CompoundCatalogue compounds)
    {
        RuleFor(compound => compound.Sheet!).SetValidator(new CompoundSheetValidator());
        RuleFor(compound => compound).Custom((compound, context) =>
        {
            if ((compound.Profile is null) == (compound.Sheet is null))
            {
                context.Contradict(nameof(Compound.Profile), nameof(Compound.Sheet), "Exactly one of profile and sheet is expected.");
            }
            else if (compound.Profile is { } profile && compounds.Find(profile) is null)
            {
                context.Fail(nameof(Compound.Profile), $"No such profile; known: {string.Join(", ", compounds.All.Select(known => known.Id))}.", "unknown-profile");
            }
        });
    }
}
