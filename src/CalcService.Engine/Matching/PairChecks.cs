using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Matching;

/// <summary>Rope and socket as a pair: sizes, wires, strength.</summary>
internal static class PairChecks
{
    /// <summary>Up to eight strands with one layer of wires over a king wire.</summary>
    private static readonly string[] Coarse = ["6x7", "8x7"];

    public static void Check(MatchScope scope, RopeFacts rope, IReadOnlyList<WireSpacing> wires)
    {
        var (input, socket) = (scope.Input, scope.Input.Socket);
        var fit = new EndFit(input.Rope, rope, socket.Basket with { IsTypeTested = input.IsTypeTested }, "", scope.Book.Pouring, scope.Add)
        {
            SocketBreakingForceN = socket.BreakingForceN, Metal = socket.Metal, RopeRange = socket.RopeRange, SizesFrom = socket.SizesFrom,
        };
        fit.Check();
        fit.CheckCare();
        fit.Ask(wires.Count > 0 && rope.MetallicAreaM2 is null ? [] : wires);
        fit.CheckProportions();
        AskStrength(scope, rope);
        // Wires that touch are crowded.
        if (wires.Count > 1 && rope.WireDiameterM is { } wire && !Judged.Length(wires[1].CentresM, wire).IsAbove)
        {
            scope.Find(MatchingFindings.WiresCrowded, MatchPointers.Basket, Measure.Length(wires[1].ClearM),
                related: [MatchPointers.Rope + "/wireCount", MatchPointers.Rope + "/outerWireDiameter"]);
        }

        if (socket.Standard is null)
        {
            scope.Find(MatchingFindings.StandardMissing, MatchPointers.Standard);
        }
    }

    /// <summary>Coarse ropes and spiral strand ask for more than others.</summary>
    public static void CheckConstruction(MatchScope scope, RopeFacts rope, double? bondPa)
    {
        var construction = scope.Input.Rope.Construction;
        if (Array.IndexOf(Coarse, construction) >= 0)
        {
            scope.Find(MatchingFindings.CoarseRope, MatchPointers.Construction, new(bondPa is { } bond ? Measure.Stress(bond) : null, null),
                words: [new("construction", construction!), .. bondPa is null ? new[] { new FindingWord("measured", "an unknown stress") }
                : []]);
        }

        // 1x19, 1x37: one strand is all there is.
        if (construction?.StartsWith("1x", StringComparison.Ordinal) == true && rope.WireDiameterM is { } wire
            && scope.Input.Socket.Basket.LengthM / wire is var inWires
            && scope.Rules.SpiralLengthInWires.Judge(Measure.Count(inWires)) is { IsBelow: true } few)
        {
            scope.Find(MatchingFindings.SpiralBasketShort, MatchPointers.Basket + "/length", few);
        }
    }

    private static void AskStrength(MatchScope scope, RopeFacts rope)
    {
        if (rope.BreakingForceN is not { } breaking)
        {
            scope.Find(MatchingFindings.RopeStrengthMissing, MatchPointers.BreakingForce);
        }
        else if (!rope.BreakingForceCertified)
        {
            scope.Find(MatchingFindings.RopeStrengthEstimated, MatchPointers.BreakingForce, Measure.Force(breaking),
                related: [MatchPointers.Rope + "/grade", MatchPointers.Construction]);
        }

        if (scope.Input.Socket.BreakingForceN is null)
        {
            scope.Find(MatchingFindings.SocketStrengthUnknown, MatchPointers.SocketStrength);
        }
    }
}
