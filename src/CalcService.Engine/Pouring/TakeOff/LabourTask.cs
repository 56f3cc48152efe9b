namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>A task of socketing with its usual time.</summary>
/// <param name="Name">Its name on the wire.</param>
/// <param name="Words">What is done, after "time to".</param>
/// <param name="IsPerEnd">Whether it is done for each end, else once for the job.</param>
/// <param name="DefaultMinutes">Assumed where nobody says: common practice, no source. Null where the plan tells it, or the task is done on
/// request only.</param>
public sealed record LabourTask(string Name, string Words, bool IsPerEnd, double? DefaultMinutes)
{
    public const string MixAndPour = "mixAndPour";
    public const string WaitForGel = "waitForGel";
    public const string ProofLoad = "proofLoad";

    /// <summary>All tasks, in the order of the work.</summary>
    public static IReadOnlyList<LabourTask> All { get; } =
    [
        new("setUp", "set up the place and take the readings", IsPerEnd: false, 30),
        new("measureAndSeize", "measure and seize", IsPerEnd: true, 15),
        new("cutAndOpen", "cut and open the broom", IsPerEnd: true, 20),
        new("cleanAndDry", "clean and dry the broom and the basket", IsPerEnd: true, 15),
        new("positionAndSeal", "position and seal", IsPerEnd: true, 15),
        new(MixAndPour, "mix and pour", IsPerEnd: true, null),
        new(WaitForGel, "wait until the last cone has gelled", IsPerEnd: false, null),
        new("finish", "take off the seal, clean and look over", IsPerEnd: true, 10),
        new(ProofLoad, "load to proof", IsPerEnd: true, null),
        new("record", "write the record", IsPerEnd: true, 10),
    ];
}
