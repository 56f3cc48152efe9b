using CalcService.Api.Validation;
using CalcService.Engine.Reuse;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>What the request of an assessment may be. What speaks against the socket is a finding, not an error.</summary>
public sealed class ReuseAssessmentValidator : Contradictions<ReuseAssessmentRequest>
{
    protected override void Check(ReuseAssessmentRequest request, ValidationContext<ReuseAssessmentRequest> context)
    {
        context.MustKnow(nameof(ReuseAssessmentRequest.RuleSet), request.RuleSet, [PouringRules.General], "rule-set");
        if (request.Inspection?.InspectedOn > request.AssessedOn)
        {
            context.Contradict("Inspection.InspectedOn", nameof(ReuseAssessmentRequest.AssessedOn),
                "The inspection is after the assessment.");
        }

        if (request is { Inspection.Visual.Corrosion: CorrosionState.Pitted, Socket.Measured.PitDepth.Si: 0 })
        {
            context.Contradict("Inspection.Visual.Corrosion", "Socket.Measured.PitDepth",
                "The socket is pitted, and its deepest pit has no depth.");
        }

        if (request is { ConeRemoval: { Method: RemovalMethod.Melted, MaximumTemperature.Si: var warmest } }
            && warmest < MeltsAtK(request.Socket.History?.LastMedium))
        {
            context.Contradict("ConeRemoval.Method", "ConeRemoval.MaximumTemperature",
                "The cone was melted out, and yet no metal of poured sockets melts so cold.");
        }
    }

    /// <summary>
    /// Zinc freezes at 419.5 °C (a fixed point of ITS-90) and its eutectic with aluminium at 381 °C, of white metals that of tin and lead
    /// at 183 °C; all from memory.
    /// </summary>
    private static double MeltsAtK(SocketMedium? medium) => (medium == SocketMedium.Zinc ? 381 : 183) + 273.15;
}

/// <summary>What the cone's removal may be.</summary>
public sealed class ReuseConeRemovalValidator : Contradictions<ReuseConeRemoval>
{
    /// <summary>Nobody calls steel cold that burns the hand.</summary>
    private const double ColdUpToK = 60 + 273.15;

    protected override void Check(ReuseConeRemoval removal, ValidationContext<ReuseConeRemoval> context)
    {
        if (removal.Method == RemovalMethod.PressedCold && removal.MaximumTemperature?.Si > ColdUpToK)
        {
            context.Contradict(nameof(ReuseConeRemoval.Method), nameof(ReuseConeRemoval.MaximumTemperature),
                "Pressed out cold, and yet warmer than 60 °C.");
        }
    }
}

/// <summary>What an intended use may be.</summary>
public sealed class ReuseIntendedValidator : Contradictions<ReuseIntended>
{
    protected override void Check(ReuseIntended intended, ValidationContext<ReuseIntended> context)
    {
        if (intended.ProofLoad?.Si < intended.RatedLoad?.Si)
        {
            context.Contradict(nameof(ReuseIntended.ProofLoad), nameof(ReuseIntended.RatedLoad), "The proof load is below the rated load.");
        }
    }
}

/// <summary>What an inspection may be.</summary>
public sealed class ReuseInspectionValidator : Contradictions<ReuseInspection>
{
    protected override void Check(ReuseInspection inspection, ValidationContext<ReuseInspection> context)
    {
        if (inspection.SurfaceMethod is SurfaceMethod.None && inspection.Indications?.Count > 0)
        {
            context.Contradict(nameof(ReuseInspection.SurfaceMethod), nameof(ReuseInspection.Indications),
                "The surface was not searched, and yet the search showed something.");
        }
    }
}
