using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Rules;

/// <summary>All limits of one dated edition. An edition never changes once it is out; a change is a new edition.</summary>
public sealed record RuleBook(string Edition, PouringRules Pouring, CuringRules Curing, MatchingRules Matching, ReuseRules Reuse,
    InspectionRules Inspection, ProofRules Proof, AuditRules Audits)
{
    /// <summary>Every limit of the edition.</summary>
    public IReadOnlyList<Rule> Limits => [.. Pouring.All, .. Curing.All, .. Matching.All, .. Reuse.All, .. Inspection.All, .. Proof.All,
        .. Audits.All];

    /// <summary>SHA-256 over every limit with its source and every substance, so that an edition that changed shows.</summary>
    public string Digest()
    {
        var text = new StringBuilder(Edition);
        foreach (var limit in Limits)
        {
            var number = (Measure?)limit;
            var source = limit.Source;
            text.Append(CultureInfo.InvariantCulture,
                $"\n{limit.RuleSet}|{limit.Text}|{number?.Si:R}|{number?.Kind}|{source.Document}|{source.Clause}|{source.Basis}");
        }

        foreach (var air in Pouring.Air)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n{air.Substance}|{air.MolarMassGPerMol:R}");
        }

        return "sha256:" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }
}
