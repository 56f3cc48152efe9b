namespace CalcService.Engine.Compounds;

/// <summary>Which reading the doses of a sheet go by.</summary>
public static class DoseBasis
{
    /// <summary>The place that decides, never <see cref="DosePlace.Colder"/>, with its temperature; null where a reading that it takes is missing.</summary>
    public static (DosePlace Place, double K)? Of(DosePlace asked, double? airK, double? steelK, double? compoundK) => asked switch
    {
        DosePlace.Air => At(DosePlace.Air, airK),
        DosePlace.Steel => At(DosePlace.Steel, steelK),
        DosePlace.Compound => At(DosePlace.Compound, compoundK),
        _ when airK is null || steelK is null => null,
        _ => steelK <= airK ? At(DosePlace.Steel, steelK) : At(DosePlace.Air, airK),
    };

    private static (DosePlace Place, double K)? At(DosePlace place, double? kelvins) => kelvins is { } read ? (place, read) : null;
}
