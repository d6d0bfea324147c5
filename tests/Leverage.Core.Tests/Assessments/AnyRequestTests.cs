using System.Text.Json;
using FsCheck.Xunit;
using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Wording;

namespace Leverage.Tests.Assessments;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class AnyRequestTests
{
    [Property(MaxTest = 300)]
    public void Any_request_is_answered_in_finite_numbers_or_refused_in_one_line(Draws draws)
    {
        LooseningAssessment assessment;
        try
        {
            assessment = LooseningAssessor.Assess(LooseningDefaults.Complete(AnyRequest.From(draws)));
        }
        catch (InputException refusal)
        {
            Assert.DoesNotContain('\n', refusal.Line);
            return;
        }

        string json = LooseningAnswers.ToJson(LooseningAnswers.Of(assessment, UnitStyle.Metric));
        using var parsed = JsonDocument.Parse(json);
        Assert.Equal(JsonValueKind.Object, parsed.RootElement.ValueKind);
    }
}
