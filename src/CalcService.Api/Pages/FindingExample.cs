using System.Text.Json.Nodes;
using CalcService.Engine.Findings;

namespace CalcService.Api.Pages;

/// <summary>A request with which nothing is wrong but what raises one finding.</summary>
/// <param name="Code">The finding.</param>
/// <param name="Severity">How much it weighs here.</param>
/// <param name="Pointer">The member it points to.</param>
/// <param name="Change">The change to the operation's request with which nothing is wrong.</param>
public sealed record FindingExample(string Code, Severity Severity, string Pointer, Func<JsonObject, JsonObject> Change);
