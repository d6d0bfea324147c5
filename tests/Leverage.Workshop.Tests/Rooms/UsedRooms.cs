using Mono.Cecil;
using Mono.Cecil.Cil;

namespace Leverage.Workshop.Tests.Rooms;

/// <summary>The rooms a compiled type refers to: in its members' types and in the code of its methods.</summary>
internal static class UsedRooms
{
    internal static IEnumerable<string> By(TypeDefinition type) =>
        Named(type).Where(reference => reference is not null).SelectMany(reference => WithArguments(reference!)).Select(RoomOrderTests.Room).Distinct();

    private static IEnumerable<TypeReference?> Named(TypeDefinition type) =>
    [
        type.BaseType,
        .. type.Interfaces.Select(one => one.InterfaceType),
        .. type.Fields.Select(field => field.FieldType),
        .. type.Properties.Select(property => property.PropertyType),
        .. type.Methods.SelectMany(Of),
    ];

    private static IEnumerable<TypeReference?> Of(MethodDefinition method) =>
    [
        method.ReturnType,
        .. method.Parameters.Select(parameter => parameter.ParameterType),
        .. method.HasBody ? method.Body.Variables.Select(variable => variable.VariableType) : [],
        .. method.HasBody ? method.Body.Instructions.SelectMany(Of) : [],
    ];

    private static IEnumerable<TypeReference?> Of(Instruction instruction) => instruction.Operand switch
    {
        TypeReference type => [type],
        GenericInstanceMethod generic => [generic.DeclaringType, .. generic.GenericArguments],
        MemberReference member => [member.DeclaringType],
        _ => [],
    };

    private static IEnumerable<TypeReference> WithArguments(TypeReference type) => type switch
    {
        GenericInstanceType generic => [generic.ElementType, .. generic.GenericArguments.SelectMany(WithArguments)],
        TypeSpecification wrapped => WithArguments(wrapped.ElementType),
        _ => [type],
    };
}
