using Leverage.Corners;

namespace Leverage.Proof;

/// <content>Corners of the hexagon.</content>
public static partial class CheckedFormulas
{
    private static CheckedFormula[] Corners =>
    [
        new("HexagonShape.SpinningPlay", "", i => HexagonShape.SpinningPlay(i["wear"])),
        new("HexagonShape.CornerRadius", "", i => HexagonShape.CornerRadius(i["wear"])),
        new("HexagonShape.FreeSwing", "rad", i => HexagonShape.FreeSwing(i["play"], i["wear"])),
        new("CornerHold.SixPoints", "", i => CornerHold.SixPoints(i["play"], i["wear"])),
        new("CornerHold.RigidJaw", "", i => CornerHold.RigidJaw(i["play"], i["wear"])),
        new("CornerHold.TwelvePoints", "", i => CornerHold.TwelvePoints(i["play"], i["wear"])),
        new("CornerHold.Torque", "Nmm", i => CornerHold.Torque(
            i["coefficient"], i["engagedHeight"], i["acrossFlats"], i["yield"])),
        new("CornerHold.SpreadingJaw", "Nmm", i => CornerHold.SpreadingJaw(new JawGrip(
            i["engagedHeight"], i["acrossFlats"], i["yield"], i["play"], i["wear"], i["testTorque"]))),
        new("ToolFit.Play", "", i => ToolFit.Play(i["opening"], i["nut"], i["acrossFlats"])),
    ];
}
