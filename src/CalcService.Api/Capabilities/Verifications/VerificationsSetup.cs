using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Api.Hosting;
using CalcService.Engine.Verifications;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>Verifications: its services and its paths.</summary>
public static class VerificationsSetup
{
    public const string Operation = "record-verifications";

    public static void AddVerifications(this IServiceCollection services) => services.AddSingleton<Recomputation>()
        .AddSingleton<ICapability>(provider => new Capability<RecordVerificationRequest, RecordVerificationResult, Comparison>(
            Operation,
            provider.GetRequiredService<Recomputation>().Calculate,
            (_, result, _) => RecordVerificationResult.From(result),
            provider.GetRequiredService<Resolver>(),
            provider.GetRequiredService<TimeProvider>()) { BodyBytes = Limits.VerificationBytes });

    public static void MapVerifications(this IEndpointRouteBuilder app) => app.MapCalculation(
        Operation,
        "verifyRecord",
        "Compute an archived answer again",
        "Whether an archived answer is what its request gives, by the rules and the engine that it names: decision, numbers, findings, "
        + "assumptions and ids. Words that differ and members that are not known are a caution.",
        new(
            (request, answer) =>
            RecordVerificationSheet.Write((RecordVerificationRequest)request, (Answer<RecordVerificationResult>)answer),
            (_, answer) => RecordVerificationSheet.Picture((Answer<RecordVerificationResult>)answer)));
}
