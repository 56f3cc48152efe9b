using CalcService.Api.Contract;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>What a cure schedule's request may be. Cautions of the trade are findings, not errors.</summary>
public sealed class CureScheduleValidator : Contradictions<CureScheduleRequest>
{
    /// <summary>Most baskets in one request.</summary>
    public const int MostBaskets = 1000;

    /// <summary>Most baskets whose tasks are scheduled together.</summary>
    public const int MostInShop = 200;

    protected override void Check(CureScheduleRequest request, ValidationContext<CureScheduleRequest> context)
    {
        var baskets = request.Ends.Sum(end => (long)end.Quantity);
        if (request.Shop is not null && baskets is > MostInShop and <= MostBaskets)
        {
            context.Fail(nameof(CureScheduleRequest.Ends), $"{baskets} baskets; at most {MostInShop} are scheduled through a shop.",
                ContradictionWords.RangeCode);
        }

        if (baskets > MostBaskets)
        {
            context.Fail(nameof(CureScheduleRequest.Ends), $"{baskets} baskets; at most {MostBaskets} are allowed.",
                ContradictionWords.RangeCode);
        }

        CompoundSheetValidator.FindTwins(request.Ends, end => end.Id, (first, second) =>
            context.Contradict($"Ends[{first}].Id", $"Ends[{second}].Id", "Two entries have the same id."));
        SteelReadingOrder.Check(request.Conditions.SteelSeries, request.MixedAt, "Conditions.SteelSeries",
            nameof(CureScheduleRequest.MixedAt), context);
        for (var i = 0; i < request.Observations?.Count; i++)
        {
            if (request.Ends.All(end => end.Id != request.Observations[i].End))
            {
                context.Fail($"Observations[{i}].End", "No end has this id.", "unknown-end");
            }

            if (request.Observations[i].GelAt <= request.MixedAt)
            {
                context.Contradict($"Observations[{i}].GelAt", nameof(CureScheduleRequest.MixedAt), "It gelled before it was mixed.");
            }

            if (request.Observations[i].StillSoftAt >= request.Observations[i].GelAt)
            {
                context.Contradict($"Observations[{i}].StillSoftAt", $"Observations[{i}].GelAt", "It was still soft after it had gelled.");
            }
        }
    }
}
