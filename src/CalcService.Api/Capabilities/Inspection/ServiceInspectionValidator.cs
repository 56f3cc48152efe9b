using CalcService.Api.Validation;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Inspection;

/// <summary>What the request of an inspection may be. What is wrong with the end is a finding, not an error.</summary>
public sealed class ServiceInspectionValidator : Contradictions<ServiceInspectionRequest>
{
    protected override void Check(ServiceInspectionRequest request, ValidationContext<ServiceInspectionRequest> context)
    {
        context.MustKnow(nameof(ServiceInspectionRequest.RuleSet), request.RuleSet, InspectionRules.RuleSets, "rule-set");
        if (request.Inspection?.SocketedOn > request.AssessedOn)
        {
            context.Contradict("Inspection.SocketedOn", nameof(ServiceInspectionRequest.AssessedOn),
                "The end is inspected before it was made.");
        }
    }
}

/// <summary>What broken wires may be.</summary>
public sealed class InspectedWiresValidator : Contradictions<InspectedWires>
{
    protected override void Check(InspectedWires wires, ValidationContext<InspectedWires> context)
    {
        if (wires.InOneStrand > wires.Count)
        {
            context.Contradict(nameof(InspectedWires.InOneStrand), nameof(InspectedWires.Count),
                "More wires are broken in one strand than in all.");
        }
    }
}
