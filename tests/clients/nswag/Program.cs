using CalcService.Client;
using CalcService.Client.NSwag;

return await Expect.RunAsync("nswag", args, async (address, cancel) =>
{
    using var http = new HttpClient { BaseAddress = address };
    var client = new CalcClient(http);

    var plan = await client.PlanPourAsync(Requests.Plan(), cancellationToken: cancel);
    Expect.That(plan.Decision == Decision.ProceedWithCare, $"decision is {plan.Decision}");
    var nominal = plan.Result.Ends.Single().ResinVolume.Nominal;
    Expect.That(nominal?.Unit == VolumeUnit.Cm3, $"resin volume is in {nominal?.Unit}");
    Expect.That(Math.Abs(nominal!.Value - Expect.ResinVolume) <= Expect.ResinTolerance, $"resin volume is {nominal.Value}");
    Expect.That(plan.Trace.Count == 0, "trace without ?detail=full");

    var full = await client.PlanPourAsync(Requests.Plan(), Detail.Full, cancel);
    Expect.That(full.Trace.Count > 0, "no trace with ?detail=full");

    await RefuseAsync(client, cancel);

    await EveryOperation.RunAsync(new Generated(client), args[1], cancel);

    var units = await client.ListUnitsAsync(cancel);
    var inch = units.Kinds.Single(kind => kind.Kind == "Length").Units.Single(unit => unit.Code == "in");
    Expect.That(inch.Ucum == "[in_i]", $"UCUM code of the inch is {inch.Ucum}");
});

static async Task RefuseAsync(CalcClient client, CancellationToken cancel)
{
    var request = Requests.Plan();
    request.Ends.Single().Rope.Diameter = new Length { Value = 38.5, Unit = LengthUnit.M };
    try
    {
        await client.PlanPourAsync(request, cancellationToken: cancel);
    }
    catch (ApiException<Problem> refused)
    {
        Expect.That(refused.StatusCode == 422 && refused.Result.Status == 422, $"status is {refused.StatusCode}");
        Expect.That(refused.Result.Errors.Single().Pointer == Expect.RefusedPointer, $"pointer is {refused.Result.Errors.First().Pointer}");
        return;
    }

    Expect.That(false, "a rope 38.5 m thick got a plan");
}
