using System.Globalization;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>How quantities are worded for a person: metric, or US units. The one place where a quantity becomes text.</summary>
public sealed class UnitStyle
{
    private readonly bool _us;

    private UnitStyle(bool us) => _us = us;

    /// <summary>N·m, m and mm, N, kg, MPa.</summary>
    public static UnitStyle Metric { get; } = new(false);

    /// <summary>lbf·ft, in, lbf, lb, ksi.</summary>
    public static UnitStyle Us { get; } = new(true);

    /// <summary>True for US units.</summary>
    public bool IsUs => _us;

    /// <summary>Name of the torque unit.</summary>
    public string TorqueUnit => _us ? "lbf·ft" : "N·m";

    /// <summary>The torque unit itself.</summary>
    public UnitsNet.Units.TorqueUnit TorqueUnitKind => _us ? UnitsNet.Units.TorqueUnit.PoundForceFoot : UnitsNet.Units.TorqueUnit.NewtonMeter;

    /// <summary>Name of the unit of long lengths.</summary>
    public string ReachUnit => _us ? "in" : "m";

    /// <summary>Name of the force unit.</summary>
    public string ForceUnit => _us ? "lbf" : "N";

    /// <summary>The number of a torque, in this style's unit.</summary>
    public double TorqueValue(Torque torque) => _us ? torque.PoundForceFeet : torque.NewtonMeters;

    /// <summary>The number of a force, in this style's unit.</summary>
    public double ForceValue(Force force) => _us ? force.PoundsForce : force.Newtons;

    /// <summary>The number of a long length, in this style's unit.</summary>
    public double ReachValue(Length length) => _us ? length.Inches : length.Meters;

    /// <summary>A torque: "460 N·m", "339 lbf·ft".</summary>
    public string Torque(Torque torque) => $"{TorqueNumber(torque)} {TorqueUnit}";

    /// <summary>A torque's number without its unit, to three figures.</summary>
    public string TorqueNumber(Torque torque) => Figures(TorqueValue(torque));

    /// <summary>A torque limit's number without its unit, every digit of a whole number shown: a standard's figure stays itself.</summary>
    public string LimitNumber(Torque torque) => TorqueValue(torque) is var value && value >= 100 ? Trim(value, 0) : Figures(value);

    /// <summary>A force: "450 N", "101 lbf".</summary>
    public string Force(Force force) => $"{Figures(ForceValue(force))} {ForceUnit}";

    /// <summary>Name of the unit of a bolt's forces.</summary>
    public string PreloadUnit => _us ? "lbf" : "kN";

    /// <summary>The number of a bolt's force, in this style's unit.</summary>
    public double PreloadValue(Force force) => _us ? force.PoundsForce : force.Kilonewtons;

    /// <summary>A preload: "70.5 kN", "15800 lbf".</summary>
    public string Preload(Force force) => $"{Figures(PreloadValue(force))} {PreloadUnit}";

    /// <summary>A long length, such as a lever's: "1.24 m", "48.8 in".</summary>
    public string Reach(Length length) => _us ? $"{Fixed(length.Inches, 1)} in" : $"{Fixed(length.Meters, 2)} m";

    /// <summary>A short length, such as a tube's wall: "33.7 mm", "134 mm", "1.33 in".</summary>
    public string Length(Length length) => _us ? $"{Trim(length.Inches, InchDecimals(length.Inches))} in" : $"{Trim(length.Millimeters, length.Millimeters < 100 ? 1 : 0)} mm";

    /// <summary>A length as threads are given: "11.188 mm", "0.4405 in".</summary>
    public string Fine(Length length) => _us ? $"{Fixed(length.Inches, 4)} in" : $"{Fixed(length.Millimeters, 3)} mm";

    /// <summary>A small area: "92.1 mm²", "0.143 in²".</summary>
    public string Area(Area area) => _us ? $"{Figures(area.SquareInches)} in²" : $"{Figures(area.SquareMillimeters)} mm²";

    /// <summary>A mass: "82 kg", "181 lb".</summary>
    public string Mass(Mass mass) => _us ? $"{Fixed(mass.Pounds, 0)} lb" : $"{Trim(mass.Kilograms, 1)} kg";

    /// <summary>A stress: "640 MPa", "93 ksi".</summary>
    public string Stress(Pressure stress) =>
        _us ? $"{Trim(stress.KilopoundsForcePerSquareInch, 1)} ksi" : $"{Trim(stress.Megapascals, 0)} MPa";

    /// <summary>An angle: "38°".</summary>
    public static string Angle(Angle angle) => $"{Fixed(angle.Degrees, 0)}°";

    /// <summary>A tenth of an inch from 3 in; below it three figures, but every digit of a sixteenth.</summary>
    private static int InchDecimals(double inches) =>
        inches >= 3 ? 1 : Math.Abs(16 * inches - Math.Round(16 * inches)) < 1e-6 ? 4 : inches < 1 ? 3 : 2;

    /// <summary>A rise of temperature: "150 °C", "270 °F".</summary>
    public string TemperatureDifference(TemperatureDelta difference) =>
        _us ? $"{Fixed(difference.DegreesFahrenheit, 0)} °F" : $"{Fixed(difference.Kelvins, 0)} °C";

    /// <summary>A temperature of something near: "120 °C", "248 °F".</summary>
    public string Temperature(Temperature temperature) =>
        _us ? $"{Fixed(temperature.DegreesFahrenheit, 0)} °F" : $"{Fixed(temperature.DegreesCelsius, 0)} °C";

    /// <summary>Any of the quantities above.</summary>
    /// <exception cref="ArgumentException">A quantity this toolkit does not word.</exception>
    public string Any(IQuantity quantity) => quantity switch
    {
        Torque torque => Torque(torque),
        Force force => Force(force),
        Length length => length.Millimeters >= 300 ? Reach(length) : Length(length),
        Mass mass => Mass(mass),
        Pressure stress => Stress(stress),
        Angle angle => Angle(angle),
        TemperatureDelta difference => TemperatureDifference(difference),
        _ => throw new ArgumentException("No words for this quantity.", nameof(quantity)),
    };

    /// <summary>A share as a percentage: "12 %".</summary>
    public static string Percent(double share) => $"{Fixed(100 * share, 0)} %";

    /// <summary>A chance: "12 in 100", "under 1 in 100".</summary>
    public static string InHundred(double share) => share is > 0 and < 0.005 ? "under 1 in 100" : $"{Fixed(100 * share, 0)} in 100";

    /// <summary>A coefficient of friction: two decimals, a third where it says something.</summary>
    /// <param name="friction">The coefficient.</param>
    /// <returns>"0.14", "0.196".</returns>
    public static string Friction(double friction) => Fixed(friction, 3) is var text && text.EndsWith('0') ? text[..^1] : Fixed(friction, 3);

    /// <summary>A number to three significant figures, never in exponent form.</summary>
    public static string Figures(double value)
    {
        if (value == 0)
        {
            return "0";
        }

        int decimals = Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6);
        double scale = Math.Pow(10, Math.Max(0, (int)Math.Floor(Math.Log10(Math.Abs(value))) - 2));
        return Trim(Math.Round(value / scale, MidpointRounding.AwayFromZero) * scale is var whole && decimals == 0 ? whole : value, decimals);
    }

    /// <summary>A number with a fixed count of decimals.</summary>
    public static string Fixed(double value, int decimals) =>
        value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>A number with at most so many decimals and no trailing zeros.</summary>
    public static string Trim(double value, int decimals) =>
        Math.Round(value, decimals).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
}
