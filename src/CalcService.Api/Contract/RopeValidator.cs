using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>What a rope's numbers may be.</summary>
public sealed class RopeValidator : AbstractValidator<Rope>
{
    public RopeValidator()
    {
        this.Ranges()
            .Of(rope => rope.Diameter, 1, 200, "mm", QuantityKind.Length)
            .Of(rope => rope.MetallicArea, .1, 30000, "mm2", QuantityKind.Area)
            .Of(rope => rope.MeasuredDiameter, 1, 200, "mm", QuantityKind.Length)
            .Of(rope => rope.Temperature, -60, 150, "degC", QuantityKind.Temperature)
            .Of(rope => rope.OuterWireDiameter, .05, 20, "mm", QuantityKind.Length)
            .Of(rope => rope.LayLength, 2, 2500, "mm", QuantityKind.Length)
            .Of(rope => rope.Grade, 500, 3000)
            .Of(rope => rope.WireCount, 1, 10000);
        RuleFor(rope => rope.Certificate!).SetValidator(new RopeCertificateValidator());
        RuleFor(rope => rope).Custom((rope, context) =>
        {
            if (rope.MetallicArea is { } area && area.Si > Math.PI / 4 * rope.Diameter.Si * rope.Diameter.Si)
            {
                context.Contradict(nameof(Rope.MetallicArea), nameof(Rope.Diameter), "The metallic area is larger than a solid bar of the rope's diameter.");
            }

            // A thin or thick rope is judged, not refused: that is what measuring is for. What is off by more than this is a slip of units.
            if (rope.MeasuredDiameter is { } measured && (measured.Si > 2 * rope.Diameter.Si || measured.Si < .25 * rope.Diameter.Si))
            {
                context.Contradict(nameof(Rope.MeasuredDiameter), nameof(Rope.Diameter), "The measured diameter is less than a quarter or more than twice of the nominal one.");
            }

            if (rope.OuterWireDiameter is { } wire && wire.Si > rope.Diameter.Si)
            {
                context.Contradict(nameof(Rope.OuterWireDiameter), nameof(Rope.Diameter), "A wire is thicker than the rope.");
            }
        });
    }
}

/// <summary>What a rope certificate's numbers may be.</summary>
public sealed class RopeCertificateValidator : AbstractValidator<RopeCertificate>
{
    public RopeCertificateValidator() => this.Ranges().Of(certificate => certificate.BreakingForce, .1, 50000, "kN", QuantityKind.Force);
}
