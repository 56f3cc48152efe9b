using System.Globalization;
using CalcService.Api.Answers;
using CalcService.Api.Capabilities.Pouring.TakeOff;
using CalcService.Api.Contract;
using CalcService.Api.Sheets;
using static CalcService.Api.Sheets.SheetText;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>The pour plan for the wall of the shop, with boxes to fill in by hand.</summary>
public static class PourPlanSheet
{
    private const int Digits = 3;

    public static string Write(PourPlanRequest request, Answer<PourPlanResult> answer) => SheetPage.Write(
        "Pour plan",
        $"{request.Reference ?? "no reference"} · pour at {Clock(request.PourAt)} on "
            + $"{request.PourAt.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}",
        answer,
        page =>
        {
            Mixes(page, answer.Result);
            Basis(page, answer.Result);
            Ends(page, request, answer.Result);
            WorkSheet.HoldPoints(page, answer.Result.HoldPoints);
            WorkSheet.Steps(page, answer.Result.Sequence);
            TakeOffSheet.Write(page, answer.Result.TakeOff, isQuote: request.Quote is not null);
            page.Add("h2", "After the pour").Table(
                ["Mix", "Witness sample", "Gel seen at", "Seen in (vessel, cup, mouth, cone)", "Hardness", "Signed"],
                answer.Result.Mixes.Select(mix => new[] { Text(mix.Number), mix.WitnessSample.Label, "", "", "", "" }));
        },
        words: Headline.For(request.Purpose));

    public static string Picture(PourPlanRequest request, Answer<PourPlanResult> answer) =>
        BasketPicture.Write(Sections(request, answer.Result));

    private static void Basis(SheetHtml page, PourPlanResult result)
    {
        page.Add("p", $"Dew point {Or(result.DewPoint)}. Dose by the {result.DoseBasis?.Place ?? "colder of air and steel"}: "
            + (result.Dose is { } dose ? $"{dose.PerKit} for each kit, {dose.Total} in all." : "not known."));
        page.Add("p", $"Readings hold until {(result.ReadingsValidUntil is { } until ? Clock(until) : "?")}. "
            + (result.FlipsWhen.Count > 0 ? "The decision changes with " + string.Join("; ", result.FlipsWhen.Select(Flip)) + "." : ""));
    }

    private static string Flip(FlipsWhen flip)
    {
        var reading = flip.Reading switch { "airTemperature" => "air", "steelTemperature" => "steel", "compoundTemperature" => "compound",
            _ => "humidity" };
        return $"{reading} {flip.When} {(flip.When == "below" ? Least(flip.Value) : Most(flip.Value))}";
    }

    private static void Mixes(SheetHtml page, PourPlanResult result)
    {
        page.Add("h2", "Mix whole kits, one mix after another").Table(
            ["Mix", "Kits (lot)", "Doses", "Fills", "Start", "Stop pouring", "Mixed at", "Last basket full at"],
            result.Mixes.Select(mix => new[]
            {
                Text(mix.Number),
                string.Join(", ", mix.Kits.Select(kit => $"{kit.Count} {kit.Kit} ({kit.Lot ?? "to buy"})")),
                result.Dose is { } dose ? Text(dose.PerKit * mix.Kits.Sum(kit => kit.Count)) : "?",
                string.Join(", ", mix.Fills.Select(fill => $"{fill.Count} × {fill.End}")),
                mix.StartsAt is { } start ? Clock(start) : "?",
                mix.StopPouringAt is { } stop ? Clock(stop) : "?",
                "",
                "",
            }));
        page.Add("p", $"Pot life {Or(result.PotLife)} from the start of mixing; gel in the cone "
            + (result.GelInCone is { } gel ? $"{AnswerText.Of(gel.Earliest, Digits)} to {AnswerText.Of(gel.Latest, Digits)}" : "not known")
            + ". Start and stop hold only if each mix starts when the one before is used up: write down what happens.");
    }

    private static void Ends(SheetHtml page, PourPlanRequest request, PourPlanResult result)
    {
        page.Add("h2", "Ends").Table(["End", "Number", "Rope", "Resin in one basket (to the mouth)", "Gap between wires, small end"],
            result.Ends.Select((end, i) => new[]
            {
                end.Id,
                Text(end.Quantity),
                $"{AnswerText.Of(request.Ends[i].Rope.Diameter, Digits)} {request.Ends[i].Rope.Construction}",
                $"{Or(end.ResinVolume.Nominal)} ({Or(end.ResinVolume.Low)} to {Or(end.ResinVolume.High)})",
                Or(end.WireSpacing.Count > 0 ? end.WireSpacing[0].Clear : null),
            }));
        page.Raw($"<div class=\"picture\">{BasketPicture.Write(Sections(request, result))}</div>");
    }

    /// <summary>The first few baskets: a wall sheet shows what is poured, not a catalogue.</summary>
    private static IReadOnlyList<BasketSection> Sections(PourPlanRequest request, PourPlanResult result) =>
        [.. request.Ends.Take(4).Select((end, i) => new BasketSection(
            end.Id,
            end.Rope.Diameter,
            end.Socket.Basket.SmallEndDiameter,
            end.Socket.Basket.LargeEndDiameter,
            end.Socket.Basket.Length,
            Or(result.Ends[i].ResinVolume.Nominal)))];
}
