using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Compounds;

/// <summary>The law of cure against published parameters with their exact solution.</summary>
public sealed class CureLawTests
{
    private const double Zero = 273.15;

    // Bogetti and Gillespie, J. Compos. Mater. 25 (1991) 239: polyester, A = 3.7e22 1/min, E = 167.4 kJ/mol, m = 0.524, n = 1.476; k₁ = 0,
    // seed 1e-6.
    private static readonly CureLaw Bogetti = new(0, 0, 3.7e22 / 60, 167.4e3, .524, 1.476);

    // S1, an invented law with m = n = 1: k₁ 2.0e-5 and k₂ 4.0e-3 1/s at 20 °C, 65 kJ/mol.
    private static readonly CureLaw S1 = new(AtInfinity(2.0e-5, 65e3), 65e3, AtInfinity(4.0e-3, 65e3), 65e3, 1, 1);

    [Theory]
    [InlineData(5, .086969)]
    [InlineData(10, .289150)]
    [InlineData(20, .635163)]
    public void Law_with_m_plus_n_of_2_follows_its_exact_solution(double minutes, double degree)
    {
        // y = α/(1 − α): y^(1−m) = y₀^(1−m) + (1 − m)·k·t. The seed's fast start is left to the exact solution up to one second.
        double Exact(double seconds)
        {
            var k = 3.7e22 / 60 * Math.Exp(-167.4e3 / (8.314462618 * (100 + Zero)));
            var y = Math.Pow(Math.Pow(1e-6 / (1 - 1e-6), .476) + (.476 * k * seconds), 1 / .476);
            return y / (1 + y);
        }

        var computed = Reference.RungeKutta(alpha => Bogetti.RatePerS(alpha, 100 + Zero), Exact(1), (minutes * 60) - 1, 40000);
        Printed.Agrees(degree, Exact(minutes * 60), degree < .1 ? 5 : 6);
        Assert.Equal(degree, computed, 5e-7);
    }

    [Theory]
    [InlineData(10, 26.042)]
    [InlineData(20, 10.154)]
    [InlineData(30, 4.213)]
    [Verifies("cup-time", Check.IndependentCode,
        "law S1 solved with an independent solver: α = .05 after 26.042, 10.154, 4.213 min at 10, 20, 30 °C")]
    public void Law_S1_gels_when_an_independent_solver_says(double celsius, double minutes) =>
        Printed.Agrees(minutes, WarmingCup.TimeS(S1, celsius + Zero, 0, .05, Trace.None) / 60, minutes < 10 ? 4 : 5);

    [Fact]
    [Verifies("cup-time", Check.IndependentCode,
        "law S2 from 20 °C solved with an independent solver: 11.71 min held, 10.14 min without loss of heat")]
    [Verifies("adiabatic-rise", Check.WorkedExample, "by hand: .45·350 kJ/kg/(1250 J/(kg·K)) = 126 K")]
    public void Cup_that_keeps_its_heat_gels_sooner_by_what_an_independent_solver_says()
    {
        var law = new CureLaw(1.2e7, 68e3, 1.5e8, 60e3, .9, 1.6);
        var rise = WarmingCup.RiseK(.45, 350e3, 1250, Trace.None);

        Printed.Matches(126, rise);
        Printed.Agrees(11.71, WarmingCup.TimeS(law, 20 + Zero, 0, .05, Trace.None) / 60, 4);
        Printed.Agrees(10.14, WarmingCup.TimeS(law, 20 + Zero, rise, .05, Trace.None) / 60, 4);
    }

    [Fact]
    public void Cured_compound_cures_no_further() => Assert.Equal(0, S1.RatePerS(1, 300));

    [Fact]
    [Verifies("cure-time", Check.IndependentCode, "law S1 at 20 °C, α = .05 after 10.154 min, solved with an independent solver")]
    public void Closed_form_gives_the_gel_time_of_S1() =>
        Printed.Agrees(10.154, CureShape.ReactionTime(.05, 200, 1, Trace.None) / 2.0e-5 / 60, 5);

    [Theory]
    [InlineData(.3, 50, 1)]
    [InlineData(.9, .5, 2)]
    [InlineData(.9, 1e6, 3)]
    [InlineData(.95, 20, 5)]
    [Verifies("cure-time", Check.IndependentCode, "Simpson's rule on the integrand")]
    public void Closed_form_is_the_integral(double degree, double acceleration, int order)
    {
        // With u = ln(1 + c·α) the integrand is smooth however steep the start is.
        double Integrand(double u)
        {
            var alpha = (Math.Exp(u) - 1) / acceleration;
            return 1 / (acceleration * Math.Pow(1 - alpha, order));
        }

        var expected = Reference.Integral(Integrand, 0, Math.Log(1 + (acceleration * degree)), 200000);
        Printed.Matches(expected, CureShape.ReactionTime(degree, acceleration, order, Trace.None), 1e-9);
    }

    private static double AtInfinity(double at20, double energy) => at20 * Math.Exp(energy / (8.314462618 * (20 + Zero)));
}
