using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Reading;
using CalcService.Api.Units;
using CalcService.Api.Validation;
using CalcService.Api.Writing;
using CalcService.Engine.Rules;

namespace CalcService.Api.Calculations;

/// <summary>A valid request, with everything that it names found once.</summary>
/// <param name="Request">The request.</param>
/// <param name="Rules">The edition of the rules.</param>
/// <param name="Units">The units of the answer.</param>
/// <param name="Compound">The compound; null where the request has none.</param>
/// <param name="Canonical">The canonical request: in SI, a profile replaced by its sheet.</param>
/// <param name="Contract">The version of the contract whose members digests cover.</param>
public sealed record Resolved<TRequest>(
    TRequest Request, RuleBook Rules, UnitSystem Units, ResolvedCompound? Compound, ReadOnlyMemory<byte> Canonical, Version Contract)
    where TRequest : class, ICalculationRequest
{
    /// <summary>The data sheet of a request that must have a compound.</summary>
    public Engine.Compounds.CompoundSheet Sheet => Compound!.EngineSheet;
}

/// <summary>Makes of the bytes of a request what calculations take.</summary>
public sealed class Resolver(ObjectChecks checks, CompoundCatalogue compounds, Editions editions)
{
    /// <summary>The request as far as it could be read, and what is wrong with it or what it resolves to.</summary>
    /// <param name="body">The bytes.</param>
    /// <param name="asOf">What an archived answer was computed by; null for what the request names and the contract of today.</param>
    public (TRequest? Read, IReadOnlyList<ReadError> Errors, Resolved<TRequest>? Resolved) Resolve<TRequest>(ReadOnlySpan<byte> body,
        AsOf? asOf)
        where TRequest : class, ICalculationRequest
    {
        var shape = ShapeTable.Of<TRequest>();
        var (value, errors) = BodyReader.Read(body, shape, checks);
        var request = (TRequest?)value;
        var rules = request?.Rules is { } name ? editions.Find(name) : editions.Current;
        if (rules is null)
        {
            errors = [.. errors, new("/rules", "unknown-rules", $"No such edition; known: {editions}.", IsUnreadable: false)];
        }

        if (errors.Count > 0)
        {
            return (request, errors, null);
        }

        var compound = request!.Compound is { } named ? compounds.Resolve(named) : null;
        var known = compound is null ? default : new KnownPart(request.Compound, compound.Canonical);
        using var canonical = ShapeWriter.Write(JsonForm.Canonical, shape, request, known);
        return (request, [], new(
            request, asOf?.Rules ?? rules!, request.Units ?? UnitSystem.Metric, compound, canonical.Written.ToArray(),
            asOf?.Contract ?? ContractVersion.Current));
    }
}
