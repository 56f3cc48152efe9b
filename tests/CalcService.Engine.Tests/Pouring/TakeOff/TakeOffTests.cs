using CalcService.Engine.Pouring.TakeOff;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;

namespace CalcService.Engine.Tests.Pouring.TakeOff;

/// <summary>
/// One quote worked by hand. Six ends of 20 mm rope, baskets 23/45/100 ± 0.5 mm: 78.586 cm³ of resin each at most, with
/// 10 % allowance 518.67 cm³. Kits of 300, 700 and 1100 mL for 19, 41 and 62: two small ones cost 38, less than a medium one.
/// </summary>
public sealed class TakeOffTests
{
    private static readonly TakeOffResult Worked = GoodQuote.TakeOff(GoodQuote.Input);

    [Fact]
    public void Kits_of_the_worked_quote_are_two_and_a_spare_one()
    {
        // 3 × 19 = 57.
        Assert.Equal([new KitLine("small", null, 2, 1, 0, 3, 19, 57)], Worked.Kits);
        // At 20 °C the sheet asks for no dose: nothing to buy costs nothing.
        Assert.Equal(new DoseLine(0, 0, 0, 0, 2.5m, 0), Worked.Doses);
    }

    [Fact]
    public void Seizing_wire_of_the_worked_quote_is_turns_times_their_circle()
    {
        // 3 seizings (0.787 in × 3 = 2.36), 30 mm wide, 20 turns of π·21.5 mm = 67.5442 mm: 4.05265 m; six ends 24.3159 m, at 10 for 100 m
        // 2.4316.
        var wire = Line(Worked, "seizingWire");
        Assert.Equal(QuantityKind.Length, wire.Amount.Kind);
        Printed.Agrees(24.3159, wire.Amount.Si, 6);
        Assert.Equal(2.4316m, wire.Cost);
    }

    [Fact]
    public void Seal_and_cleaner_of_the_worked_quote_are_so_much_for_each_end()
    {
        // 6 × 25 mL = 150 mL, at 8 a litre 1.20.
        Printed.Matches(150e-6, Line(Worked, "seal").Amount.Si);
        Assert.Equal(("request", 1.2m), (Line(Worked, "seal").From, Line(Worked, "seal").Cost));
        // 6 × 2 × 93.9598 cm³ = 1127.52 cm³, at 6 a litre 6.7651.
        Printed.Agrees(1127.52e-6, Line(Worked, "cleaner").Amount.Si, 6);
        Assert.Equal(("estimate", 6.7651m), (Line(Worked, "cleaner").From, Line(Worked, "cleaner").Cost));
    }

    [Fact]
    public void Labour_of_the_worked_quote_is_minutes_at_one_a_minute()
    {
        // Two kits of 90 s and six baskets of 2 min are 15 min; all other times are the stated defaults, the wait is given.
        (string, string, long, double, decimal?)[] expected =
        [
            ("setUp", "job", 1, 30, 30), ("measureAndSeize", "end", 6, 90, 90), ("cutAndOpen", "end", 6, 120, 120),
                ("cleanAndDry", "end", 6, 90, 90),
            ("positionAndSeal", "end", 6, 90, 90), ("mixAndPour", "job", 1, 15, 15), ("waitForGel", "job", 1, 30, 30),
            ("finish", "end", 6, 60, 60),
            ("record", "end", 6, 60, 60),
        ];
        Assert.Equal(expected, Worked.Labour.Select(line => (line.Task, line.Per, line.Times, line.TotalS!.Value / 60, line.Cost)));
    }

    [Fact]
    public void Totals_of_the_worked_quote_are_the_sums_of_its_lines()
    {
        // 57 + 2.4316 + 1.2 + 6.7651 = 67.3967; 30 + 6·(15 + 20 + 15 + 15 + 10 + 10) + 15 + 30 = 585.
        Assert.Equal((67.3967m, 585m, 652.3967m), (Worked.MaterialsCost, Worked.LabourCost, Worked.TotalCost));
        Assert.Empty(Worked.Missing);
        Assert.Equal(("EUR", new DateOnly(2026, 3, 1), 5 * 86400), (Worked.Currency, Worked.PriceDate, Worked.LeadTimeS));
    }

    [Fact]
    public void Waste_of_the_worked_quote_is_what_the_kits_hold_too_much()
    {
        // 600 − 518.67 = 81.33 cm³, 13.6 % of what is mixed.
        Printed.Agrees(518.67e-6, Worked.Waste!.NeededM3, 5);
        Printed.Agrees(81.33e-6, Worked.Waste.LeftoverM3, 4);
        Printed.Agrees(.136, Worked.Waste.Share, 3);
    }

    [Fact]
    public void Time_of_the_request_beats_the_default_and_its_rate_the_hourly_one()
    {
        var takeOff = GoodQuote.With(quote => quote with
        {
            TaskTimesS = new Dictionary<string, double> { ["cutAndOpen"] = 25 * 60, [LabourTask.MixAndPour] = 4 * 60,
                [LabourTask.ProofLoad] = 20 * 60 },
            TaskRates = new Dictionary<string, decimal> { ["cutAndOpen"] = 90 },
        });

        // 6 × 25 min = 2.5 h at 90; 6 × 4 min and 6 × 20 min at 60 an hour.
        Assert.Equal(("request", 225m), Paid("cutAndOpen"));
        Assert.Equal(("request", 24m), Paid(LabourTask.MixAndPour));
        Assert.Equal(("request", 120m), Paid(LabourTask.ProofLoad));

        (string, decimal?) Paid(string task) =>
            takeOff.Labour.Where(line => line.Task == task).Select(line => (line.From, line.Cost)).Single();
    }

    [Fact]
    public void Wait_is_the_latest_gel_in_the_cone_once()
    {
        var plan = GoodPour.Plan(GoodQuote.Input with { Quote = null }).Result;
        var wait = plan.TakeOff.Labour.Single(line => line.Task == LabourTask.WaitForGel);
        Assert.Equal(("plan", 1), (wait.From, wait.Times));
        Printed.Matches(plan.Gel!.InCone.LatestS, wait.TotalS!.Value);
    }

    internal static MaterialLine Line(TakeOffResult takeOff, string material) =>
        takeOff.Materials.Single(line => line.Material == material);
}
