namespace Leverage.Cli.Tests.Commands;

/// <summary>What the screens of <c>tighten</c> and <c>check</c> say, and what they may not say beside it; each as a careful mechanic would sign it.</summary>
public sealed class JointScreenTests
{
    [Theory]
    [InlineData("check 47Nm --thread M10 --tapped die-cast-aluminium --engagement 8mm",
        "grade 8.8: strips the thread|STOP The thread of the hole strips before the bolt has its preload.|Usual here 28.", "fits|clamps well|47.3|is left|Scatter")]
    [InlineData("check 35Nm --thread M10 --tapped die-cast-aluminium --engagement 8mm", "may strip the thread|strips if friction is as low as 0.10.|After days", "clamps well")]
    [InlineData("tighten --thread M10 --tapped die-cast-aluminium --engagement 8mm",
        "N·m 90 % of what strips the thread*, at friction 0.10|46.4 kN first if at least 16.4 mm of thread engages", "47.3|STOP")]
    [InlineData("tighten --thread M10 --tapped die-cast-aluminium --engagement 8mm --more", "set to 90 % of what strips the thread*", "STOP")]
    [InlineData("check 150Nm --thread M10 --grade 8.8", "grade 8.8: breaks|STOP The bolt breaks: at friction 0.14 it twists off at 74.8 N·m.|share of yield past yield", "is left|stretches for good|251 %|Scatter")]
    [InlineData("check 80Nm --thread M8 --grade 8.8", "it twists off at 37.9 N·m", "is left")]
    [InlineData("check 300Nm --thread M12 --grade 8.8", "it twists off at 129 N·m", "is left")]
    [InlineData("tighten --thread M10 --torque 150Nm", "Preload none is left after 150 N·m|The bolt breaks", "To loosen|likely from")]
    [InlineData("check 65Nm --thread M10 --grade 8.8", "STOP The bolt stretches for good at the likely friction. It may break: at friction 0.10 it twists off at 59.2 N·m.", ": breaks")]
    [InlineData("check 55Nm --thread M10 --grade 8.8", "stretches for good if friction is as low as 0.10", "may break")]
    [InlineData("tighten --thread M12x1.5 --grade 10.9 --with impact --torque 110Nm", "CARE The torque fits the bolt. Tightened this way the clamp may be 60 % higher and stretch the bolt for good.", "clamps well")]
    [InlineData("tighten --thread M12x1.5 --grade 10.9 --rough-thread", "CARE The torque fits the bolt. On a rough thread it clamps far less.", "clamps well")]
    [InlineData("tighten --thread M8 --grade A2-70 --lubrication stainless-dry", "CARE The torque fits the bolt. Without paste a stainless thread may seize before it clamps.", "clamps well")]
    [InlineData("tighten --thread M14x1.5 --castle 6", "The bolt yields before it gets there: too much.|CARE The torque fits the bolt. The turn to the next slot may stretch the bolt for good.", "257 %|clamps well")]
    [InlineData("check 90Nm --then 90deg --thread M12x1.5 --grade 10.9", "past yield past yield past yield|CARE The turn stretches the bolt for good|0.300 mm longer", "281 %|274 %|279 %")]
    [InlineData("check 110Nm --thread M12x1.5 --grade 10.9 --lubrication oiled",
        "GO The bolt clamps well. At friction 0.08 it just passes the least yield of its grade; most bolts hold more.|Yields if friction is below 0.085", "not stretched for good|105 %")]
    [InlineData("tighten --thread M12", "GO The bolt clamps well and is not stretched for good.|100 %|a second click adds about 15 % of torque.", "past yield")]
    [InlineData("loosen 110Nm --thread M12x1.5 --hex 19mm --drive 1/2 --bar 450mm",
        "110 N·m is more than a bolt of grade 8.8 takes. That grade was assumed; likeliest the bolt is stronger, such as 10.9: read its head.", "Its thread was rough")]
    [InlineData("loosen 110Nm --thread M12x1.5 --grade 8.8 --hex 19mm --drive 1/2 --bar 450mm", "Its thread was rough, or the bolt has stretched.", "was assumed")]
    public void It_says_what_a_mechanic_would_sign(string line, string says, string never)
    {
        string answer = Ran.Here(Ran.Words(line)).Answer;
        string flowing = string.Join(' ', answer.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.All(says.Split('|'), words => Assert.Contains(words, flowing, StringComparison.Ordinal));
        Assert.All(never.Split('|'), words => Assert.DoesNotContain(words, flowing, StringComparison.Ordinal));
        Assert.True(line.Contains("--more", StringComparison.Ordinal) || answer.TrimEnd('\n').Split('\n').Length <= 24, answer);
    }

    [Theory]
    [InlineData("tighten --thread M10 --friction 0.12 --lubrication dry", "--friction: a figure and a lubrication both say how slippery it is: leave one out. Write: --lubrication dry")]
    [InlineData("check 40Nm --thread M10 --friction 0.12 --lubrication dry", "--friction: a figure and a lubrication both say")]
    [InlineData("loosen 900Nm --thread M12x1.5 --grade 8.8", "TORQUE: M12×1.5 of grade 8.8 takes at most ")]
    [InlineData("loosen 320Nm --thread M12x1.5 --grade 8.8", "look up torque, unit and thread. Write: --grade 10.9")]
    public void What_cannot_be_is_refused_with_its_place_and_cure(string line, string says)
    {
        Ran ran = Ran.Here(Ran.Words(line));
        Assert.Equal((2, ""), (ran.Code, ran.Answer));
        Assert.Contains(says, ran.Errors, StringComparison.Ordinal);
        Assert.Contains(" Write: ", ran.Errors, StringComparison.Ordinal);
    }
}
