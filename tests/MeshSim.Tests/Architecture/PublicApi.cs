using System.Reflection;
using System.Text;

namespace MeshSim.Tests.Architecture;

/// <summary>The public members of an assembly as a sorted text that a person can read and compare.</summary>
internal static class PublicApi
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    // What the compiler adds to every record says nothing about the record.
    private static readonly string[] MadeByTheCompiler = ["Equals", "GetHashCode", "ToString", "Deconstruct", "<Clone>$", "op_Equality", "op_Inequality", "PrintMembers"];

    public static string Of(Assembly assembly)
    {
        var text = new StringBuilder();
        foreach (Type type in assembly.GetExportedTypes().Where(type => type.DeclaringType is null).OrderBy(type => type.FullName, StringComparer.Ordinal))
        {
            text.Append(type.FullName).Append('\n');
            foreach (string member in type.GetMembers(Declared).Where(IsWritten).Select(Line).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
                text.Append("  ").Append(member).Append('\n');
        }

        return text.ToString();
    }

    private static bool IsWritten(MemberInfo member) => member switch
    {
        MethodInfo { IsSpecialName: true } method => method.Name.StartsWith("op_", StringComparison.Ordinal) && !MadeByTheCompiler.Contains(method.Name),
        FieldInfo { IsSpecialName: true } => false,
        _ => !MadeByTheCompiler.Contains(member.Name),
    };

    private static string Line(MemberInfo member) => member switch
    {
        ConstructorInfo constructor => $"new({Parameters(constructor)})",
        MethodInfo method => $"{method.Name}({Parameters(method)}): {Name(method.ReturnType)}",
        PropertyInfo property => $"{property.Name}: {Name(property.PropertyType)}",
        FieldInfo { IsLiteral: true } field => $"{field.Name} = {FormattableString.Invariant($"{field.GetRawConstantValue()}")}",
        FieldInfo field => $"{field.Name}: {Name(field.FieldType)}",
        _ => member.Name,
    };

    private static string Parameters(MethodBase method) =>
        string.Join(", ", method.GetParameters().Select(parameter => $"{parameter.Name}: {Name(parameter.ParameterType)}"));

    private static string Name(Type type)
    {
        if (type.IsByRef) return "ref " + Name(type.GetElementType()!);
        if (type.IsArray) return Name(type.GetElementType()!) + "[]";
        if (!type.IsGenericType) return type.Name;
        return type.Name.Split('`')[0] + "<" + string.Join(", ", type.GetGenericArguments().Select(Name)) + ">";
    }
}
