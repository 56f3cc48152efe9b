using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Engine.Matching;

namespace CalcService.Api.Capabilities.Matching;

/// <summary>Matches: its services and its paths.</summary>
public static class MatchingSetup
{
    private const string Operation = "termination-matches";

    public static void AddMatching(this IServiceCollection services) =>
        services.AddCalculation<TerminationMatchRequest, TerminationMatchResult, MatchResult>(
            Operation,
            (asked, budget, cancellationToken) =>
                TerminationMatch.Calculate(TerminationMatchMapping.ToEngine(asked.Request, asked.Sheet),
                    asked.Rules, budget, cancellationToken),
            (_, result, units) => TerminationMatchMapping.ToContract(result, units));

    public static void MapMatching(this IEndpointRouteBuilder app) => app.MapCalculation(
        Operation,
        "matchTermination",
        "Match rope and socket",
        "Whether this rope belongs in this socket for this duty, what the end may carry, and how the cone hands its load to the socket. "
            + "The decision follows the worst finding.",
        new(
            (request, answer) => TerminationMatchSheet.Write((TerminationMatchRequest)request, (Answer<TerminationMatchResult>)answer),
            (request, answer) => TerminationMatchSheet.Picture((TerminationMatchRequest)request, (Answer<TerminationMatchResult>)answer)));
}
