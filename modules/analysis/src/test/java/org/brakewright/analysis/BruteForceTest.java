package org.brakewright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.SplittableRandom;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedMechanism;
import org.brakewright.model.resolved.ResolvedMechanism.Point;
import org.brakewright.model.resolved.ResolvedPedal;
import org.junit.jupiter.api.Test;

/**
 * The coupled solution against {@link BruteForce}, which finds every unknown by halving. Both solve the same equations, so
 * they agree to what the searches leave: one part in a million of each value, and what no gauge shows (1 Pa, 1 nm, 1 nrad).
 */
class BruteForceTest {
    private static final double CLOSE = 1e-6;
    private static final double[] PUSHES = {40, 300, 900};

    @Test
    void threeHundredCarsComeOutTheSame() {
        RandomCars.each(300, rig -> {
            for (double push : PUSHES) {
                same(rig, push);
            }
        });
    }

    /** The same cars with a pedal whose ratio changes on the way; told up to the pedal's stop. */
    @Test
    void carsWithAMechanismComeOutTheSame() {
        SplittableRandom random = new SplittableRandom(11);
        int[] compared = {0};
        RandomCars.each(80, rig -> {
            Rig jointed = new Rig(withMechanism(rig.build(), random));
            if (jointed.push(200).padTravel() < jointed.build().pedal().travelToStop()) {
                same(jointed, 200);
                compared[0]++;
            }
        });
        assertThat(compared[0]).as("cars whose pedal did not meet its stop").isGreaterThan(30);
    }

    private static void same(Rig rig, double push) {
        Pushed coupled = rig.push(push);
        BruteForce.Found halved = new BruteForce(rig.build()).push(push);
        near("thrust", coupled.state().thrust(), halved.thrust(), 1e-3);
        near("pressure at the front", coupled.state().frontPressure(), halved.frontPressure(), 1);
        near("pressure at the rear", coupled.state().rearPressure(), halved.rearPressure(), 1);
        near("front stroke", coupled.frontStroke(), halved.frontStroke(), 1e-9);
        near("rear stroke", coupled.rearStroke(), halved.rearStroke(), 1e-9);
        near("tilt", coupled.apply().bar().tilt(), halved.tilt(), 1e-9);
        near("pad travel", coupled.padTravel(), halved.padTravel(), 1e-8);
        near("pedal force", coupled.state().pedalForce(), push, 1e-6);
    }

    private static void near(String what, double coupled, double halved, double unseen) {
        assertThat(coupled).as(what).isCloseTo(halved, within(CLOSE * Math.abs(halved) + unseen));
    }

    private static ResolvedBuild withMechanism(ResolvedBuild build, SplittableRandom random) {
        Point pin = new Point(random.nextDouble(-0.01, 0.01), -random.nextDouble(0.05, 0.08));
        Point pad = new Point(random.nextDouble(-0.05, 0.02), -random.nextDouble(0.26, 0.34));
        Point socket = new Point(pin.x() + random.nextDouble(0.1, 0.16), pin.y() + random.nextDouble(-0.01, 0.01));
        ResolvedPedal plain = build.pedal();
        ResolvedPedal jointed = new ResolvedPedal(
                plain.ratio(),
                plain.freePlay(),
                plain.travelToStop(),
                plain.efficiency(),
                plain.mountStiffness(),
                plain.armStiffness(),
                plain.slack(),
                Optional.of(new ResolvedMechanism(pad, pin, socket, 0)),
                Optional.empty());
        return build.withPedal(jointed);
    }
}
