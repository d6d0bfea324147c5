#:project ../src/Leverage.Charts/Leverage.Charts.csproj
#:property PublishAot=false
#:property GenerateDocumentationFile=false

// Draws the packages' icon: a nut, the lever on it, and the hand's pull at its end. dotnet run Icon.cs -- icon.png
using SkiaSharp;

const int Side = 128;
using var surface = SKSurface.Create(new SKImageInfo(Side, Side));
SKCanvas canvas = surface.Canvas;
canvas.Clear(SKColors.Transparent);
using var ground = new SKPaint { Color = new SKColor(0xF7, 0xF3, 0xEC), IsAntialias = true };
using var steel = new SKPaint { Color = new SKColor(0x2B, 0x2B, 0x2B), IsAntialias = true };
using var rust = new SKPaint { Color = new SKColor(0x9A, 0x3B, 0x0B), IsAntialias = true };
using var bar = new SKPaint { Color = steel.Color, IsAntialias = true, IsStroke = true, StrokeWidth = 11, StrokeCap = SKStrokeCap.Round };
using var pull = new SKPaint { Color = new SKColor(0x1F, 0x4E, 0x8C), IsAntialias = true, IsStroke = true, StrokeWidth = 9 };
canvas.DrawRoundRect(0, 0, Side, Side, 22, 22, ground);

var nut = new SKPoint(36, 90);
var hand = new SKPoint(70, 26);
canvas.DrawLine(nut, hand, bar);
canvas.DrawPath(Hexagon(nut, 27), rust);
canvas.DrawCircle(nut, 12, ground);
canvas.DrawCircle(nut, 8, steel);

// The pull is square to the lever, as it should be.
float length = SKPoint.Distance(nut, hand);
var square = new SKPoint((nut.Y - hand.Y) / length, (hand.X - nut.X) / length);
canvas.DrawLine(At(hand, square, 7), At(hand, square, 30), pull);
using var head = new SKPath();
var across = new SKPoint(-square.Y, square.X);
head.MoveTo(At(hand, square, 48));
head.LineTo(At(At(hand, square, 27), across, 13));
head.LineTo(At(At(hand, square, 27), across, -13));
head.Close();
using var point = new SKPaint { Color = pull.Color, IsAntialias = true };
canvas.DrawPath(head, point);

using SKImage image = surface.Snapshot();
using SKData png = image.Encode(SKEncodedImageFormat.Png, 100);
File.WriteAllBytes(args.Length > 0 ? args[0] : "icon.png", png.ToArray());

static SKPoint At(SKPoint from, SKPoint way, float distance) => new(from.X + way.X * distance, from.Y + way.Y * distance);

static SKPath Hexagon(SKPoint centre, float radius)
{
    var path = new SKPath();
    for (int corner = 0; corner < 6; corner++)
    {
        double angle = Math.PI / 3 * corner + 0.2;
        var to = new SKPoint(centre.X + radius * (float)Math.Cos(angle), centre.Y + radius * (float)Math.Sin(angle));
        if (corner == 0)
        {
            path.MoveTo(to);
        }
        else
        {
            path.LineTo(to);
        }
    }

    path.Close();
    return path;
}
