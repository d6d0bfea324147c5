#:project ../src/Leverage.Charts/Leverage.Charts.csproj
#:property PublishAot=false
#:property GenerateDocumentationFile=false

// Draws the pictures of the gallery that the command line has no option for: the upright page of a phone, and what matters.
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Charts;
using Leverage.Requests;
using Leverage.Threads;
using UnitsNet;

string folder = args.Length > 0 ? args[0] : ".";
LooseningSetup setup = LooseningDefaults.Complete(new LooseningRequest
{
    BookTorque = Torque.FromNewtonMeters(460),
    Thread = ThreadCatalog.Named("M24x1.5"),
    Condition = "used",
    AcrossFlats = Length.FromMillimeters(36),
    Drive = "3/4",
    Bar = Length.FromMillimeters(1200),
    BarDiameter = Length.FromMillimeters(24),
    Body = Mass.FromKilograms(82),
});
LooseningAssessment assessment = LooseningAssessor.Assess(setup);
string title = LooseningTitle.Of(setup, UnitStyle.Metric);

Chart phone = WindowChart.Draw(WindowMaker.Of(assessment), title, UnitStyle.Metric, ChartPage.Portrait);
Chart matters = TornadoChart.Draw(Tornado.OfComesLoose(assessment.Judgement.ComesLoose, WhatMatters.Of(assessment)), title);
foreach (var (name, chart) in new[] { ("window-phone", phone), ("what-matters", matters) })
{
    File.WriteAllBytes(Path.Combine(folder, $"{name}.png"), chart.Bytes(ChartFormat.Png));
    File.WriteAllBytes(Path.Combine(folder, $"{name}.svg"), chart.Bytes(ChartFormat.Svg));
}
