using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Findings;
using FluentValidation;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>What a used socket may be.</summary>
public sealed class SocketToReuseValidator : Contradictions<SocketToReuse>
{
    protected override void Check(SocketToReuse socket, ValidationContext<SocketToReuse> context)
    {
        if (socket.RatedLoad?.Si > socket.BreakingForce?.Si)
        {
            context.Contradict(nameof(SocketToReuse.RatedLoad), nameof(SocketToReuse.BreakingForce),
                "The rated load is above the breaking force.");
        }

        SocketSizesCheck.Check(socket, context);
    }
}

/// <summary>What a steel may be.</summary>
public sealed class SocketSteelValidator : Contradictions<SocketSteel>
{
    protected override void Check(SocketSteel steel, ValidationContext<SocketSteel> context)
    {
        if (steel.YieldStrength?.Si > steel.TensileStrength?.Si)
        {
            context.Contradict(nameof(SocketSteel.YieldStrength), nameof(SocketSteel.TensileStrength),
                "The yield strength is above the tensile strength.");
        }

        if (steel is { Known: Fact.No, YieldStrength: not null })
        {
            context.Contradict(nameof(SocketSteel.Known), nameof(SocketSteel.YieldStrength),
                "The steel is not known, and yet its strength is given.");
        }
    }
}

/// <summary>What the sizes of a drawing may be.</summary>
public sealed class SocketDrawingValidator : Contradictions<SocketDrawing>
{
    protected override void Check(SocketDrawing drawing, ValidationContext<SocketDrawing> context) =>
        OneOutside.Check(drawing.OuterDiameter, drawing.OuterAtSmallEnd, drawing.OuterAtMouth, context);
}

/// <summary>What measured sizes may be.</summary>
public sealed class SocketMeasurementValidator : Contradictions<SocketMeasurement>
{
    protected override void Check(SocketMeasurement measured, ValidationContext<SocketMeasurement> context) =>
        OneOutside.Check(measured.OuterDiameter, measured.OuterAtSmallEnd, measured.OuterAtMouth, context);
}
