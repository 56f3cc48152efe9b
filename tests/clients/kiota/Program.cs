using CalcService.Client;
using CalcService.Client.Kiota;
using CalcService.Client.Kiota.Models;
using Microsoft.Kiota.Abstractions.Authentication;
using Microsoft.Kiota.Http.HttpClientLibrary;

return await Expect.RunAsync("kiota", args, async (address, cancel) =>
{
    using var adapter = new HttpClientRequestAdapter(new AnonymousAuthenticationProvider()) { BaseUrl = address.ToString().TrimEnd('/') };
    var client = new CalcClient(adapter);

    var plan = await client.V1.PourPlans.PostAsync(Requests.Plan(), cancellationToken: cancel);
    Expect.That(plan?.Decision == Decision.ProceedWithCare, $"decision is {plan?.Decision}");
    var nominal = plan!.Result?.Ends?.Single().ResinVolume?.Nominal;
    Expect.That(nominal?.Unit == Volume_unit.Cm3, $"resin volume is in {nominal?.Unit}");
    Expect.That(Math.Abs(nominal!.Value!.Value - Expect.ResinVolume) <= Expect.ResinTolerance, $"resin volume is {nominal.Value}");
    Expect.That(plan.Trace is { Count: 0 }, "trace without ?detail=full");

    var full = await client.V1.PourPlans.PostAsync(Requests.Plan(), request => request.QueryParameters.Detail = Detail.Full, cancel);
    Expect.That(full?.Trace is { Count: > 0 }, "no trace with ?detail=full");

    await RefuseAsync(client, cancel);

    await EveryOperation.RunAsync(new Generated(client), args[1], cancel);

    var units = await client.V1.Units.GetAsync(cancellationToken: cancel);
    var inch = units?.Kinds?.Single(kind => kind.Kind == "Length").Units?.Single(unit => unit.Code == "in");
    Expect.That(inch?.Ucum == "[in_i]", $"UCUM code of the inch is {inch?.Ucum}");
});

static async Task RefuseAsync(CalcClient client, CancellationToken cancel)
{
    var request = Requests.Plan();
    request.Ends![0].Rope!.Diameter = new Length { Value = 38.5, Unit = Length_unit.M };
    try
    {
        await client.V1.PourPlans.PostAsync(request, cancellationToken: cancel);
    }
    catch (Problem problem)
    {
        Expect.That(problem.ResponseStatusCode == 422 && problem.Status == 422, $"status is {problem.ResponseStatusCode}");
        Expect.That(problem.Errors?.Single().Pointer == Expect.RefusedPointer, $"pointer is {problem.Errors?[0].Pointer}");
        return;
    }

    Expect.That(false, "a rope 38.5 m thick got a plan");
}
