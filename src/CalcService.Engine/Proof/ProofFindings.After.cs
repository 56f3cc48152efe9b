using CalcService.Engine.Cones;
using CalcService.Engine.Findings;

namespace CalcService.Engine.Proof;

/// <content>Findings of the test.</content>
public static partial class ProofFindings
{
    private static IReadOnlyList<FindingDefinition> After =>
        [NotWatched, WireSlipped, Cracked, SeatedAskew, Creeps, TestLoadShort, TestLoadOver, SeatingNotRead, SeatingPlaceUnknown, SeatingLittle, SeatingMuch];

    public static FindingDefinition NotWatched { get; } = Define("test-not-watched", Severity.Unknown,
        "The record doesn't say something that the verdict hangs on.",
        "Nobody says {what}.",
        "Look at the end; where it can't be seen any more, load again and watch.",
        Prudence);

    public static FindingDefinition WireSlipped => TestFindings.WireSlipped;

    public static FindingDefinition Cracked => TestFindings.Cracked;

    public static FindingDefinition SeatedAskew { get; } = Define("seated-askew", Severity.Stop,
        "The cone seated on one side: wires there carry more than their share.", "The cone did not seat straight.", TestFindings.Out, TestFindings.LetsGo);

    public static FindingDefinition Creeps => TestFindings.Creeps;

    public static FindingDefinition TestLoadShort => TestFindings.TestLoadShort;

    public static FindingDefinition TestLoadOver => TestFindings.TestLoadOver;

    public static FindingDefinition SeatingNotRead => TestFindings.SeatingNotRead;

    public static FindingDefinition SeatingPlaceUnknown => TestFindings.SeatingPlaceUnknown;

    public static FindingDefinition SeatingLittle => TestFindings.SeatingLittle;

    public static FindingDefinition SeatingMuch => TestFindings.SeatingMuch;
}
