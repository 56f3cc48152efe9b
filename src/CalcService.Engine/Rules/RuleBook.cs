using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules.Edition202612;

namespace CalcService.Engine.Rules;

/// <summary>All limits of one dated edition. An edition never changes once it is out; a change is a new edition.</summary>
public sealed record RuleBook(string Edition, PouringRules Pouring, CuringRules Curing, MatchingRules Matching, ReuseRules Reuse, InspectionRules Inspection, ProofRules Proof, AuditRules Audits)
{
    /// <summary>Every edition that can still be computed, newest first.</summary>
    public static IReadOnlyList<RuleBook> All { get; } = [new("2026-12", PouringRules2026Dec.Rules, CuringRules2026Dec.Rules, MatchingRules2026Dec.Rules, ReuseRules2026Dec.Rules, InspectionRules2026Dec.Rules, ProofRules2026Dec.Rules, AuditRules2026Dec.Rules)];

    /// <summary>The edition used where the request names none.</summary>
    public static RuleBook Current => All[0];

    /// <summary>The edition of this name, or null.</summary>
    public static RuleBook? Find(string edition) =>
        All.FirstOrDefault(book => string.Equals(book.Edition, edition, StringComparison.Ordinal));

    /// <summary>Every limit of the edition.</summary>
    public IReadOnlyList<Rule> Limits => [.. Pouring.All, .. Curing.All, .. Matching.All, .. Reuse.All, .. Inspection.All, .. Proof.All, .. Audits.All];

    /// <summary>SHA-256 over every limit with its source and every substance, so that an edition that changed shows.</summary>
    public string Digest()
    {
        var text = new StringBuilder(Edition);
        foreach (var limit in Limits)
        {
            var number = (Measure?)limit;
            text.Append(CultureInfo.InvariantCulture,
                $"\n{limit.RuleSet}|{limit.Text}|{number?.Si:R}|{number?.Kind}|{limit.Source.Document}|{limit.Source.Clause}|{limit.Source.Basis}");
        }

        foreach (var air in Pouring.Air)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n{air.Substance}|{air.MolarMassGPerMol:R}");
        }

        return "sha256:" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }
}
