using CalcService.Api.Telemetry;

namespace CalcService.Api.Hosting;

/// <summary>What a calculation has to keep to besides its own rules.</summary>
/// <param name="Settings">Its times.</param>
/// <param name="Lanes">Its turn.</param>
/// <param name="Held">What may be held of it.</param>
/// <param name="Drain">Whether the instance still has time for it.</param>
/// <param name="Measurements">How long it took.</param>
public sealed record WorkConditions(ServiceSettings Settings, Lanes Lanes, HeldBytes Held, Drain Drain, Measurements Measurements);
