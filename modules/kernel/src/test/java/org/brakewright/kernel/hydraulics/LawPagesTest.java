package org.brakewright.kernel.hydraulics;

import java.util.List;
import org.brakewright.kernel.WorkedExample;
import org.brakewright.kernel.hydraulics.HoseExpansion.Point;
import org.brakewright.kernel.hydraulics.TandemMaster.Chamber;
import org.brakewright.kernel.hydraulics.TandemMaster.Failure;
import org.brakewright.kernel.hydraulics.TandemMaster.Pressures;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/laws, invented numbers; results printed there come from an independent computation. */
class LawPagesTest {
    @Test
    void masterCylinder() {
        WorkedExample page = WorkedExample.of("master-cylinder");
        double area = Bore.area(page.si("bore"));
        MasterCylinder master = new MasterCylinder(area, page.si("spring force"), page.si("efficiency"));
        MasterStroke stroke = new MasterStroke(area, page.si("lost stroke"), page.si("full stroke"));
        page.holds("pressure", master.pressure(page.si("push")));
        page.holds("stroke", stroke.stroke(page.si("volume taken")));
        page.holds("stroke left", stroke.left(page.si("volume taken")));
    }

    @Test
    void tandemMaster() {
        WorkedExample page = WorkedExample.of("tandem-master");
        double lost = page.si("lost stroke of each");
        TandemMaster master = new TandemMaster(
                Bore.area(page.si("bore")),
                new Chamber(page.si("primary spring"), lost, page.si("full primary stroke")),
                new Chamber(page.si("secondary spring"), lost, page.si("full secondary stroke")),
                page.si("efficiency"));
        Pressures pressures = master.pressures(page.si("push"), Failure.NONE);
        page.holds("primary pressure", pressures.primary());
        page.holds("secondary pressure", pressures.secondary());
        double primary = page.si("primary volume");
        double secondary = page.si("secondary volume");
        page.holds("rod travel", master.rodTravel(primary, secondary, Failure.NONE));
        page.holds("rod travel, primary open", master.rodTravel(primary, secondary, Failure.PRIMARY));
        page.holds("rod travel, secondary open", master.rodTravel(primary, secondary, Failure.SECONDARY));
    }

    @Test
    void vacuumBooster() {
        WorkedExample page = WorkedExample.of("vacuum-booster");
        VacuumBooster booster = new VacuumBooster(
                page.si("crack-in force"),
                page.si("ratio"),
                Bore.area(page.si("diaphragm diameter")),
                page.si("vacuum"),
                page.si("efficiency"));
        page.holds("full assist", booster.fullAssist());
        page.holds("run-out input", booster.runOutInput());
        page.holds("output below run-out", booster.output(page.si("input below run-out")));
        double input = page.si("input above run-out");
        page.holds("output above run-out", booster.output(input));
        page.holds("output without vacuum", booster.withoutVacuum().output(input));
    }

    @Test
    void proportioningValve() {
        WorkedExample page = WorkedExample.of("proportioning-valve");
        ProportioningValve valve = new ProportioningValve(page.si("knee"), page.si("slope"));
        page.holds("outlet", valve.outlet(page.si("inlet")));
        page.holds("inlet needed", valve.inlet(page.si("wanted outlet")).orElseThrow());
    }

    @Test
    void meteringValve() {
        WorkedExample page = WorkedExample.of("metering-valve");
        MeteringValve valve = new MeteringValve(page.si("opening pressure"), page.si("blend pressure"));
        page.holds("outlet", valve.outlet(page.si("inlet")));
        page.holds("inlet needed", valve.inlet(page.si("wanted outlet")));
    }

    @Test
    void residualValve() {
        WorkedExample page = WorkedExample.of("residual-valve");
        ResidualValve valve = new ResidualValve(page.si("held pressure"));
        page.holds("head", Head.pressure(page.si("height"), page.si("density")));
        page.holds("line at rest", valve.line(0, page.si("peak")));
    }

    @Test
    void fluidCompression() {
        WorkedExample page = WorkedExample.of("fluid-compression");
        double pressure = page.si("pressure");
        double modulus = page.si("bulk modulus");
        double air = page.si("free air");
        EffectiveModulus mixture = new EffectiveModulus(
                page.si("gas share at atmosphere"), EntrainedAir.ISOTHERMAL, modulus, EntrainedAir.ATMOSPHERE);
        double absolute = EntrainedAir.ATMOSPHERE + page.si("gauge pressure on the mixture");
        page.holds("liquid gives", Liquid.compression(page.si("liquid"), pressure, modulus));
        page.holds("air gives, slow", EntrainedAir.takenUp(air, pressure, EntrainedAir.ISOTHERMAL));
        page.holds("air gives, fast", EntrainedAir.takenUp(air, pressure, EntrainedAir.ADIABATIC));
        page.holds("gas share under pressure", mixture.gasShare(absolute));
        page.holds("modulus of the mixture, slow", mixture.shrinkingGas(absolute));
    }

    @Test
    void tube() {
        WorkedExample page = WorkedExample.of("tube");
        Tube tube = new Tube(page.si("outside diameter"), page.si("wall"));
        double pressure = page.si("pressure");
        double length = page.si("length");
        page.holds("hoop stress at the bore", tube.hoopStressAtBore(pressure));
        page.holds("axial stress", tube.axialStress(pressure));
        page.holds("bore volume", tube.boreVolume(length));
        page.holds("swell", tube.swell(length, pressure, page.si("Young's modulus"), page.si("Poisson's ratio")));
        page.holds("burst on the outside diameter", tube.barlowOutside(page.si("tensile strength")));
        page.holds("burst on the inside diameter", tube.barlowInside(page.si("tensile strength")));
    }

    @Test
    void hoseExpansion() {
        WorkedExample page = WorkedExample.of("hose-expansion");
        HoseExpansion hose = new HoseExpansion(List.of(
                new Point(page.si("lower pressure"), page.si("volume per length there")),
                new Point(page.si("upper pressure"), page.si("volume per length at the upper"))));
        double length = page.si("length");
        page.holds("growth at low", hose.volume(length, page.si("low")));
        page.holds("growth at middle", hose.volume(length, page.si("middle")));
        page.holds("growth beyond", hose.volume(length, page.si("beyond")));
    }
}
