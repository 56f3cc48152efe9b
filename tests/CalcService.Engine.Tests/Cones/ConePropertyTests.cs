using CalcService.Engine.Cones;
using CalcService.Engine.Tests.Numerics;
using CsCheck;

namespace CalcService.Engine.Tests.Cones;

/// <summary>What holds for every cone.</summary>
public sealed class ConePropertyTests
{
    /// <summary>Any cone that a shop could meet, and some that it couldn't.</summary>
    private static readonly Gen<Cone> AnyCone =
        from smallEnd in Gen.Double[.005, .150]
        from degrees in Gen.Double[2, 20]
        from slenderness in Gen.Double[1.5, 8]
        from wall in Gen.Double[1.15, 2.5]
        from growth in Gen.Double[.7, 1.5]
        from friction in Gen.Double[0, .5]
        from shrinkage in Gen.Double[0, .02]
        from modulus in Gen.Double[1e9, 20e9]
        from poisson in Gen.Double[0, .45]
        from wires in Gen.Double[0, .8]
        let length = slenderness * smallEnd
        let mouth = smallEnd + (2 * length * Math.Tan(degrees / 2 * Math.PI / 180))
        select new Cone
        {
            Basket = new() { SmallEndDiameterM = smallEnd, LargeEndDiameterM = mouth, LengthM = length },
            OuterAtSmallEndM = smallEnd * wall,
            OuterAtMouthM = mouth * (1 + ((wall - 1) * growth)),
            Friction = friction,
            Shrinkage = shrinkage,
            CompoundModulusPa = modulus,
            RadialModulusPa = 1.5 * modulus,
            PoissonRatio = poisson,
            WireAreaM2 = wires * Math.PI / 4 * smallEnd * smallEnd,
        };

    /// <summary>Loads from a hair to far above what steel wires of that section would hold.</summary>
    private static readonly Gen<double> AnyStress = Gen.Double[-3, 9.3].Select(exponent => Math.Pow(10, exponent));

    private static double Load(Cone cone, double stressPa) => stressPa * cone.Basket.SmallEndDiameterM * cone.Basket.SmallEndDiameterM;

    [Fact]
    public void Wall_takes_the_whole_load_whatever_the_cone() =>
        Gen.Select(AnyCone, AnyStress).Sample((cone, stress) =>
        {
            var load = Load(cone, stress);
            var whole = cone.At(load);
            // The cone up to its edge by itself, so that stations lie on both ends of the contact.
            var share = whole.ContactToM / cone.Basket.LengthM;
            const int Steps = 600;
            var state = share < 1 ? Cut(cone, whole.ContactToM).At(load, Steps) : cone.At(load, Steps);
            var (t, h) = (cone.Basket.Taper, whole.ContactToM / Steps);
            var sum = 0.0;
            for (var i = 0; i <= Steps; i++)
            {
                var weight = i is 0 or Steps ? 1 : i % 2 == 1 ? 4 : 2;
                sum += weight * 2 * Math.PI * cone.RadiusAtM(i * h) * state.Stations[i].PressurePa * (t + cone.Friction) * h / 3;
            }

            Printed.Matches(load, sum, 1e-9);
            Printed.Matches(load, whole.Stations[0].ForceN, 1e-10);
        }, iter: 150);

    [Fact]
    public void Similar_cones_under_similar_loads_have_the_same_stresses() =>
        Gen.Select(AnyCone, AnyStress, Gen.Double[.2, 5]).Sample((cone, stress, k) =>
        {
            var larger = cone with
            {
                Basket = new() { SmallEndDiameterM = k * cone.Basket.SmallEndDiameterM,
                    LargeEndDiameterM = k * cone.Basket.LargeEndDiameterM, LengthM = k * cone.Basket.LengthM },
                OuterAtSmallEndM = k * cone.OuterAtSmallEndM,
                OuterAtMouthM = k * cone.OuterAtMouthM,
                WireAreaM2 = k * k * cone.WireAreaM2,
            };
            var (one, other) = (cone.At(Load(cone, stress)), larger.At(Load(larger, stress)));
            Near(one.Stations.Select(station => station.PressurePa), other.Stations.Select(station => station.PressurePa));
            Near(one.Stations.Select(station => station.HoopPa), other.Stations.Select(station => station.HoopPa));
            Near(one.Stations.Select(station => k * station.SeatM), other.Stations.Select(station => station.SeatM));
            Printed.Matches(k * k * cone.FullContactLoadN(), larger.FullContactLoadN(), 1e-8);
        }, iter: 150);

    [Fact]
    public void Softer_of_everything_by_the_same_factor_seats_as_under_a_larger_load() =>
        Gen.Select(AnyCone, AnyStress, Gen.Double[.1, 10]).Sample((cone, stress, k) =>
        {
            var stiffer = cone with
            {
                CompoundModulusPa = k * cone.CompoundModulusPa, RadialModulusPa = k * cone.RadialModulusPa,
                WireModulusPa = k * cone.WireModulusPa, SocketModulusPa = k * cone.SocketModulusPa,
            };
            var load = Load(cone, stress);
            var (one, other) = (cone.At(load), stiffer.At(k * load));
            Near(one.Stations.Select(station => station.SeatM), other.Stations.Select(station => station.SeatM));
            Near(one.Stations.Select(station => k * station.PressurePa), other.Stations.Select(station => station.PressurePa));
        }, iter: 100);

    [Fact]
    public void Answer_does_not_depend_on_the_number_of_stations() =>
        Gen.Select(AnyCone, AnyStress).Sample((cone, stress) =>
        {
            var (few, many) = (cone.At(Load(cone, stress), 3), cone.At(Load(cone, stress), 240));
            Printed.Matches(few.SeatAtSmallEndM, many.SeatAtSmallEndM, 1e-9);
            Printed.Matches(few.SeatAtMouthM, many.SeatAtMouthM, 1e-9);
            Printed.Matches(few.EdgePressurePa, many.EdgePressurePa, 1e-7);
            Assert.Equal(few.Shares!.Lower, many.Shares!.Lower, 1e-9);
            Assert.Equal(few.Shares.Upper, many.Shares.Upper, 1e-9);
            Printed.Matches(few.LipPressurePa, many.LipPressurePa, 1e-7);
        }, iter: 100);

    [Fact]
    public void More_load_seats_further_and_bears_further_up() =>
        Gen.Select(AnyCone, AnyStress, Gen.Double[1.01, 10]).Sample((cone, stress, more) =>
        {
            var (one, other) = (cone.At(Load(cone, stress)), cone.At(Load(cone, stress) * more));
            Assert.True(other.SeatAtSmallEndM > one.SeatAtSmallEndM);
            Assert.True(other.ContactToM >= one.ContactToM);
            Assert.True(other.HoopPa > one.HoopPa);
        }, iter: 150);

    [Fact]
    public void Load_of_full_contact_divides_the_cones_that_bear_all_along() =>
        AnyCone.Where(cone => cone is { Shrinkage: > .001, WireAreaM2: > 1e-5 }).Sample(cone =>
        {
            var load = cone.FullContactLoadN();
            Assert.True(cone.At(load * .99).ContactToM < cone.Basket.LengthM);
            Assert.Equal(cone.Basket.LengthM, cone.At(load * 1.01).ContactToM);
        }, iter: 100);

    private static Cone Cut(Cone cone, double lengthM)
    {
        var share = lengthM / cone.Basket.LengthM;
        return cone with
        {
            Basket = cone.Basket with { LengthM = lengthM, LargeEndDiameterM = cone.Basket.DiameterAtM(share) },
            OuterAtMouthM = cone.OuterAtSmallEndM + (share * (cone.OuterAtMouthM - cone.OuterAtSmallEndM)),
        };
    }

    private static void Near(IEnumerable<double> expected, IEnumerable<double> actual)
    {
        var (one, other) = (expected.ToArray(), actual.ToArray());
        var scale = one.Max(Math.Abs);
        Assert.All(one.Zip(other), pair => Assert.InRange(pair.Second, pair.First - (1e-7 * scale), pair.First + (1e-7 * scale)));
    }
}
