using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;

namespace CalcService.Engine.Audits;

/// <summary>What the record has to hold that no other check asks for, and what the looks at the work came to.</summary>
internal static class HeldChecks
{
    public static void Check(AuditScope scope)
    {
        var (input, socket, readings, times) = (scope.Input, scope.Input.Socket, scope.Input.Readings, scope.Input.Times);
        scope.MustHold("identity", AuditFindings.TrailMissing, scope.Ask()
            .Trail(input.Number, AuditPointers.Number, "its own number")
            .Trail(input.End, AuditPointers.End, "the mark of the end"));
        scope.MustHold("rope-papers", AuditFindings.TrailMissing, scope.Ask()
            .Fact(input.Rope is not null, AuditPointers.Rope, "the rope")
            .Trail(input.RopeCertificate, AuditPointers.RopeCertificate, "the number of the rope's certificate")
            .Fact(input.Rope?.CertifiedBreakingForceN is not null, AuditPointers.RopeStrength, "the certified breaking force of the rope"));
        scope.MustHold("socket-papers", AuditFindings.TrailMissing, scope.Ask()
            .Trail(socket.Id, AuditPointers.SocketId, "the mark of the socket")
            .Trail(socket.Certificate, AuditPointers.SocketCertificate, "the number of the socket's certificate")
            .Fact(socket.Basket is not null, AuditPointers.Basket, "the sizes of the basket")
            .Fact(socket.BreakingForceN is not null, AuditPointers.SocketStrength, "the breaking force of the socket"));
        scope.MustHold("readings", AuditFindings.FactMissing, scope.Ask()
            .Fact(HasAir(readings), AuditPointers.Air, "the air temperature")
            .Fact(readings.SteelK is not null, AuditPointers.Steel, "the steel temperature")
            .Fact(readings.CompoundK is not null, AuditPointers.Compound, "the compound temperature")
            .Fact(readings.RelativeHumidity is not null, AuditPointers.Humidity, "the relative humidity")
            .Trail(times.ReadAt is not null, AuditPointers.Time("readAt"), "when air, steel and compound were read"));
        CheckLooks(scope, input.Looks);
        CheckHardness(scope, input.Hardness);
        CheckIgnition(scope, readings.IgnitionSource);
    }

    public static bool HasAir(RecordedReadings readings) => readings.ConstantAirK is not null || readings.AirSeries.Count > 0;

    private static void CheckLooks(AuditScope scope, RecordedLooks looks)
    {
        Look(scope, "look-bore", "bore", "the bore, clean to bare metal", looks.Bore);
        Look(scope, "look-broom", "broom", "the broom, clean, dry and evenly spread", looks.Broom);
        Look(scope, "look-core", "core", "the core, unlaid or cut out", looks.Core);
        Look(scope, "look-alignment", "alignment", "rope and basket in line", looks.Alignment);
        Look(scope, "look-seal", "seal", "the seal at the small end", looks.Seal);
        Look(scope, "look-fill", "fill", "the fill up to the mouth", looks.Fill);
        Look(scope, "look-surface", "surface", "the surface of the cured cone", looks.Surface);
        if (!scope.Input.IsTested)
        {
            scope.Skip("look-after-load", AuditFindings.LookFailed);
        }
        else
        {
            Look(scope, "look-after-load", "afterLoad", "the end after its proof load", looks.AfterLoad);
        }
    }

    private static void Look(AuditScope scope, string id, string member, string what, LookResult result)
    {
        var pointer = AuditPointers.Look(member);
        if (scope.IsOpen(id, AuditFindings.LookFailed, scope.Ask().Fact(result != LookResult.Unknown, pointer, "the look at " + what).Gaps))
        {
            return;
        }

        if (result == LookResult.Fail)
        {
            scope.Find(AuditFindings.LookFailed, pointer, words: new FindingWord("what", what));
        }

        scope.Weigh(id, result == LookResult.Fail ? AuditFindings.LookFailed : null, AuditFindings.LookFailed);
    }

    /// <summary>What could have lit the vapour is news for whoever plans the next pour; this end is none the weaker.</summary>
    private static void CheckIgnition(AuditScope scope, Fact? source)
    {
        var against = source switch { Fact.Yes => AuditFindings.PouredNearIgnition, Fact.No => null,
            _ => AuditFindings.IgnitionNotRecorded };
        if (against is not null)
        {
            scope.Find(against, AuditPointers.IgnitionSource);
        }

        var isTold = source is Fact.Yes or Fact.No;
        scope.Write("ignition-source", isTold ? CheckScope.OutcomeOf(against?.Severities[0]) : CheckOutcome.Undetermined,
            AuditFindings.PouredNearIgnition,
            missing: isTold ? [] : [AuditPointers.IgnitionSource]);
    }

    private static void CheckHardness(AuditScope scope, HardnessReading read)
    {
        var asked = scope.Ask();
        if (read.Value is null)
        {
            scope.Skip("hardness-place", HardnessFindings.NotAtLip);
        }

        if (HardnessCheck.Check(scope, scope.Input.Compound.Hardness, read, AuditPointers.Hardness) is { } fact)
        {
            scope.Find(asked.Fact(read.Value is not null, AuditPointers.HardnessValue, "the hardness of the compound")
                .Fact(fact.Stated == Stated.Known, fact.Pointer, fact.What).Gaps);
            return;
        }

        scope.MustHold("hardness", HardnessFindings.Low,
            asked.Trail(read.Value is not null, AuditPointers.HardnessValue, "the hardness of the compound"));
    }
}
