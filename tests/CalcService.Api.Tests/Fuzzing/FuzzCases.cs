using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using CsCheck;

namespace CalcService.Api.Tests.Fuzzing;

/// <summary>Requests to every calculation of a document: whatever path is added to it is met too.</summary>
internal sealed class FuzzCases(ServedContract contract)
{
    private const int MostChanges = 3;

    private readonly SchemaValues _values = new(contract);

    /// <summary>Requests of all kinds to all calculations.</summary>
    public Gen<FuzzCase> All => Gen.OneOf([.. contract.Calculations.Select(To)]);

    /// <summary>Requests of all kinds to one calculation.</summary>
    public Gen<FuzzCase> To(CalculationRoute route)
    {
        var schema = contract.Schemas[route.SchemaName]!;
        var example = Choices.OneIn(route.Examples);
        return Gen.Frequency(
            (1, _values.Of(schema)
            .Select(body => new FuzzCase(route.Path, body!.ToJsonString(), Expected.Readable, "made from the schema"))),
            (3, example.SelectMany(one => Changed(route, schema, one))),
            (2, example.SelectMany(one => Respelling.Of(one.Body).Select(text =>
                new FuzzCase(route.Path, text, Expected.SameRecord,
                $"{one.Name} written in another way") { Example = one.Body.ToJsonString() }))),
            (4, example.SelectMany(one => Broken(route, schema, one))));
    }

    /// <summary>An example with some of its values replaced by others that fit.</summary>
    private Gen<FuzzCase> Changed(CalculationRoute route, JsonNode schema, (string Name, JsonObject Body) example)
    {
        var places = contract.Places(schema, example.Body, "", isRequired: true).Where(place => place.Pointer.Length > 0).ToArray();
        var change = Choices.OneIn(places)
            .SelectMany(place =>
            _values.Of(place.Schema).Where(value => value is not null || !place.IsRequired).Select(value => (place.Pointer, Value: value)));
        return change.Array[1, MostChanges].Select(changes =>
        {
            var body = example.Body.DeepClone().AsObject();
            // A change may take away the place of another.
            foreach (var (pointer,
                value) in changes.Where((one, i) =>
                !changes.Take(i).Any(before => one.Pointer.StartsWith(before.Pointer + "/", StringComparison.Ordinal))))
            {
                body = body.With(pointer, value?.DeepClone());
            }

            return new FuzzCase(route.Path, body.ToJsonString(), Expected.Readable,
                $"{example.Name} with other values at {string.Join(", ", changes.Select(one => one.Pointer))}");
        });
    }

    private Gen<FuzzCase> Broken(CalculationRoute route, JsonNode schema, (string Name, JsonObject Body) example)
    {
        var places = contract.Places(schema, example.Body, "", isRequired: true).ToArray();
        return Choices.OneIn(places).SelectMany(place => Choices.OneIn([.. Defect.At(example.Body, place)])).Select(defect =>
            new FuzzCase(route.Path, defect.Body, Expected.Refused,
            $"{example.Name}, {defect.What} at {defect.Pointer}") { Status = defect.Status, Pointer = defect.Pointer });
    }
}
