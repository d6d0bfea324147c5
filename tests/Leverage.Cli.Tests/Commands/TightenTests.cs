using System.Globalization;
using System.Text.Json;
using Leverage.Tables;

namespace Leverage.Cli.Tests.Commands;

public sealed class TightenTests
{
    /// <summary>The printed preloads and torques of fine threads at 90 % of yield, each row one joint.</summary>
    public static TheoryData<string> Printed =>
        [.. TableCatalog.Checks["tightening"].Rows.Select(row => row.Key).Where(id => id.Contains("-fine-", StringComparison.Ordinal))];

    [Fact]
    public void The_promised_joint_has_its_preload_and_torque()
    {
        JsonElement json = Ran.Here(Ran.Words("tighten --thread M12x1.25 --grade 10.9 --friction 0.12 --json")).Json();
        Assert.Equal(1, Likely(json, "preloadN") / 70_500, 0.01);
        Assert.Equal(1, Number(json, "torqueNm") / 133, 0.01);
    }

    [Theory]
    [MemberData(nameof(Printed))]
    public void Preload_and_torque_are_the_printed_ones(string id)
    {
        TableRow row = TableCatalog.Checks["tightening"].Rows.Single(r => r.Key == id);
        string[] joint = id.Split('-');
        JsonElement json = Ran.Here("tighten", "--thread", joint[0], "--grade", joint[1], "--friction", joint[2], "--json").Json();
        double found = row.Text("unit") == "kN" ? Likely(json, "preloadN") / 1000 : Number(json, "torqueNm");
        double half = row.Text("expected").Contains('.', StringComparison.Ordinal) ? 0.05 : 0.5;
        double share = double.Parse((row.OptionalText("tolerance") ?? "0%").TrimEnd('%'), CultureInfo.InvariantCulture) / 100;
        Assert.InRange(found, (row.Number("expected") - half) * (1 - share), (row.Number("expected") + half) * (1 + share));
    }

    [Fact]
    public void The_fields_of_the_answer_are_the_promised_ones()
    {
        JsonElement json = Ran.Here("tighten", "--thread", "M12x1.25", "--json").Json();
        Assert.Equal(
            ["torqueNm", "targetNm", "preloadN", "yieldShare", "angle", "alphaA", "verdict", "split", "nutFactor", "loosenNm", "stressAreaMm2", "pitchDiameterMm", "unconfirmed"],
            Ran.Names(json));
        Assert.Equal(["pitchNm", "threadNm", "faceNm"], Ran.Names(json.GetProperty("split")));
    }

    [Fact]
    public void What_is_asked_besides_adds_its_own_record()
    {
        JsonElement json = Ran.Here(Ran.Words(
            "tighten --thread M10 --torque 45Nm --by-weight 82kg --adapter 60mm --wrench 450mm --engagement 15mm --tapped cast-aluminium --json")).Json();
        Assert.Equal(["low", "likely", "high"], Ran.Names(json.GetProperty("preloadN")));
        Assert.Equal(["low", "likely", "high"], Ran.Names(json.GetProperty("yieldShare")));
        Assert.Equal(["torqueNm", "massKg", "distanceMm"], Ran.Names(json.GetProperty("byWeight")));
        Assert.Equal(["torqueNm", "settingNm", "adapterMm", "wrenchMm", "angleDeg"], Ran.Names(json.GetProperty("adapter")));
        Assert.Equal(
            ["engagementMm", "tapped", "internalShearAreaMm2", "externalShearAreaMm2", "stripLoadN", "strips", "breakLoadN", "engagementToBreakMm", "safety"],
            Ran.Names(json.GetProperty("strip")));
    }

    [Fact]
    public void The_parts_make_up_the_torque_and_the_pitch_part_is_the_work_of_one_turn()
    {
        JsonElement json = Ran.Here(Ran.Words("tighten --thread M12x1.25 --grade 10.9 --friction 0.12 --json")).Json();
        JsonElement split = json.GetProperty("split");
        double pitch = Number(split, "pitchNm");
        Assert.Equal(Number(json, "torqueNm"), pitch + Number(split, "threadNm") + Number(split, "faceNm"), 9);
        Assert.Equal(Likely(json, "preloadN") * 1.25 / (2 * Math.PI) / 1000, pitch, 9);
        Assert.Equal(Number(json, "torqueNm") * 1000 / (Likely(json, "preloadN") * 12), Number(json, "nutFactor"), 9);
    }

    [Fact]
    public void The_torque_it_names_makes_the_preload_it_names()
    {
        JsonElement first = Ran.Here(Ran.Words("tighten --thread 1/2-20 --grade \"SAE 8\" --friction 0.15 --yield-share 70% --json")).Json();
        string torque = first.GetProperty("torqueNm").GetRawText() + "Nm";
        JsonElement back = Ran.Here(
            "tighten", "--thread", "1/2-20UNF", "--grade", "sae8", "--friction", "0.15", "--torque", torque, "--json").Json();
        Assert.Equal(Likely(first, "preloadN"), Likely(back, "preloadN"), 6);
        Assert.Equal(0.7, Likely(back, "yieldShare"), 9);
    }

    /// <summary>M12, 8.8, friction 0.14: 93 N·m in the tables with torsion plastic, 85 N·m in the older elastic ones.</summary>
    [Theory]
    [InlineData("plastic", 93)]
    [InlineData("elastic", 85)]
    public void Both_families_of_tables_are_offered(string torsion, double newtonMetre)
    {
        JsonElement json = Ran.Here("tighten", "--thread", "M12", "--friction", "0.14", "--torsion", torsion, "--json").Json();
        Assert.Equal(1, Number(json, "torqueNm") / newtonMetre, 0.011);
    }

    [Fact]
    public void The_low_and_high_preload_are_those_of_the_ends_of_the_lubricants_range()
    {
        JsonElement json = Ran.Here(Ran.Words("tighten --thread M16 --lubrication oiled --json")).Json();
        string torque = json.GetProperty("torqueNm").GetRawText() + "Nm";
        foreach (var (end, friction) in ((string, string)[])[("high", "0.08"), ("low", "0.16")])
        {
            JsonElement one = Ran.Here("tighten", "--thread", "M16", "--friction", friction, "--torque", torque, "--json").Json();
            Assert.Equal(Number(json.GetProperty("preloadN"), end), Likely(one, "preloadN"), 6);
        }
    }

    /// <summary>The figure asked for is the first of the answer, before any other torque.</summary>
    [Theory]
    [InlineData("tighten --thread M12", "Torque", "81.6 N·m")]
    [InlineData("tighten --thread M12 --torque 100Nm --adapter 150mm --wrench 450mm", "Set", "75 N·m")]
    [InlineData("tighten --thread M24 --torque 400Nm --by-weight 82kg", "Hang it", "0.50 m")]
    [InlineData("tighten --thread M12x1.25 --grade 10.9 --friction 0.12 --torque 100Nm", "Preload", "53.1 kN")]
    public void What_was_asked_leads(string line, string label, string figure)
    {
        string[] lines = Ran.Here(Ran.Words(line)).Answer.Split('\n');
        Assert.DoesNotContain("N·m", lines[0], StringComparison.Ordinal);
        Assert.StartsWith($"  {label} ", lines[2], StringComparison.Ordinal);
        Assert.Contains(figure, lines[2], StringComparison.Ordinal);
        Assert.True(lines[2].IndexOf(figure, StringComparison.Ordinal) < 30, lines[2]);
    }

    [Theory]
    [InlineData("--adapter 150mm --wrench 450mm --angle 0deg", 75)]
    [InlineData("--adapter 150mm --wrench 450mm --angle 90deg", 100)]
    [InlineData("--adapter 150mm --wrench 450mm --angle 60deg", 85.714285714)]
    [InlineData("--adapter 150mm --wrench 450mm --angle 180deg", 150)]
    public void An_adapter_straight_out_lowers_the_setting_and_square_changes_nothing(string fitting, double setting)
    {
        JsonElement json = Ran.Here([.. Ran.Words("tighten --thread M12 --torque 100Nm --json"), .. Ran.Words(fitting)]).Json();
        Assert.Equal(setting, Number(json.GetProperty("adapter"), "settingNm"), 6);
    }

    [Fact]
    public void A_mass_hangs_where_its_weight_makes_the_torque()
    {
        JsonElement json = Ran.Here(Ran.Words("tighten --thread M24 --torque 400Nm --by-weight 82kg --json")).Json();
        Assert.Equal(400 / (82 * 9.80665) * 1000, Number(json.GetProperty("byWeight"), "distanceMm"), 6);
    }

    /// <summary>M10 worst fit by hand: Ds 9.732, En 9.206 printed; area for 1 mm π·9.732/1.5·(0.75 + 0.57735·0.526) = 21.48 mm²,
    /// 356-T6 shears at 179 MPa: 57.7 kN over 15 mm; 8.8 breaks at 800 MPa · 58.0 mm² = 46.4 kN.</summary>
    [Fact]
    public void A_tapped_hole_strips_at_its_area_times_its_shear_strength()
    {
        JsonElement strip = Ran.Here(Ran.Words("tighten --thread M10 --grade 8.8 --engagement 15mm --tapped cast-aluminium --json"))
            .Json().GetProperty("strip");
        Assert.Equal("hole", strip.GetProperty("strips").GetString());
        Assert.Equal(1, Number(strip, "stripLoadN") / 57_700, 0.01);
        Assert.Equal(1, Number(strip, "breakLoadN") / 46_400, 0.005);
        Assert.Equal(15 * 46_400 / 57_700.0, Number(strip, "engagementToBreakMm"), 0.15);
    }

    [Theory]
    [InlineData("tighten --thread M12", "grade 8.8; friction 0.14 at assembly* (0.10 to 0.196); mean bearing face 15.1 mm (ISO 4014 head, ISO 273 hole)")]
    [InlineData("tighten --thread 1/2-20", "grade SAE 5; friction 0.14 at assembly* (0.10 to 0.196); bearing face 1.25 × diameter 15.9 mm (not in the tables for this size)")]
    [InlineData("tighten --thread M12 --grade 10.9 --friction 0.12 --dw 16.7mm --dh 13.5mm", "Assumed torsion plastic (VDI 2230 since 2001)")]
    public void What_was_assumed_is_said(string line, string says)
    {
        string flowing = string.Join(' ', Ran.Here(Ran.Words($"{line} --more")).Answer.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(says, flowing, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tighten --thread M12x1.25 --grade 10.9 --friction 0.12")]
    [InlineData("tighten --thread M24x1.5 --lubrication oiled --units us")]
    [InlineData("tighten --thread M10 --engagement 15mm --tapped cast-aluminium --torque 60Nm --adapter 60mm --wrench 450mm")]
    [InlineData("tighten --thread M12 --castle 6 --left-hand")]
    [InlineData("tighten --thread M12 --grade 10.9 --torque 60Nm --then 90deg --engagement 15mm --tapped aluminium")]
    [InlineData("tighten --thread M12 --staked --locker --engagement 15mm --tapped aluminium --units us")]
    [InlineData("tighten --thread M12 --by-weight 20kg --adapter 60mm --wrench 450mm --engagement 15mm --tapped iron")]
    [InlineData("check 96ft-lb --thread M12x1.25 --grade 10.9 --units us")]
    [InlineData("check 90Nm --then 90deg --thread M12x1.25 --grade 10.9 --engagement 12mm --tapped aluminium --left-hand")]
    [InlineData("check 20Nm --thread M12 --engagement 12mm --tapped aluminium --castle 6")]
    public void The_words_fit_one_screen(string line)
    {
        string[] lines = Ran.Here(Ran.Words(line)).Answer.TrimEnd('\n').Split('\n');
        Assert.InRange(lines.Length, 8, 24);
        Assert.All(lines, text => Assert.InRange(text.Length, 0, 80));
        Assert.All(lines, text => Assert.Equal(text.TrimEnd(), text));
    }

    private static double Likely(JsonElement json, string name) => json.GetProperty(name).GetProperty("likely").GetDouble();

    private static double Number(JsonElement json, string name) => json.GetProperty(name).GetDouble();
}
