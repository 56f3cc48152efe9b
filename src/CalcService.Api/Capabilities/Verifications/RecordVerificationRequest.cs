using System.Text.Json;
using CalcService.Api.Contract;
using CalcService.Api.Units;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>An archived answer to compute again.</summary>
public sealed record RecordVerificationRequest : ICalculationRequest
{
    /// <summary>Your own reference; comes back as the id of a batch line.</summary>
    [Id]
    public string? Reference { get; init; }

    /// <summary>Edition of the rules for this request itself. The archived answer is computed again by the edition that it names.</summary>
    [Id]
    public string? Rules { get; init; }

    /// <summary>Units of this answer: metric (if absent) or inch. The archived answer is compared in its own.</summary>
    [Undigested]
    public UnitSystem? Units { get; init; }

    /// <summary>The calculation, as in its path and in provenance.operation, such as pour-plans.</summary>
    [Id]
    public required string Operation { get; init; }

    /// <summary>The request, as it was sent.</summary>
    public required JsonElement Request { get; init; }

    /// <summary>The answer, as it was archived, with any members. Those that the contract does not know are listed as unchecked.</summary>
    public required JsonElement Answer { get; init; }
}
