using System.Reflection;
using System.Runtime.CompilerServices;
using Leverage.Assessments;
using Leverage.Charts;
using Leverage.Requests;
using Leverage.Workshop.Jobs;
using UnitsNet;

namespace Leverage.Cli.Tests.Running;

/// <summary>
/// Nothing of ours turns a quantity, or a record that may hold one, into text by its own ToString: that rounds, and has units of its own
/// choice. Sentences are made in Wording.
/// </summary>
public static class NativeTests
{
    private const int FirstInstance = 0x2B000001;

    public static TheoryData<Assembly> Ours =>
        [typeof(Judgement).Assembly, typeof(Job).Assembly, typeof(WindowChart).Assembly, typeof(CommandLine).Assembly];

    [Theory]
    [MemberData(nameof(Ours))]
    public static void No_quantity_and_no_record_is_turned_into_text_by_itself(Assembly assembly)
    {
        Type[] printed = [.. Instances(assembly)
            .Where(method => method.Name == "AppendFormatted" || method.DeclaringType == typeof(string))
            .SelectMany(method => method.GetGenericArguments())];

        Assert.NotEmpty(printed);
        Assert.Empty(printed.Where(PrintsItself).Select(type => type.Name).Distinct(StringComparer.Ordinal));
    }

    [Fact]
    public static void A_quantity_and_a_record_are_known_when_they_are_seen()
    {
        Assert.True(PrintsItself(typeof(Length?)));
        Assert.True(PrintsItself(typeof(TighteningRequest)));
        Assert.False(PrintsItself(typeof(double)));
    }

    private static bool PrintsItself(Type type)
    {
        Type plain = Nullable.GetUnderlyingType(type) ?? type;
        MethodInfo? own = plain.GetMethod(nameof(ToString), BindingFlags.Instance | BindingFlags.Public | BindingFlags.DeclaredOnly, []);
        return typeof(IQuantity).IsAssignableFrom(plain) || own?.GetCustomAttribute<CompilerGeneratedAttribute>() is not null;
    }

    /// <summary>Every generic method an assembly calls with arguments of its own.</summary>
    private static IEnumerable<MethodBase> Instances(Assembly assembly)
    {
        for (int token = FirstInstance; ; token++)
        {
            MethodBase? method;
            try
            {
                method = assembly.ManifestModule.ResolveMethod(token);
            }
            catch (ArgumentOutOfRangeException)
            {
                yield break;
            }
            catch (ArgumentException)
            {
                // It has a type parameter of the method that calls it.
                continue;
            }

            yield return method!;
        }
    }
}
