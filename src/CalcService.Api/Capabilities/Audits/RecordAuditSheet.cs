using CalcService.Api.Contract;
using CalcService.Api.Sheets;
using CalcService.Api.Units;
using CalcService.Engine.Audits;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>The audit for the folder of the record, with boxes to correct and to sign.</summary>
public static class RecordAuditSheet
{
    private static readonly Dictionary<RecordStanding, string> Standings = new()
    {
        [RecordStanding.Accepted] = "Accepted: the record proves its end.",
        [RecordStanding.AcceptedWithRemarks] = "Accepted with remarks: see what was found.",
        [RecordStanding.Incomplete] = "Incomplete: the end waits until what is missing is known.",
        [RecordStanding.Refused] = "Refused: the end is taken out of use until a competent person has decided.",
    };

    public static string Write(RecordAuditRequest request, Answer<RecordAuditResult> answer) => SheetPage.Write(
        "Audit of a record",
        $"{request.Record?.Number ?? "no number"} · {request.Record?.End ?? "no mark"} · {request.AuditedOn:yyyy-MM-dd}",
        answer,
        page =>
        {
            var result = answer.Result;
            page.Add("p", Standings[result.Standing]);
            page.Add("p", $"{result.Items.Asked - result.Items.Missing.Count} of {result.Items.Asked} items are there.");
            if (result.Items.Missing.Count > 0)
            {
                page.Add("h2", "Missing")
                    .Table(["Item", "Looked up", "Entered by", "Date"], result.Items.Missing.Select(item => new[] { item, "", "", "" }));
            }

            page.Raw($"<div class=\"picture\">{Picture(request, answer)}</div>");
            Recomputed(page, request, result.Recomputed);
            page.Checks(result.Checks);
            page.Add("h2", "Signed").Table(["Audited by", "Decided by", "Date"], [["", "", ""]]);
        },
        stop: "REFUSED",
        words: Headline.Of("ACCEPTED", "ACCEPTED WITH REMARKS", "INCOMPLETE"));

    public static string Picture(RecordAuditRequest request, Answer<RecordAuditResult> answer) =>
        RecordPicture.Write(request.Times ?? new(), answer.Result.Recomputed);

    private static void Recomputed(SheetHtml page, RecordAuditRequest request, RecomputedNumbers plan) =>
        page.Add("h2", "Recomputed").Table(["What", "Recorded", "From the record"],
    [
        ["Resin in the basket", Or(request.Mix?.Volume), $"{Or(plan.ResinVolume.Low)} to {Or(plan.ResinVolume.High)}"],
        ["Kits of the mix", Or(plan.Mixed), $"{Or(plan.Needed)} needed"],
        ["Dose for each kit", request.Mix?.DosesPerKit is { } dose ? SheetText.Text(dose) : SheetText.NotKnown,
            plan.DosesPerKit is { } doses ? SheetText.Text(doses) : SheetText.NotKnown],
        ["Full after mixing", Between(request.Times?.MixedAt, request.Times?.PouredAt), $"pot life {SheetText.Most(plan.PotLife)}"],
        ["Gel after mixing", Or(plan.Gel.Observed), $"{Or(plan.Gel.Earliest)} to {Or(plan.Gel.Latest)}, ratio {Or(plan.Gel.Ratio)}"],
        ["First moved", At(request.Times?.MovedAt), $"not before {At(plan.UndisturbedUntil)}"],
        ["Released", At(request.Times?.ReleasedAt), $"not before {At(plan.LoadFrom)}"],
        ["Test load", SheetText.Or(request.Proof?.Load, 4),
            $"{SheetText.Least(plan.LeastTestLoad, 4)} to {SheetText.Most(plan.MostTestLoad, 4)}"],
        ["Seating", Or(request.Proof?.Seating), $"{SheetText.Least(plan.LeastSeating)} to {SheetText.Most(plan.MostSeating)}"],
    ]);

    private static string Or(Quantity? quantity) => SheetText.Or(quantity);

    private static string At(DateTimeOffset? at) => at is { } known ? SheetText.Moment(known) : SheetText.NotKnown;

    private static string Between(DateTimeOffset? from, DateTimeOffset? to) =>
        from is { } start && to is { } end ? $"{SheetText.Text((long)Math.Round((end - start).TotalMinutes))} min" : SheetText.NotKnown;
}
