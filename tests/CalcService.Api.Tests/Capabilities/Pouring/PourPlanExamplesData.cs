using CalcService.Api.Capabilities.Pouring;

namespace CalcService.Api.Tests.Capabilities.Pouring;

/// <summary>Names of the examples, for theories.</summary>
public static class PourPlanExamplesData
{
    public static TheoryData<string> Names => [.. PourPlanExamples.All.Select(example => example.Name)];
}
