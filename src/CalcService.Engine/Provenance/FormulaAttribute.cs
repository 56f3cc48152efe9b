namespace CalcService.Engine.Provenance;

/// <summary>
/// Marks the one method that computes a formula and says what the formula is. The trace and the documentation
/// read it; a test fails when a formula has no source or no check from outside.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class FormulaAttribute(string id, string document, string clause, Basis basis) : Attribute
{
    /// <summary>Stable id, lower case with hyphens.</summary>
    public string Id { get; } = id;

    public string Document { get; } = document;

    public string Clause { get; } = clause;

    public Basis Basis { get; } = basis;

    /// <summary>Symbol of the result.</summary>
    public required string Symbol { get; init; }

    /// <summary>Name of the result in the trade's words.</summary>
    public required string Name { get; init; }

    /// <summary>Right-hand side, with the symbols that the trace substitutes.</summary>
    public required string Expression { get; init; }

    /// <summary>What the result measures.</summary>
    public required QuantityKind Kind { get; init; }

    /// <summary>Where the formula holds, in words.</summary>
    public required string Range { get; init; }
}
