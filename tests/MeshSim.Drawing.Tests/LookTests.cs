#pragma warning disable MA0076, IDE0005
using MeshSim.Devices;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using SkiaSharp;
namespace MeshSim.Drawing.Tests;
public sealed class LookTests
{
    [Fact]
    public void Look()
    {
        Save("ground", MarginPicture.Png(SyntheticCoverage.Coverage, SyntheticCoverage.Map(TwoStoreyFlat.Ground), SyntheticCoverage.Repeaters, PictureSize.Default));
        Save("upper", MarginPicture.Png(SyntheticCoverage.Coverage, SyntheticCoverage.Map(TwoStoreyFlat.Upper), SyntheticCoverage.Repeaters, PictureSize.Default));
        var rnd = new Random(5);
        string[] kinds = ["plug","bulb","switch","motion","contact","smoke","leak","thermostat","radiator valve","blind","meter","module","thing"];
        var devs = TwoStoreyFlat.Home.Devices.ToBuilder(); var reach = SyntheticCoverage.Coverage.Devices.ToBuilder();
        for (int i=0;i<30;i++) {
          var t = devs[1];
          var id = new DeviceId($"{kinds[i%13].Split(' ')[0]}-{(i%3==0?"upstairs-":"")}{i}");
          devs.Add(t with { Id=id, Name=id.Value, Kind=kinds[i%13], Role = i%3==0?Role.Router:Role.EndDevice, Room=null, Point=PlanPoint.FromMetres(rnd.NextDouble()*9, rnd.NextDouble()*6.4)});
          reach.Add(new DeviceReach{Device=id,DisjointRoutes=1,Route=i%5==0?null:new Route{Path=[id,new(i%2==0?"hall-lamp":"tv-plug"),new("stick")],Etx=2,WeakestMargin=new(8),Delivery=1}});
        }
        var cov = SyntheticCoverage.Coverage with { Home = TwoStoreyFlat.Home with { Devices = devs.ToImmutable() }, Devices = reach.ToImmutable() };
        Save("dense", MarginPicture.Png(cov, SyntheticCoverage.Map(TwoStoreyFlat.Ground), SyntheticCoverage.Repeaters, PictureSize.Default));
        Save("small", MarginPicture.Png(SyntheticCoverage.Coverage, SyntheticCoverage.Map(TwoStoreyFlat.Ground), SyntheticCoverage.Repeaters, PictureSize.OfScale(50)));
    }
    private static void Save(string name, byte[] png)
    {
        File.WriteAllBytes($"/tmp/mp-{name}.png", png);
        using var b = SKBitmap.Decode(png);
        using var g = new SKBitmap(b.Width, b.Height);
        for (int y=0;y<b.Height;y++) for (int x=0;x<b.Width;x++) { var c=b.GetPixel(x,y); byte v=(byte)(0.2126*c.Red+0.7152*c.Green+0.0722*c.Blue); g.SetPixel(x,y,new SKColor(v,v,v)); }
        using var d = g.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes($"/tmp/mp-{name}-grey.png", d.ToArray());
    }
}
