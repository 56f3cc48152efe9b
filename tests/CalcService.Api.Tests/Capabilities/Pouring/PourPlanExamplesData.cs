using CalcService.Api.OpenApi;

namespace CalcService.Api.Tests.Capabilities.Pouring;

/// <summary>Names of the examples, for theories.</summary>
public static class PourPlanExamplesData
{
    public static TheoryData<string> Names => [.. RequestExamples.Of("pour-plans").Select(example => example.Name)];
}
