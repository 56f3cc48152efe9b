namespace CalcService.Engine.Findings;

/// <summary>A calculation's word for a decision. One that has its own gives it four words, in the order of decisions.</summary>
public static class Verdict
{
    public static TWord Of<TWord>(Decision decision)
        where TWord : struct, Enum => Enum.GetValues<TWord>()[(int)decision];
}
