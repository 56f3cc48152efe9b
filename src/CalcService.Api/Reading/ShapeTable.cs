using System.Collections.Concurrent;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using CalcService.Api.Contract;
using CalcService.Api.Units;

namespace CalcService.Api.Reading;

/// <summary>Makes the shapes of the contract's types, once each.</summary>
public static class ShapeTable
{
    /// <summary>Longest text.</summary>
    public const int TextLength = 128;

    private static readonly ConcurrentDictionary<Type, ObjectShape> Objects = new();

    /// <summary>The shape of a contract type.</summary>
    public static ObjectShape Of<T>() => Of(typeof(T));

    /// <summary>The shape of a contract type.</summary>
    public static ObjectShape Of(Type type) => Objects.GetOrAdd(type, static type => new ObjectShape(type, Members(type)));

    /// <summary>The name of a member on the wire.</summary>
    public static string NameOf(PropertyInfo property) => JsonNamingPolicy.CamelCase.ConvertName(property.Name);

    private static MemberShape[] Members(Type type)
    {
        var nullability = new NullabilityInfoContext();
        return [.. Ancestry(type)
            .SelectMany(ancestor => ancestor.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(property => property.GetIndexParameters().Length == 0
                && property.GetCustomAttribute<JsonIgnoreAttribute>() is null && property.Name != "EqualityContract")
            .Select(property =>
            {
                var optional = System.Nullable.GetUnderlyingType(property.PropertyType);
                var nullable = optional is not null || nullability.Create(property).ReadState == NullabilityState.Nullable;
                var member = optional is not null ? typeof(OptionalMemberShape<,>)
                    : property.PropertyType.IsValueType ? typeof(ValueMemberShape<,>)
                    : typeof(MemberShape<,>);
                return (MemberShape)Activator.CreateInstance(member.MakeGenericType(type, optional ?? property.PropertyType), property,
                    NameOf(property), ShapeOf(property.PropertyType, property),
                    property.IsDefined(typeof(RequiredMemberAttribute)), nullable)!;
            })];
    }

    private static IEnumerable<Type> Ancestry(Type type) =>
        type.BaseType is { } parent && parent != typeof(object) ? Ancestry(parent).Append(type) : [type];

    private static Shape ShapeOf(Type type, PropertyInfo member)
    {
        type = System.Nullable.GetUnderlyingType(type) ?? type;
        if (type == typeof(Quantity))
        {
            return new QuantityShape(member.GetCustomAttribute<KindAttribute>());
        }

        if (type.IsEnum)
        {
            KeyValuePair<string, object>[] words = [.. Enum.GetNames(type).Select(name =>
                KeyValuePair.Create(JsonNamingPolicy.CamelCase.ConvertName(name), Enum.Parse(type, name)))];
            return (Shape)Activator.CreateInstance(typeof(EnumShape<>).MakeGenericType(type), [words])!;
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
        {
            var item = type.GetGenericArguments()[0];
            var list = typeof(ListShape<>).MakeGenericType(item);
            return (Shape)Activator.CreateInstance(list, ShapeOf(item, member), member.GetCustomAttribute<ItemsAttribute>())!;
        }

        return Type.GetTypeCode(type) switch
        {
            TypeCode.String => new TextShape(TextLength, member.IsDefined(typeof(IdAttribute))),
            TypeCode.Int32 or TypeCode.Int64 => new IntegerShape(type == typeof(long), member.GetCustomAttribute<WithinAttribute>()),
            TypeCode.Decimal => new DecimalShape(),
            TypeCode.Boolean => new BooleanShape(),
            TypeCode.Double => new NumberShape(),
            _ when type == typeof(DateOnly) => new DateShape(),
            _ when type == typeof(DateTimeOffset) => new InstantShape(),
            _ when type == typeof(JsonElement) => new AnyShape(),
            _ => Of(type),
        };
    }
}
