using CalcService.Api.Contract;
using CalcService.Api.Sheets;
using CalcService.Engine.Matching;
using static CalcService.Api.Sheets.SheetText;

namespace CalcService.Api.Capabilities.Matching;

/// <summary>The match for the job's folder, with boxes to check rope and socket by hand.</summary>
public static class TerminationMatchSheet
{
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["workingLoad"] = "working load", ["proofLoad"] = "proof load", ["breakingForce"] = "breaking force",
    };

    public static string Write(TerminationMatchRequest request, Answer<TerminationMatchResult> answer) => SheetPage.Write(
        "Match of rope and socket",
        $"{request.Reference ?? "no reference"} · {Or(request.Rope.Diameter)} {request.Rope.Construction}",
        answer,
        page =>
        {
            Check(page, request, answer.Result);
            Loads(page, request, answer.Result);
            page.Raw($"<div class=\"picture\">{Picture(request, answer)}</div>");
            Cone(page, answer.Result.LoadTransfer);
        },
        stop: "DO NOT USE TOGETHER");

    public static string Picture(TerminationMatchRequest request, Answer<TerminationMatchResult> answer) =>
        ConePicture.Write(ConeDrawings.Of(request, answer.Result));

    /// <summary>A load as people call it.</summary>
    internal static string NameOf(string load) => Names.GetValueOrDefault(load, load);

    private static void Check(SheetHtml page, TerminationMatchRequest request, TerminationMatchResult result)
    {
        var (basket, third) = (request.Socket.Basket, result.WireSpacing.Count > 1 ? result.WireSpacing[1].Clear : null);
        page.Add("h2", "Check on the bench").Table(["What", "Matched with", "Read now", "By"],
        [
            ["Rope, certificate",
                $"{Or(result.Rope.BreakingForce)} ({result.Rope.BreakingForceFrom ?? "none"}) {request.Rope.Certificate?.Number}", "", ""],
            ["Rope diameter, small end", $"{Or(request.Rope.Diameter)} in {Or(basket.SmallEndDiameter)}", "", ""],
            ["Mouth, length of basket", $"{Or(basket.LargeEndDiameter)}, {Or(basket.Length)}", "", ""],
            ["Socket: mark, standard, strength", $"{request.Socket.Standard ?? "no standard"}, {Or(request.Socket.BreakingForce)}", "", ""],
            ["Gap between wires at one third", Or(third), "", ""],
            ["Core in the broom",
                result.Core switch { CoreTreatment.CutOut => "cut out to the seizing", CoreTreatment.Unlaid => "unlaid into the broom",
                _ => "not known" }, "", ""],
        ]);
    }

    private static void Loads(SheetHtml page, TerminationMatchRequest request, TerminationMatchResult result)
    {
        var loads = result.Loads;
        page.Add("h2", "Loads")
            .Table(["Design factor", "Working load limit", "Load of the duty", "Proof load", "End over rope", "Socket over rope"],
        [
            [$"{Or(loads.DesignFactor)} ({loads.DesignFactorFrom ?? "none"})", SheetText.Most(loads.WorkingLoadLimit, 4),
                SheetText.Or(request.Duty?.Load, 4), SheetText.Most(loads.ProofLoad, 4), Or(loads.Efficiency), Or(result.StrengthRatio)],
        ]);
    }

    private static void Cone(SheetHtml page, LoadTransfer? transfer)
    {
        if (transfer is null)
        {
            page.Add("p", "How the cone hands its load over is not computed.");
            return;
        }

        page.Add("h2", "Cone under load")
            .Table(["Load", "Lower, middle, upper third", "Moves at the mouth", "Pressure at the small end", "Of the compound's strength",
            "Hoop stress of the socket"],
            transfer.Cases.Select(one => new[]
            {
                $"{NameOf(one.Case)} {Or(one.Load)}",
                $"{Or(one.Shares.Lower)}, {Or(one.Shares.Middle)}, {Or(one.Shares.Upper)}",
                Or(one.SeatingAtMouth),
                Or(one.LipPressure),
                Or(one.CompoundUtilisation),
                Or(one.HoopStress),
            }));
        page.Add("h2", "What the uncertain numbers change").Table(["Number", "From", "To", "Lower third", "Moves at the mouth"],
            transfer.Sensitivity.Select(one => new[]
            {
                one.Of, Or(one.Low.Value), Or(one.High.Value), $"{Or(one.Low.LowerThird)} to {Or(one.High.LowerThird)}",
                    $"{Or(one.Low.SeatingAtMouth)} to {Or(one.High.SeatingAtMouth)}",
            }));
    }
}
