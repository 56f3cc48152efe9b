using CalcService.Api.Reading;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>Every object that stands in a request.</summary>
internal static class RequestTypes
{
    public static IReadOnlyList<ObjectShape> Of(Service service)
    {
        var seen = new HashSet<ObjectShape>();
        var pending = new Queue<ObjectShape>(service.Capabilities.Select(capability => ShapeTable.Of(capability.RequestType)));
        while (pending.TryDequeue(out var shape))
        {
            if (seen.Add(shape))
            {
                foreach (var inner in shape.Members.Select(member => member.Shape is ListShape list ? list.Item : member.Shape)
                    .OfType<ObjectShape>())
                {
                    pending.Enqueue(inner);
                }
            }
        }

        return [.. seen];
    }
}
