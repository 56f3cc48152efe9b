using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>What a rope's numbers may be.</summary>
public sealed class RopeValidator : Contradictions<Rope>
{
    protected override void Check(Rope rope, ValidationContext<Rope> context)
    {
        if (rope.MetallicArea is { } area && area.Si > Math.PI / 4 * rope.Diameter.Si * rope.Diameter.Si)
        {
            context.Contradict(nameof(Rope.MetallicArea), nameof(Rope.Diameter),
                "The metallic area is larger than a solid bar of the rope's diameter.");
        }

        // A thin or thick rope is judged, not refused: that is what measuring is for. What is off by more than this is a slip of units.
        if (rope.MeasuredDiameter is { } measured && (measured.Si > 2 * rope.Diameter.Si || measured.Si < .25 * rope.Diameter.Si))
        {
            context.Contradict(nameof(Rope.MeasuredDiameter), nameof(Rope.Diameter),
                "The measured diameter is less than a quarter or more than twice of the nominal one.");
        }

        if (rope.OuterWireDiameter is { } wire && wire.Si > rope.Diameter.Si)
        {
            context.Contradict(nameof(Rope.OuterWireDiameter), nameof(Rope.Diameter), "A wire is thicker than the rope.");
        }
    }
}
