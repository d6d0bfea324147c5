using System.Reflection;
using Leverage.Probability;
using Leverage.Proof;

namespace Leverage.Tests.Proof;

/// <summary>A public formula found by reflection, and its parameters down to single numbers.</summary>
internal sealed record FormulaMethod(MethodInfo Method)
{
    /// <summary>The namespaces that hold formulas.</summary>
    private static readonly string[] Rooms =
        ["Threads", "Preload", "Stiffness", "BreakLoose", "Levers", "Tubes", "LoadPath", "Corners", "Holding"];

    /// <summary>Units a parameter name may end in, longest first, and the kind each stands for.</summary>
    private static readonly (string Suffix, string Unit, string Kind)[] Units =
    [
        ("NPerMm", "N/mm", "stiffness"), ("PerMm", "mm²/mm", "number"), ("Nmm2", "N·mm²", "bending stiffness"), ("Nmm", "N·mm", "torque"),
        ("Mpa", "MPa", "stress"), ("Rad", "rad", "angle"), ("Mm2", "mm²", "area"), ("Mm", "mm", "length"),
        ("Kg", "kg", "mass"), ("N", "N", "force"), ("K", "K", "rise"), ("J", "J", "torque"),
    ];

    public string Name => $"{Method.DeclaringType!.Name}.{Method.Name}";

    /// <summary>Every formula: a public static method in a formula room that takes numbers and gives one.</summary>
    public static IEnumerable<FormulaMethod> All() =>
        from type in typeof(CheckedFormulas).Assembly.GetExportedTypes()
        where type is { IsAbstract: true, IsSealed: true }
            && (Rooms.Contains(type.Namespace!.Split('.')[^1]) || type.Name == "LogNormalSpread")
        from method in type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
        where (method.ReturnType == typeof(double) || method.ReturnType == typeof(bool))
            && method.GetParameters().Length > 0
            && method.GetParameters().All(p => p.ParameterType == typeof(double) || Fields(p.ParameterType).Any())
        select new FormulaMethod(method);

    /// <summary>Each single number that goes in: a parameter, or a field of a record parameter.</summary>
    public IEnumerable<(ParameterInfo Parameter, PropertyInfo? Field, string Name)> Numbers() =>
        from parameter in Method.GetParameters()
        from field in parameter.ParameterType == typeof(double) ? [null] : Fields(parameter.ParameterType)
        select (parameter, field, field is null ? parameter.Name! : field.Name);

    /// <summary>The unit a number's name ends in, or null for a bare number.</summary>
    public static (string Suffix, string Unit, string Kind)? UnitOf(string name) =>
        Units.Cast<(string Suffix, string Unit, string Kind)?>()
            .FirstOrDefault(u => name.EndsWith(u!.Value.Suffix, StringComparison.Ordinal));

    /// <summary>Name a check row gives a number: without its unit, the first letter small.</summary>
    public static string InputName(ParameterInfo parameter, PropertyInfo? field)
    {
        string name = field?.Name ?? parameter.Name!;
        string bare = UnitOf(name) is { } unit && unit.Suffix != "PerMm" ? name[..^unit.Suffix.Length] : name;
        string small = char.ToLowerInvariant(bare[0]) + bare[1..];
        return field?.DeclaringType?.Name == "JointFriction" ? small + "Friction" : small;
    }

    /// <summary>Calls the formula with the numbers of a row, one of them replaced.</summary>
    public object? Call(CheckInputs inputs, string replaced, double value)
    {
        double Number(ParameterInfo parameter, PropertyInfo? field) =>
            (field?.Name ?? parameter.Name) == replaced ? value : inputs[InputName(parameter, field)];

        var arguments = Method.GetParameters().Select(p => p.ParameterType == typeof(double)
            ? Number(p, null)
            : Activator.CreateInstance(
                p.ParameterType, [.. Fields(p.ParameterType).Select(f => (object)Number(p, f))]));
        return Method.Invoke(null, BindingFlags.DoNotWrapExceptions, null, [.. arguments], null);
    }

    private static IEnumerable<PropertyInfo?> Fields(Type type)
    {
        if (type is not { IsValueType: true, IsPrimitive: false, Namespace: { } room }
            || !room.StartsWith("Leverage", StringComparison.Ordinal))
        {
            return [];
        }

        var numbers = type.GetConstructors().Select(c => c.GetParameters())
            .FirstOrDefault(all => all.Length > 0 && all.All(p => p.ParameterType == typeof(double)));
        return numbers?.Select(p => type.GetProperty(p.Name!)) ?? [];
    }
}
