namespace CalcService.Api.Units;

/// <summary>A unit of the wire with its conversions; UnitsNet does the arithmetic.</summary>
/// <param name="Code">The case-sensitive ASCII code of the contract.</param>
/// <param name="Ucum">The same unit in the Unified Code for Units of Measure.</param>
/// <param name="ToSi">To the SI unit of the kind.</param>
/// <param name="FromSi">From the SI unit of the kind.</param>
public sealed record Unit(string Code, string Ucum, Func<double, double> ToSi, Func<double, double> FromSi);
