package org.brakewright.kernel.friction;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakewright.kernel.WorkedExample;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/laws, invented numbers; results printed there come from an independent computation. */
class LawPagesTest {
    @Test
    void discTorque() {
        WorkedExample page = WorkedExample.of("disc-torque");
        DiscBrake brake = new DiscBrake(
                page.si("piston area on one side"),
                page.si("friction"),
                page.si("effective radius"),
                page.si("threshold pressure"));
        page.holds("force on each pad", brake.clampForce(page.si("line pressure")));
        page.holds("torque", brake.torque(page.si("line pressure")));
    }

    @Test
    void effectiveRadius() {
        WorkedExample page = WorkedExample.of("effective-radius");
        AnnularPad pad = new AnnularPad(page.si("inner radius"), page.si("outer radius"), page.si("angle"));
        page.holds("uniform wear", EffectiveRadius.uniformWear(pad.innerRadius(), pad.outerRadius()));
        page.holds("uniform pressure", EffectiveRadius.uniformPressure(pad.innerRadius(), pad.outerRadius()));
        page.holds("pressure center, uniform wear", pad.pressureCenter(PadContact.UNIFORM_WEAR));
    }

    @Test
    void drumTorque() {
        WorkedExample page = WorkedExample.of("drum-torque");
        DrumShoe shoe = new DrumShoe(
                page.si("pin distance"),
                page.si("drum radius"),
                page.si("lining start"),
                page.si("lining end"),
                page.si("arm of the push"));
        double friction = page.si("friction");
        page.holds("leading shoe", stable(shoe.leading(friction)).value());
        page.holds("trailing shoe", shoe.trailing(friction).value());
        BrakeFactor.Stable factor = stable(BrakeFactor.leadingTrailing(shoe, shoe, friction));
        page.holds("brake factor", factor.value());
        page.holds("factor gained per friction", factor.perFriction());
        page.holds("self-lock friction", shoe.selfLockFriction());
        DrumBrake brake = new DrumBrake(
                factor.value(), page.si("wheel-cylinder area"), shoe.drumRadius(), page.si("push-out pressure"));
        page.holds("torque", brake.torque(page.si("line pressure")));
    }

    @Test
    void duoServo() {
        WorkedExample page = WorkedExample.of("duo-servo");
        double link = page.si("link depth");
        double anchor = page.si("anchor height");
        DuoServo duo = new DuoServo(
                new DrumShoe(
                        link,
                        page.si("drum radius"),
                        page.si("primary lining start"),
                        page.si("primary lining end"),
                        link + page.si("cylinder height")),
                new DrumShoe(
                        anchor,
                        page.si("drum radius"),
                        page.si("secondary lining start"),
                        page.si("secondary lining end"),
                        link + anchor));
        double friction = page.si("friction");
        page.holds("primary shoe", stable(duo.primary().leading(friction)).value());
        page.holds("secondary shoe", stable(duo.secondary().leading(friction)).value());
        page.holds("brake factor", stable(duo.factor(friction)).value());
        page.holds("self-lock friction", duo.selfLockFriction());
    }

    @Test
    void parkingBrake() {
        WorkedExample page = WorkedExample.of("parking-brake");
        int wheels = (int) page.si("wheels");
        ParkingBrake brake = new ParkingBrake(
                page.si("lever ratio"), page.si("cable efficiency"), page.si("wheel lever ratio"), wheels);
        double factor = page.si("brake factor");
        double radius = page.si("drum radius");
        double torque = brake.torque(page.si("lever force"), factor, radius);
        GradeHold hold = GradeHold.onGrade(page.si("weight"), page.si("grade"));
        double needed = hold.torquePerWheel(wheels, page.si("rolling radius"));
        page.holds("torque at each wheel", torque);
        page.holds("force needed", hold.forceNeeded());
        page.holds("torque needed at each wheel", needed);
        page.holds("lever force needed", brake.leverForceFor(needed, factor, radius));
        double holdingForce = wheels * torque / page.si("rolling radius");
        page.holds("steepest angle held", GradeHold.steepestAngle(hold.weight(), holdingForce));
    }

    private static BrakeFactor.Stable stable(BrakeFactor factor) {
        assertThat(factor).isInstanceOf(BrakeFactor.Stable.class);
        return (BrakeFactor.Stable) factor;
    }
}
