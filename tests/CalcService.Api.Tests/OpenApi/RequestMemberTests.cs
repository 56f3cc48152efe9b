using System.Reflection;
using CalcService.Api.Contract;
using CalcService.Api.Reading;
using CalcService.Api.Tests.Fixtures;
using FluentValidation;

namespace CalcService.Api.Tests.OpenApi;

/// <summary>What somebody sends is read by something, or the contract says that it only comes back with the record.</summary>
public sealed class RequestMemberTests(Service service)
{
    [Fact]
    public void Member_of_a_request_is_read_by_the_work_or_is_said_to_be_kept_only()
    {
        var calls = Calls.In(typeof(ShapeTable).Assembly).Where(call => !IsCheck(call.Caller.DeclaringType!)).ToArray();
        var read = calls.Where(call => call.Caller.DeclaringType != call.Called.DeclaringType)
            .Select(call => call.Called.Name + " " + call.Called.DeclaringType!.FullName).ToHashSet(StringComparer.Ordinal);
        // A table of alike members is read through its shape, by a method that takes any such table.
        var readers = calls.Where(call => call.Called.Name == nameof(ShapeTable.Of) && call.Called.DeclaringType == typeof(ShapeTable))
            .Select(call => call.Caller.MetadataToken).ToHashSet();
        var tables = calls.Where(call => call.Called.IsGenericMethod && readers.Contains(call.Called.MetadataToken))
            .SelectMany(call => call.Called.GetGenericArguments()).ToHashSet();
        var members = RequestTypes.Of(service).SelectMany(shape => shape.Members)
            .Where(member => !IsShared(member.Property) && !tables.Contains(member.Property.DeclaringType!)).ToArray();

        var unread = members.Where(member =>
            !read.Contains(member.Property.GetMethod!.Name + " " + member.Property.DeclaringType!.FullName)).ToArray();

        var (kept, found) = (Names(members.Where(member => member.IsKept)), Names(unread));
        Assert.True(kept.SequenceEqual(found), $"Kept: {string.Join(", ", kept)}. Not read: {string.Join(", ", found)}.");
        Assert.True(members.Length > 200);
    }

    private static string[] Names(IEnumerable<MemberShape> members) =>
        [.. members.Select(member => $"{member.Property.DeclaringType!.Name}.{member.Property.Name}").Order(StringComparer.Ordinal)];

    /// <summary>To be held against others is not yet to be read.</summary>
    private static bool IsCheck(Type type) =>
        (type.DeclaringType is { } outer && IsCheck(outer)) || type.IsAssignableTo(typeof(IValidator))
        || type.GetMethods(BindingFlags.Public | BindingFlags.Static).Any(method =>
            method.GetParameters().Any(parameter => parameter.ParameterType.IsAssignableTo(typeof(IValidationContext))));

    /// <summary>What every request has is read through its interface.</summary>
    private static bool IsShared(PropertyInfo property) =>
        property.DeclaringType!.IsAssignableTo(typeof(ICalculationRequest))
        && typeof(ICalculationRequest).GetProperty(property.Name) is not null;
}
