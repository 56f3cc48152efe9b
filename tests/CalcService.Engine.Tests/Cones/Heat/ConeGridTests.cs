using CalcService.Engine.Cones.Heat;

namespace CalcService.Engine.Tests.Cones.Heat;

/// <summary>What grid and steps of the answers are worth, against fine ones.</summary>
public sealed class ConeGridTests
{
    private static readonly ConeGrid FineSlice = new(96, 8, 1, 0, new(2e-3, 2e-5));
    private static readonly ConeGrid FineCone = new(28, 4, 40, 16, new(.02, 1e-4));

    private static readonly Dictionary<string, (ConeHeatInput Input, double Share)> Slices = new()
    {
        ["thick"] = (Cones.Thick(), 0),
        ["thick with 12 % wire"] = (Cones.Thick(.116 * Math.PI * .0009), 0),
        ["thick with 44 % wire"] = (Cones.Thick(.44 * Math.PI * .0009), 0),
        ["thick and sudden"] = (Cones.Thick() with { Law = Cones.Sudden }, 0),
        ["small end"] = (Cones.Example(Cones.Hot), 0),
        ["third"] = (Cones.Example(Cones.Hot), 1 / 3.0),
        ["mouth"] = (Cones.Example(Cones.Hot), 1),
    };

    private static readonly Dictionary<string, ConeHeatInput> Whole = new()
    {
        ["example"] = Cones.Example(Cones.Hot),
        ["example, sudden"] = Cones.Example(Cones.Sudden),
        ["large"] = Cones.Large(Cones.Hot),
    };

    public static TheoryData<string> SliceNames => [.. Slices.Keys];

    public static TheoryData<string> WholeNames => [.. Whole.Keys];

    [Theory]
    [MemberData(nameof(SliceNames))]
    public void Slice_is_within_a_tenth_of_a_kelvin_and_of_a_minute(string name)
    {
        var (input, share) = Slices[name];
        input = input with { Degrees = [.05, .5, .9], EndDegree = null, HorizonS = 3 * 3600 };
        Holds(.1, Cones.Slice(input with { Grid = FineSlice }, share), Cones.Slice(input, share));
    }

    [Theory]
    [MemberData(nameof(WholeNames))]
    public void Cone_is_within_half_a_kelvin_and_half_a_minute(string name)
    {
        var input = Whole[name] with { Degrees = [.05, .5, .9], EndDegree = null, HorizonS = 2 * 3600 };
        Holds(.5, Cones.Whole(input with { Grid = FineCone }), Cones.Whole(input));
    }

    [Fact]
    public void Fronts_that_meet_are_said_and_leave_the_times_alone()
    {
        var input = Cones.Thick() with { Law = Cones.Sudden, HorizonS = 3600 };
        var (coarse, fine) = (Cones.Slice(input), Cones.Slice(input with { Grid = FineSlice }));

        Assert.True(coarse.FrontsMeet);
        // Twenty degrees and 126 K of its own heat are 146 °C.
        Assert.InRange(coarse.Peak.TemperatureK - Cones.Zero, 146, 200);
        Assert.InRange(coarse.Peak.TemperatureK - fine.Peak.TemperatureK, 1, 60);
        Assert.False(Cones.Slice(Cones.Thick()).FrontsMeet);
    }

    private static void Holds(double bar, ConeHeatResult fine, ConeHeatResult found)
    {
        if (!found.FrontsMeet)
        {
            Assert.InRange(found.Peak.TemperatureK - fine.Peak.TemperatureK, -bar, bar);
            // The time of a flat top says nothing.
            Assert.InRange((found.Peak.TimeS - fine.Peak.TimeS) / 60, fine.Peak.TemperatureK > 330 ? -bar : -2, fine.Peak.TemperatureK > 330
                ? bar : 2);
        }

        Assert.InRange(found.OuterPeak.TemperatureK - fine.OuterPeak.TemperatureK, -bar, bar);
        foreach (var (exact, one) in fine.Degrees.Zip(found.Degrees))
        {
            Assert.InRange((one.FirstS!.Value - exact.FirstS!.Value) / 60, -bar, bar);
            Assert.Equal(exact.EverywhereS is null, one.EverywhereS is null);
            Assert.InRange(((one.EverywhereS - exact.EverywhereS) / 60) ?? 0, -bar, bar);
        }
    }
}
