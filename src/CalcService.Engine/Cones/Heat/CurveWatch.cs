using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Cones.Heat;

/// <summary>Reads the curve at the times asked for, wherever the steps end.</summary>
internal sealed class CurveWatch
{
    private readonly ConeHeatInput _input;
    private readonly int _row;
    private readonly double _between;
    private readonly ConeModel _model;
    private readonly int[] _placeOf;
    private readonly List<ConeMoment> _moments = [];
    private int _next;

    public CurveWatch(ConeHeatInput input, ConeModel model, IReadOnlyList<int> reacting)
    {
        (_input, _model) = (input, model);
        var at = input.CurveShare * (model.Rows - 1);
        _row = (int)Math.Min(Math.Floor(at), Math.Max(0, model.Rows - 2));
        _between = at - _row;
        _placeOf = new int[model.Network.Nodes];
        for (var place = 0; place < reacting.Count; place++)
        {
            _placeOf[reacting[place]] = place;
        }
    }

    public IReadOnlyList<ConeMoment> Moments => _moments;

    public void Begin(double[] temperatures)
    {
        var degree = _input.Surroundings.StartDegree;
        for (; _next < _input.CurveTimesS.Count && _input.CurveTimesS[_next] <= 0; _next++)
        {
            double Start(Func<int, int> node) => Between(row => temperatures[node(row)]);
            _moments.Add(new(_input.CurveTimesS[_next], _input.Surroundings.AirK.At(0), Start(_model.Axis), Start(_model.Skin),
                Start(_model.Outside), degree, degree, degree));
        }
    }

    public void See(ConductionStep step)
    {
        for (; _next < _input.CurveTimesS.Count && _input.CurveTimesS[_next] <= step.ToS; _next++)
        {
            var time = _input.CurveTimesS[_next];
            double Kelvins(Func<int, int> node) => Between(row => step.Temperature(node(row), time));
            double Degree(Func<int, int> node) => Between(row => step.Progress(_placeOf[node(row)], time));
            _moments.Add(new(time, _input.Surroundings.AirK.At(time), Kelvins(_model.Axis), Kelvins(_model.Skin), Kelvins(_model.Outside),
                Degree(_model.Axis), Degree(_model.Skin),
                Enumerable.Range(0, step.Reacting.Count).Min(place => step.Progress(place, time))));
        }
    }

    private double Between(Func<int, double> at) => _between > 0 ? ((1 - _between) * at(_row)) + (_between * at(_row + 1)) : at(_row);
}
