using System.Reflection;
using System.Reflection.Emit;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>Which method calls which, read from the compiled code.</summary>
internal static class Calls
{
    private const BindingFlags All =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<short, OpCode> Codes = typeof(OpCodes).GetFields()
        .Select(field => field.GetValue(null)).OfType<OpCode>().ToDictionary(code => code.Value);

    /// <summary>The methods that each method of an assembly calls.</summary>
    public static IEnumerable<(MethodBase Caller, MethodBase Called)> In(Assembly assembly) => assembly.GetTypes()
        .SelectMany(type => type.GetMethods(All).Concat<MethodBase>(type.GetConstructors(All)))
        .SelectMany(method => Of(method).Select(called => (method, called)));

    private static List<MethodBase> Of(MethodBase method)
    {
        var called = new List<MethodBase>();
        var code = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        for (var at = 0; at < code.Length;)
        {
            var value = code[at] == 0xFE ? (short)((code[at] << 8) | code[at + 1]) : code[at];
            var operation = Codes[value];
            at += operation.Size;
            if (operation.OperandType == OperandType.InlineMethod)
            {
                called.Add(method.Module.ResolveMethod(
                    BitConverter.ToInt32(code, at),
                    method.DeclaringType!.IsGenericType ? method.DeclaringType.GetGenericArguments() : null,
                    method.IsGenericMethod ? method.GetGenericArguments() : null)!);
            }

            at += OperandLength(operation.OperandType, code, at);
        }

        return called;
    }

    private static int OperandLength(OperandType type, byte[] code, int at) => type switch
    {
        OperandType.InlineNone => 0,
        OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
        OperandType.InlineVar => 2,
        OperandType.InlineI8 or OperandType.InlineR => 8,
        OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(code, at)),
        _ => 4,
    };
}
