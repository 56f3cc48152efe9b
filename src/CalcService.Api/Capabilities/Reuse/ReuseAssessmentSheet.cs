using CalcService.Api.Contract;
using CalcService.Api.Sheets;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Reuse;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>The assessment for the socket's folder, with boxes to measure again and to sign.</summary>
public static class ReuseAssessmentSheet
{
    private const int Digits = 4;

    private static readonly Dictionary<Disposition, string> Dispositions = new()
    {
        [Disposition.Reuse] = "Reuse: the socket may be poured again once it is matched with its rope.",
        [Disposition.ReuseAfterWork] = "Reuse after work: do what stands under Work first, then look again.",
        [Disposition.Hold] = "Hold: set the socket aside and mark it; facts are missing.",
        [Disposition.Withdraw] = "Withdraw: take the socket out of use and mark it so that nobody pours it again.",
    };

    public static string Write(ReuseAssessmentRequest request, Answer<ReuseAssessmentResult> answer) => SheetPage.Write(
        "Used socket",
        $"{request.Socket.Id ?? "no mark"} · {request.Reference ?? "no reference"} · {request.AssessedOn:yyyy-MM-dd}",
        answer,
        page =>
        {
            page.Add("p", Dispositions[answer.Result.Disposition] + (IsNotForThis(answer)
                ? " It is not for the rope and load of this request." : ""));
            Work(page, answer.Result.Work);
            page.Raw($"<div class=\"picture\">{Picture(request, answer)}</div>");
            Bore(page, answer.Result.Wear);
            Ears(page, request, answer.Result.Wear);
            Strength(page, answer.Result);
            page.Checks(answer.Result.Checks);
            page.Add("h2", "Signed").Table(["Measured by", "Searched for cracks by", "Decided by", "Date"], [["", "", "", ""]]);
        },
        stop: answer.Result.Disposition == Disposition.Withdraw ? "WITHDRAW" : "NOT FOR THIS USE",
        words: answer.Result.Disposition == Disposition.ReuseAfterWork ? Headline.Of("WORK FIRST", "WORK FIRST") : null);

    public static string Picture(ReuseAssessmentRequest request, Answer<ReuseAssessmentResult> answer) =>
        WornBasketPicture.Write(WornBaskets.Of(request, answer.Result));

    /// <summary>Wear shows in the fourth digit.</summary>
    internal static string Or(Quantity? quantity) => SheetText.Or(quantity, Digits);

    private static bool IsNotForThis(Answer<ReuseAssessmentResult> answer) =>
        answer.Decision == Decision.DoNotProceed && answer.Result.Disposition != Disposition.Withdraw;

    private static void Work(SheetHtml page, IReadOnlyList<ReuseWork> work)
    {
        if (work.Count > 0)
        {
            page.Add("h2", "Work").Table(["What to do", "Done by"], work.Select(one => new[] { one.Task, "" }));
        }
    }

    private static void Bore(SheetHtml page, WearNumbers wear) => page.Add("h2", "Bore").Table(
        ["From the small end", "Drawing", "Smallest", "Largest", "Growth", "Ovality", "Measured again"],
        wear.Stations.Select(one =>
            new[] { Or(one.FromSmallEnd), Or(one.Nominal), Or(one.Smallest), Or(one.Largest), Or(one.Growth), Or(one.Ovality), "" }));

    private static void Ears(SheetHtml page, ReuseAssessmentRequest request, WearNumbers wear)
    {
        var (drawn, found) = (request.Socket.Nominal, request.Socket.Measured);
        var holes = found?.PinHoleDiameters is { Count: > 0 } all ? string.Join(", ", all.Select(one => Or(one))) : SheetText.NotKnown;
        page.Add("h2", "Ears, pin and outside").Table(["Size", "Drawing", "Found", "Change", "Measured again"],
        [
            ["Pin hole", Or(drawn.PinHoleDiameter), holes, $"{Or(wear.PinHoleGrowth)} wider, {Or(wear.PinHoleOvality)} out of round", ""],
            ["Pin", Or(drawn.PinDiameter), Or(found?.PinDiameter), $"{Or(wear.PinWear)} lost", ""],
            ["Gap between the ears", Or(drawn.EarGap), Or(found?.EarGap), Or(wear.EarSpread), ""],
            ["Thickness of the ears", Or(drawn.EarThickness), Or(found?.EarThickness), $"{Or(wear.EarThicknessLoss)} lost", ""],
            ["Width of the ears", Or(drawn.EarWidth), Or(found?.EarWidth), $"{Or(wear.EarWidthLoss)} lost", ""],
            ["Hole's centre to the end of the ears", Or(drawn.EarEndDistance), Or(found?.EarEndDistance),
                $"{Or(wear.EarEndDistanceLoss)} lost", ""],
            ["Outside of the basket, small end", Or(drawn.OuterDiameter ?? drawn.OuterAtSmallEnd),
                Or(found?.OuterDiameter ?? found?.OuterAtSmallEnd), $"{Or(wear.OutsideLoss)} lost", ""],
            ["Deepest pit", "none", Or(wear.PitDepth), "", ""],
        ]);
    }

    private static void Strength(SheetHtml page, ReuseAssessmentResult result)
    {
        var (made, found, loads) = (result.Utilisation.AsMade, result.Utilisation.AsMeasured, result.Loads);
        page.Add("h2", "Strength with what is left")
            .Add("p", $"Rated load {Or(loads.RatedLoad)} with design factor {Or(loads.DesignFactor)}; proof load {Or(loads.ProofLoad)} "
                + $"against yield. 100 % is all that is allowed.");
        if (made is null || found is null)
        {
            page.Add("p", "Not computed: see what is missing.");
            return;
        }

        page.Table(["Part", "Rated, as made", "Rated, as measured", "Proof, as made", "Proof, as measured"],
            made.Parts.Zip(found.Parts).Select(pair => new[]
            {
                CheckTable.Name(pair.First.Id), Or(pair.First.AtRatedLoad), Or(pair.Second.AtRatedLoad), Or(pair.First.AtProofLoad),
                    Or(pair.Second.AtProofLoad),
            }));
    }
}
