namespace CalcService.Engine.Numerics.Conduction;

/// <summary>
/// The coefficients of RODAS, a stiffly accurate, L-stable Rosenbrock method of order 4 with an embedded one of order 3 and
/// a continuous solution of order 3 (Hairer and Wanner, Solving Ordinary Differential Equations II, 2nd ed., section VI.4).
/// </summary>
internal static class Rodas
{
    public const int Stages = 6;
    public const double Gamma = .25;

    /// <summary>Where in the step each stage looks at the time.</summary>
    public static double Time(int stage) => ((ReadOnlySpan<double>)[0, .386, .21, .63, 1, 1])[stage];

    /// <summary>The share of each stage in the change with time alone.</summary>
    public static double Drift(int stage) => ((ReadOnlySpan<double>)[.25, -.1043, .1035, -.0362, 0, 0])[stage];

    /// <summary>Stage values from earlier stages, row by row.</summary>
    public static ReadOnlySpan<double> A(int stage) => stage switch
    {
        0 => [],
        1 => [1.544],
        2 => [.9466785280815826, .2557011698983284],
        3 => [3.314825187068521, 2.896124015972201, .9986419139977817],
        4 => [1.221224509226641, 6.019134481288629, 12.53708332932087, -.6878860361058950],
        _ => [1.221224509226641, 6.019134481288629, 12.53708332932087, -.6878860361058950, 1],
    };

    /// <summary>Stage slopes from earlier stages, over the step's length.</summary>
    public static ReadOnlySpan<double> C(int stage) => stage switch
    {
        0 => [],
        1 => [-5.6688],
        2 => [-2.430093356833875, -.2063599157091915],
        3 => [-.1073529058151375, -9.594562251023355, -20.47028614809616],
        4 => [7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160],
        _ => [8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054],
    };

    /// <summary>The continuous solution's first correction to the straight line.</summary>
    public static ReadOnlySpan<double> Dense2() =>
        [10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662];

    /// <summary>Its second.</summary>
    public static ReadOnlySpan<double> Dense3() =>
        [-.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872];
}
