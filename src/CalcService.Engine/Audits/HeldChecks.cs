using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

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
        if (scope.Input.Proof.IsAsked == false)
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

        scope.Show(id, result == LookResult.Pass, AuditFindings.LookFailed);
    }

    private static void CheckHardness(AuditScope scope, RecordedHardness read)
    {
        var asked = scope.Ask();
        var least = scope.Input.Compound.Hardness;
        if (least is null)
        {
            // Without a number on the sheet a reading is a trace, no more.
            scope.MustHold("hardness", HardnessFindings.Low, asked.Trail(read.Value is not null, AuditPointers.HardnessValue, "the hardness of the compound"));
        }
        else
        {
            asked.Fact(read.Value is not null, AuditPointers.HardnessValue, "the hardness of the compound")
                .Fact(read.Value is null || read.Method == least.Method, AuditPointers.HardnessMethod, $"the hardness by the sheet's method, {least.Method}");
            Measure? found = read.Value is { } value ? Measure.Count(value) : null;
            var minimum = Measure.Count(least.Minimum);
            if (!scope.IsOpen("hardness", HardnessFindings.Low, asked.Gaps, found, minimum))
            {
                var isLow = Judged.IsBelow(found!.Value.Si, minimum.Si);
                if (isLow)
                {
                    scope.Find(HardnessFindings.Low, AuditPointers.HardnessValue, found, minimum, [AuditPointers.SheetHardness]);
                }

                scope.Show("hardness", !isLow, HardnessFindings.Low, found, minimum);
            }
        }

        if (read.Value is null)
        {
            scope.Skip("hardness-place", HardnessFindings.NotAtLip);
            return;
        }

        var isAtLip = read.ReadAt == HardnessPlace.Lip;
        if (!isAtLip)
        {
            scope.Find(HardnessFindings.NotAtLip, AuditPointers.HardnessPlace);
        }

        scope.Show("hardness-place", isAtLip, HardnessFindings.NotAtLip);
    }
}
