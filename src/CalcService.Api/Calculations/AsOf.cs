using CalcService.Engine.Rules;

namespace CalcService.Api.Calculations;

/// <summary>What an archived answer was computed by, to compute it again.</summary>
/// <param name="Rules">The edition of the rules, whatever the request names.</param>
/// <param name="Contract">The version of the contract: its digests cover no later members.</param>
public sealed record AsOf(RuleBook Rules, Version Contract);
