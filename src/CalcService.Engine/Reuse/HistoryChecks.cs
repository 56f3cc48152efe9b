using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>What the socket is, what it went through, and how its last cone came out.</summary>
internal static class HistoryChecks
{
    public static void Check(ReuseScope scope)
    {
        CheckIdentity(scope);
        var past = scope.Socket.History;
        scope.MustNotBe("welding", past.Welded, ReusePointers.Welded, ReuseFindings.Welded,
            Unsaid(ReusePointers.Welded, "whether it was ever welded"));
        scope.MustNotBe("straightening", past.Straightened, ReusePointers.Straightened, ReuseFindings.Straightened,
            Unsaid(ReusePointers.Straightened, "whether it was ever straightened"));
        scope.MustNotBe("arc-strike", past.ArcStruck, ReusePointers.ArcStruck, ReuseFindings.ArcStruck,
            Unsaid(ReusePointers.ArcStruck, "whether an arc ever struck it"));
        scope.MustNotBe("overload", past.Overloaded, ReusePointers.Overloaded, ReuseFindings.Overloaded,
            Unsaid(ReusePointers.Overloaded, "whether it was ever overloaded"));
        CheckRecord(scope, past);
        CheckRemoval(scope, scope.Input.Removal);
    }

    private static void CheckIdentity(ReuseScope scope)
    {
        var socket = scope.Socket;
        List<Gap> who = [];
        if (string.IsNullOrWhiteSpace(socket.Id))
        {
            who.Add(new(ReuseFindings.IdentityMissing, ReusePointers.Id, "mark"));
        }

        if (socket.Type == SocketType.Unknown)
        {
            who.Add(new(ReuseFindings.IdentityMissing, ReusePointers.Type, "type, open or closed,"));
        }

        if (!scope.IsOpen("identity", ReuseFindings.IdentityMissing, who))
        {
            scope.Write("identity", CheckOutcome.Pass, ReuseFindings.IdentityMissing);
        }

        List<Gap> steel = [];
        if (socket.SteelKnown != true)
        {
            steel.Add(new(ReuseFindings.SteelUnknown, ReusePointers.SteelKnown, "steel of the socket"));
        }

        steel.AddRange(SteelGaps(socket));
        if (!scope.IsOpen("steel", ReuseFindings.SteelUnknown, steel))
        {
            scope.Write("steel", CheckOutcome.Pass, ReuseFindings.SteelUnknown);
        }
    }

    /// <summary>What the strength can't be computed without.</summary>
    public static IEnumerable<Gap> SteelGaps(UsedSocket socket)
    {
        if (socket.YieldStrengthPa is null)
        {
            yield return new(ReuseFindings.SteelUnknown, ReusePointers.Yield, "yield strength of the socket's steel");
        }

        if (socket.TensileStrengthPa is null)
        {
            yield return new(ReuseFindings.SteelUnknown, ReusePointers.Tensile, "tensile strength of the socket's steel");
        }
    }

    private static void CheckRecord(ReuseScope scope, SocketHistory past)
    {
        List<Gap> gaps = [];
        if (past.Pours is null)
        {
            gaps.Add(Unsaid(ReusePointers.Pours, "how often it was poured"));
        }

        if (past.LastMedium == SocketMedium.Unknown)
        {
            gaps.Add(Unsaid(ReusePointers.LastMedium, "what it was last poured with"));
        }
        else if (past.LastMedium != SocketMedium.Resin)
        {
            scope.Find(ReuseFindings.MediumChanged, ReusePointers.LastMedium);
        }

        if (!scope.IsOpen("record", ReuseFindings.HistoryMissing, gaps))
        {
            scope.Write("record", CheckOutcome.Pass, ReuseFindings.HistoryMissing);
        }
    }

    private static void CheckRemoval(ReuseScope scope, ConeRemoval removal)
    {
        scope.MustNotBe("cone-removal", removal.Method == RemovalMethod.Unknown ? null : removal.Method == RemovalMethod.BurntOut,
            ReusePointers.Method,
            ReuseFindings.BurntOut, new(ReuseFindings.RemovalUnknown, ReusePointers.Method, "method"));
        CheckHeat(scope, removal);
    }

    private static void CheckHeat(ReuseScope scope, ConeRemoval removal)
    {
        const string Id = "removal-heat";
        var (own, rules) = (scope.Input.Limits.RemovalTemperatureK, scope.Rules);
        // The maker knows his steel; memory only knows steels of its kind.
        var limit = own is { } stated ? Limit.Of(Measure.Temperature(stated), WearJudge.StatedBy(scope)) : rules.RemovalHot.Limit;
        var judged = new Judged(removal.MaximumTemperatureK is { } reached ? Measure.Temperature(reached) : null, limit);
        List<Gap> gaps = own is null ? [] : [.. WearJudge.SourceGaps(scope)];
        if (judged.Measured is null && removal.Method != RemovalMethod.PressedCold)
        {
            gaps.Add(new(ReuseFindings.RemovalUnknown, ReusePointers.Temperature, "highest temperature"));
        }

        if (own is null && judged.IsAbove)
        {
            // What only memory says holds a socket, and scraps none.
            scope.Find(ReuseFindings.Overheated, ReusePointers.RemovalLimit, judged, [ReusePointers.Temperature], Severity.Unknown);
            scope.Write(Id, CheckOutcome.Undetermined, ReuseFindings.Overheated, judged, [ReusePointers.RemovalLimit]);
        }
        else
        {
            scope.MustNotExceed(Id, judged, ReusePointers.Temperature, ReuseFindings.Overheated, gaps);
        }

        CheckWarmth(scope, judged, own is not null);
    }

    /// <summary>Below the limit, and yet warm: only where no maker says what his steel bears.</summary>
    private static void CheckWarmth(ReuseScope scope, Judged hot, bool isLimited)
    {
        if (isLimited || hot.Measured is null || hot.IsAbove)
        {
            scope.Skip("removal-warmth", ReuseFindings.Warmed, hot.Measured);
            return;
        }

        var warm = scope.Rules.RemovalWarm.Judge(hot.Measured);
        if (warm.IsAbove)
        {
            scope.Find(ReuseFindings.Warmed, ReusePointers.Temperature, warm);
        }

        scope.Weigh("removal-warmth", warm.IsAbove ? ReuseFindings.Warmed : null, ReuseFindings.Warmed, warm);
    }

    private static Gap Unsaid(string pointer, string what) => new(ReuseFindings.HistoryMissing, pointer, what);
}
