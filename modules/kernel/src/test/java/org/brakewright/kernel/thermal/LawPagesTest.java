package org.brakewright.kernel.thermal;

import org.brakewright.kernel.WorkedExample;
import org.junit.jupiter.api.Test;

/** The worked examples of {@code docs/laws}; their results were computed by a second program, in another language. */
class LawPagesTest {

    @Test
    void greyIron() {
        WorkedExample page = WorkedExample.of("grey-iron");
        double t = page.si("temperature");
        page.holds("specific heat", GreyIron.specificHeat(t));
        page.holds("conductivity", GreyIron.conductivity(t));
        page.holds("heat since 20 C", GreyIron.heat(t));
        page.holds("effusivity", GreyIron.effusivity(t));
        page.holds("diffusivity", GreyIron.diffusivity(t));
    }

    @Test
    void airProperties() {
        WorkedExample page = WorkedExample.of("air-properties");
        Air air = Air.at(page.si("temperature"));
        page.holds("density", air.density());
        page.holds("viscosity", air.viscosity());
        page.holds("conductivity", air.conductivity());
        page.holds("Prandtl number", air.prandtl());
    }

    @Test
    void discConvection() {
        WorkedExample page = WorkedExample.of("disc-convection");
        Air air = Air.at(page.si("air temperature"));
        for (String speed : new String[] {"slow", "between", "fast"}) {
            page.holds(speed + " coefficient", DiscConvection.coefficient(air, page.si("diameter"), page.si(speed)));
        }
    }

    @Test
    void vaneConvection() {
        WorkedExample page = WorkedExample.of("vane-convection");
        Air air = Air.at(page.si("air temperature"));
        VaneConvection vanes = new VaneConvection(page.si("hydraulic diameter"), page.si("length"));
        double speed = VaneConvection.channelSpeed(
                page.si("outer diameter"), page.si("inner diameter"), page.si("wheel speed"));
        page.holds("air speed", speed);
        page.holds("coefficient", vanes.coefficient(air, speed));
        page.holds("coefficient in fast air", vanes.coefficient(air, page.si("fast air")));
    }

    @Test
    void drumConvection() {
        WorkedExample page = WorkedExample.of("drum-convection");
        Air air = Air.at(page.si("air temperature"));
        page.holds("coefficient", DrumConvection.coefficient(air, page.si("diameter"), page.si("speed")));
    }

    @Test
    void plateConvection() {
        WorkedExample page = WorkedExample.of("plate-convection");
        Air air = Air.at(page.si("air temperature"));
        page.holds("coefficient", PlateConvection.coefficient(air, page.si("length"), page.si("speed")));
    }

    @Test
    void naturalConvection() {
        WorkedExample page = WorkedExample.of("natural-convection");
        double face = page.si("face");
        double ambient = page.si("ambient");
        double natural = NaturalConvection.coefficient(Air.at((face + ambient) / 2), page.si("height"), face, ambient);
        page.holds("natural", natural);
        page.holds("both", NaturalConvection.with(page.si("forced"), natural));
    }

    @Test
    void radiation() {
        WorkedExample page = WorkedExample.of("radiation");
        double emissivity = page.si("emissivity");
        page.holds("flux", Radiation.flux(emissivity, page.si("face"), page.si("ambient")));
        page.holds("coefficient", Radiation.coefficient(emissivity, page.si("face"), page.si("ambient")));
    }

    @Test
    void heatPartition() {
        WorkedExample page = WorkedExample.of("heat-partition");
        double pad = HeatPartition.effusivity(
                page.si("pad density"), page.si("pad specific heat"), page.si("pad conductivity"));
        page.holds("pad effusivity", pad);
        page.holds(
                "share of rotor",
                HeatPartition.rotorShare(page.si("rotor effusivity"), page.si("swept area"), pad, page.si("pad area")));
    }

    @Test
    void singleStop() {
        WorkedExample page = WorkedExample.of("single-stop-heat");
        double flux = page.si("flux");
        double duration = page.si("duration");
        double effusivity = page.si("effusivity");
        page.holds("mean rise", SingleStop.meanRise(page.si("energy"), page.si("mass"), page.si("specific heat")));
        page.holds("face rise", SingleStop.faceRise(flux, duration, effusivity, page.si("time")));
        page.holds("greatest face rise", SingleStop.greatestFaceRise(flux, duration, effusivity));
    }

    @Test
    void rubbedFace() {
        WorkedExample page = WorkedExample.of("rubbed-face");
        RubbedFace face = new RubbedFace(page.si("depth"), page.si("conductivity"), page.si("diffusivity"));
        for (String when : new String[] {"early", "late"}) {
            page.holds(
                    when + " excess", face.excess(page.si("flux"), page.si("flux gained each second"), page.si(when)));
        }
    }

    @Test
    void snubSeries() {
        WorkedExample page = WorkedExample.of("snub-series");
        double kept = SnubSeries.kept(page.si("conductance"), page.si("interval"), page.si("capacity"));
        SnubSeries series = new SnubSeries(page.si("rise"), kept);
        int snubs = (int) page.si("snubs");
        page.holds("kept", kept);
        page.holds("after all", series.after(snubs));
        page.holds("before the last", series.before(snubs));
        page.holds("in the end", series.limit());
    }

    @Test
    void lumpCooling() {
        WorkedExample page = WorkedExample.of("lump-cooling");
        LumpCooling lump = new LumpCooling(page.si("capacity"), page.si("conductance"));
        double start = page.si("excess");
        page.holds("time constant", lump.timeConstant());
        page.holds("cooled", lump.excess(start, 0, page.si("time")));
        page.holds("dragged", lump.excess(start, page.si("power"), page.si("time")));
        page.holds("time to cool", lump.timeTo(start, page.si("cool")));
    }

    @Test
    void wheelHeat() {
        WorkedExample page = WorkedExample.of("wheel-heat");
        Surroundings around = new Surroundings(page.si("speed"), page.si("wheel speed"), page.si("ambient"));
        double[] state = {page.si("rotor"), page.si("linings"), page.si("housing"), page.si("fluid")};
        double[] rates = new double[WheelHeat.NODES];
        double loss = wheel(page).rates(page.si("power"), around, state, 0, rates);
        page.holds("rotor rises", rates[WheelHeat.ROTOR]);
        page.holds("linings rise", rates[WheelHeat.LININGS]);
        page.holds("housing rises", rates[WheelHeat.HOUSING]);
        page.holds("fluid rises", rates[WheelHeat.FLUID]);
        page.holds("loss", loss);
    }

    private static WheelHeat wheel(WorkedExample page) {
        double airflow = page.si("airflow");
        RotorSurface surface = new RotorSurface.Disc(page.si("diameter"), page.si("area"), airflow);
        return new WheelHeat(
                new Rotor(
                        page.si("rotor mass"),
                        surface,
                        page.si("radiating area"),
                        page.si("emissivity"),
                        page.si("swept area")),
                new Linings(
                        page.si("lining capacity"),
                        page.si("lining effusivity"),
                        page.si("lining area"),
                        page.si("pressed"),
                        page.si("released")),
                new Housing(
                        page.si("housing capacity"),
                        page.si("housing area"),
                        page.si("housing length"),
                        airflow,
                        page.si("through abutments")),
                new WheelFluid(page.si("fluid capacity"), page.si("through pistons"), page.si("fluid to housing")));
    }
}
