using FluentValidation;

namespace CalcService.Api.Validation;

/// <summary>What an amount of money may be.</summary>
public static class AmountRule
{
    private const decimal Most = 1_000_000;
    private const int Decimals = 4;
    private const string TooFine = "A cost has at most four decimals.";

    /// <summary>Money from nothing to a million; absent passes.</summary>
    public static void Amount<T>(this IRuleBuilderInitial<T, decimal?> rule)
    {
        rule.Must(money => money is not { } amount || IsRound(amount)).WithErrorCode(RuleWords.RangeCode).WithMessage(TooFine);
        rule.InclusiveBetween(0, Most).WithErrorCode(RuleWords.RangeCode).WithMessage((_, found) => RuleWords.OutOfRange(found, 0, Most));
    }

    /// <summary>Money from nothing to a million.</summary>
    public static void Amount<T>(this IRuleBuilderInitial<T, decimal> rule)
    {
        rule.Must(IsRound).WithErrorCode(RuleWords.RangeCode).WithMessage(TooFine);
        rule.InclusiveBetween(0, Most).WithErrorCode(RuleWords.RangeCode).WithMessage((_, found) => RuleWords.OutOfRange(found, 0, Most));
    }

    private static bool IsRound(decimal amount) => decimal.Round(amount, Decimals) == amount;
}
