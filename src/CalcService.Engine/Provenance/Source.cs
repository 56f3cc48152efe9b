namespace CalcService.Engine.Provenance;

/// <summary>Where a number, rule or formula comes from.</summary>
/// <param name="Document">The document as its publisher names it, or what stands in for one.</param>
/// <param name="Clause">The place in it; empty where the document is one page or one rule.</param>
/// <param name="Basis">What kind of support this is.</param>
public sealed record Source(string Document, string Clause, Basis Basis)
{
    /// <summary>The data sheet of the compound in the request.</summary>
    public static Source DataSheet(string clause) => new("the compound's data sheet", clause, Basis.DataSheet);

    /// <summary>Plain prudence, as a page of the documentation says it: what a safety rule needs is asked for.</summary>
    public static Source NotGiven(string document) => new("a safety rule needs this fact", document, Basis.Derived);

    /// <summary>A practice of the trade for which no document was found.</summary>
    public static Source CommonPractice { get; } = new("common practice, no source", "", Basis.CommonPractice);
}
