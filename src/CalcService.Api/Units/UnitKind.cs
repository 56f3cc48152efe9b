using CalcService.Engine.Provenance;

namespace CalcService.Api.Units;

/// <summary>The units that a kind of quantity may come in, and those it is answered in.</summary>
public sealed record UnitKind(QuantityKind Kind, Unit Si, Unit Metric, Unit Inch, IReadOnlyList<Unit> Units)
{
    /// <summary>Name of the kind's schema.</summary>
    public string Name => Kind.ToString();

    /// <summary>The unit of this code, or null.</summary>
    public Unit? Find(string code)
    {
        foreach (var unit in Units)
        {
            if (unit.Code == code)
            {
                return unit;
            }
        }

        return null;
    }

    /// <summary>The unit that answers use.</summary>
    public Unit In(UnitSystem system) => system == UnitSystem.Inch ? Inch : Metric;
}

/// <summary>Units of the answer.</summary>
public enum UnitSystem
{
    /// <summary>mm, cm³, kN, °C.</summary>
    Metric,

    /// <summary>in, in³, lbf, °F.</summary>
    Inch,
}
