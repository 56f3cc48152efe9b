using CalcService.Api.OpenApi;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>Requests that run as they stand: a proof load with its answer as it was archived once, and what may have become of it.</summary>
public static class RecordVerificationExamples
{
    private const string Archived = """
        {
          "reference": "ARCHIVE-7",
          "operation": "proof-load-evaluations",
          "request": {
            "reference": "HOIST-7",
            "testedAt": "2026-03-12T14:00:00+01:00",
            "ruleSet": "hoist-rope",
            "compound": { "profile": "demonstration" },
            "rope": {
              "diameter": { "value": 20, "unit": "mm" },
              "construction": "6x36",
              "core": "iwrc",
              "grade": 1770,
              "finish": "bright",
              "certificate": { "number": "C-1190", "breakingForce": { "value": 252, "unit": "kN" } }
            },
            "socket": {
              "basket": {
                "smallEndDiameter": { "value": 23, "unit": "mm" },
                "largeEndDiameter": { "value": 45, "unit": "mm" },
                "length": { "value": 100, "unit": "mm" }
              },
              "outerAtSmallEnd": { "value": 40, "unit": "mm" },
              "outerAtMouth": { "value": 70, "unit": "mm" }
            },
            "test": { "ratedLoad": { "value": 60, "unit": "kN" } }
          },
          "answer": {
            "decision": "undetermined",
            "result": {
              "verdict": "hold",
              "phase": "before",
              "proofLoad": null,
              "leastTestLoad": null,
              "mostTestLoad": null,
              "steps": [],
              "expectedSeating": null,
              "seatingReadAt": "mouth",
              "checks": [
                {
                  "id": "proof-load",
                  "outcome": "undetermined",
                  "measured": null,
                  "limit": null,
                  "source": {
                    "document": "DOE-STD-1090; NAVEDTRA 14080",
                    "clause": "proof test of slings",
                    "basis": "published"
                  },
                  "missing": ["/test/proofLoad"]
                },
                {
                  "id": "socket-rating",
                  "outcome": "undetermined",
                  "measured": null,
                  "limit": null,
                  "source": {
                    "document": "the rating that the maker of the socket gives, as the request states it",
                    "clause": "proofRating",
                    "basis": "dataSheet"
                  },
                  "missing": ["/socket/proofRating"]
                },
                {
                  "id": "cure",
                  "outcome": "undetermined",
                  "measured": null,
                  "limit": null,
                  "source": {
                    "document": "proof before the least cured place reaches its degree",
                    "clause": "docs/cure-schedules.md",
                    "basis": "derived"
                  },
                  "missing": ["/test/proofLoadFrom"]
                }
              ]
            },
            "findings": [
              {
                "code": "proof-rating-missing",
                "severity": "unknown",
                "pointer": "/socket/proofRating",
                "measured": null,
                "limit": null
              },
              {
                "code": "proof-load-unknown",
                "severity": "unknown",
                "pointer": "/test/proofLoad",
                "measured": null,
                "limit": null
              },
              {
                "code": "cure-not-told",
                "severity": "unknown",
                "pointer": "/test/proofLoadFrom",
                "measured": null,
                "limit": null
              },
              {
                "code": "compound-demonstration",
                "severity": "caution",
                "pointer": "/compound",
                "measured": null,
                "limit": null
              },
              {
                "code": "no-exclusion-zone",
                "severity": "caution",
                "pointer": "/test/exclusionZone",
                "measured": null,
                "limit": null
              }
            ],
            "assumptions": [
              { "pointer": "/rope/metallicArea", "value": { "value": 184, "unit": "mm2" } },
              { "pointer": "/rope/wireCount", "value": { "value": 265, "unit": "1" } },
              { "pointer": "/rope/outerWireDiameter", "value": { "value": 0.940245, "unit": "mm" } },
              { "pointer": "/compound/sheet/cured/shrinkageAfterGel", "value": { "value": 0.666667, "unit": "%" } },
              { "pointer": "/compound/sheet/cured/shrinkageAfterGel", "value": { "value": 50, "unit": "%" } },
              { "pointer": "/compound/sheet/cured/modulus", "value": { "value": 1.5, "unit": "1" } },
              { "pointer": "/test/friction", "value": { "value": 0.1, "unit": "1" } },
              { "pointer": "/test/friction", "value": { "value": 0.3, "unit": "1" } }
            ],
            "provenance": {
              "recordId": "sha256:6641b85ce43100a37cea0240f0d4d6ba6f9685baad8d502558b7393edce98967",
              "operation": "proof-load-evaluations",
              "contract": "0.9",
              "rules": "2026-12",
              "engine": "1",
              "compound": {
                "profile": "demonstration",
                "digest": "sha256:7de6703bee750cf9e8091a8bcbf1afa1331966101aa68cfb85b761064fcbf60e"
              },
              "inputDigest": "sha256:067e68d96d66d9c3e46a6ad751dad8a0cc19a2aa21d74022e3e61619433f3b6b",
              "resultDigest": "sha256:28d041d8363c4eceb90ca21f9f015f8fb692334108abdefb032cfca449c025cc",
              "computedAt": "2026-11-25T15:00:00Z"
            }
          }
        }
        """;

    public static IReadOnlyList<RequestExample> All { get; } =
    [
        new("match", "An archived answer that is what its request gives; words are left out, since they are not compared", Archived),
        new("differs", "The same answer with another decision written into it: it differs", Changed("ARCHIVE-8", "\"decision\": \"undetermined\"", "\"decision\": \"proceed\"")),
        new("cannotVerify", "An answer of another engine: it can not be verified here", Changed("ARCHIVE-9", "\"engine\": \"1\"", "\"engine\": \"0\"")),
    ];

    private static string Changed(string reference, string from, string to) =>
        Archived.Replace("ARCHIVE-7", reference, StringComparison.Ordinal).Replace(from, to, StringComparison.Ordinal);
}
