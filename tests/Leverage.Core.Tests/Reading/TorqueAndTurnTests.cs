using Leverage.Reading;
using Leverage.Requests;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Reading;

/// <summary>A torque and the turn after it, as a book prints them.</summary>
public sealed class TorqueAndTurnTests
{
    [Theory]
    [InlineData("100Nm", 100, null)]
    [InlineData("100Nm + 90deg", 100, 90.0)]
    [InlineData("100 N·m+90°", 100, 90.0)]
    [InlineData("60Nm + 90deg + 90deg", 60, 180.0)]
    [InlineData("22,5 Nm + 45deg", 22.5, 45.0)]
    [InlineData("+5Nm + 30deg", 5, 30.0)]
    [InlineData("1e+2Nm + 30deg", 100, 30.0)]
    [InlineData("1E+2Nm", 100, null)]
    public void Is_read(string text, double nm, double? degrees)
    {
        TorqueAndTurn read = LooseningFields.Torque.Value(text);
        Assert.Equal(nm, read.Torque.NewtonMeters, 9);
        Assert.Equal(degrees, read.Turn?.Degrees);
        Assert.Equal(read, LooseningFields.Torque.Value(read.Text()));
        Assert.Equal(read, TighteningFields.Quoted.Value(text));
    }

    [Theory]
    [InlineData("100Nm + 50Nm")]
    [InlineData("100Nm +")]
    [InlineData("100Nm + 90")]
    [InlineData("100Nm + 0deg")]
    [InlineData("100Nm + -90deg")]
    [InlineData("100Nm + 721deg")]
    [InlineData("90deg + 100Nm")]
    [InlineData("100 + 90deg")]
    [InlineData("NaN Nm + 90deg")]
    [InlineData("100Nm + NaNdeg")]
    public void Is_refused_by_the_name_of_its_field(string text) =>
        Assert.Equal("torque", Assert.Throws<InputException>(() => LooseningFields.Torque.Value(text)).Subject);

    [Fact]
    public void A_turn_is_said_once()
    {
        TighteningRequest both = TighteningFields.Quoted.Read(new TighteningRequest { Thread = ThreadCatalog.Named("M12") }, "60Nm + 90deg");
        Assert.Equal(both, TighteningFields.Then.Read(both, "90deg"));
        Assert.Equal("then", Assert.Throws<InputException>(() => TighteningFields.Then.Read(both, "45deg")).Subject);
        Assert.Equal(Angle.FromDegrees(45), TighteningFields.Then.Read(both with { Then = null }, "45deg").Then);
        Assert.Null(LooseningFields.Torque.Read(new LooseningRequest { Then = Angle.FromDegrees(90) }, "60Nm").Then);
    }
}
