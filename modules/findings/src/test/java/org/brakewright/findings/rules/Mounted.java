package org.brakewright.findings.rules;

import static java.util.Objects.requireNonNull;

import org.brakewright.analysis.mount.MountState;
import org.brakewright.findings.TestCar;

/**
 * An invented mount: a clamped square of 600 mm of 2 mm sheet, one bracket on four bolts M8 at the corners of 120 mm, and
 * a hung pedal of 275 to 50 mm. The rules are held to the numbers of analysis, which has its own tests.
 */
final class Mounted {
    static final String BOLTS = "mount.brackets[0].bolts.";

    private Mounted() {}

    static TestCar car() {
        TestCar car = TestCar.twin()
                .without("pedal.mount_stiffness")
                .without("pedal.arm_stiffness")
                .with("mount.panel.thickness", "2 mm")
                .with("mount.panel.material", "s355")
                .with("mount.panel.rake", "0 deg")
                .with("mount.brackets[0].name", "box")
                .with("mount.brackets[0].carries[0]", "pivot")
                .with("mount.brackets[0].carries[1]", "masters")
                .with("mount.brackets[0].side", "driver")
                .with(BOLTS + "diameter", "8 mm")
                .with(BOLTS + "pitch", "1.25 mm")
                .with(BOLTS + "grade", "class_8_8")
                .with(BOLTS + "washer", "16 mm")
                .with(BOLTS + "clamped", "6 mm")
                .with(BOLTS + "root_to_bolt", "15 mm")
                .with(BOLTS + "bolt_to_edge", "15 mm")
                .with("mount.arm.profile.kind", "flat_bar")
                .with("mount.arm.profile.width", "12 mm")
                .with("mount.arm.profile.height", "40 mm")
                .with("mount.arm.material", "s355");
        for (int i = 0; i < 4; i++) {
            car = spot(car, "mount.panel.outline[" + i + "]", i, 300).with("mount.panel.edges[" + i + "]", "clamped");
            car = spot(car, BOLTS + "positions[" + i + "]", i, 60);
        }
        car = place(car, "mount.pivot", -60, 60);
        car = place(car, "mount.arm.pad", -60, -215);
        car = place(car, "mount.arm.pin", -60, 10);
        return place(car, "mount.arm.socket", 30, 10);
    }

    /** A tube of 16 x 1 mm from the bracket, hinged at both ends. */
    static TestCar braced(int forward, int up) {
        String brace = "mount.stringers[0].";
        TestCar car = car().with(brace + "name", "brace")
                .with(brace + "profile.kind", "round_tube")
                .with(brace + "profile.diameter", "16 mm")
                .with(brace + "profile.wall", "1 mm")
                .with(brace + "material", "cds_tube")
                .with(brace + "on_bracket", "box")
                .with(brace + "near_end", "hinged")
                .with(brace + "body_end", "hinged");
        return place(place(car, brace + "at", -60, 60), brace + "body", forward, up);
    }

    /** The bracket welded along both sides instead of bolted. */
    static TestCar welded() {
        TestCar car = car().without("mount.brackets[0].bolts");
        for (int i = 0; i < 2; i++) {
            String weld = "mount.brackets[0].welds[" + i + "].";
            String across = i == 0 ? "-60 mm" : "60 mm";
            car = car.with(weld + "from.across", across)
                    .with(weld + "from.up", "-80 mm")
                    .with(weld + "to.across", across)
                    .with(weld + "to.up", "80 mm")
                    .with(weld + "leg", "3 mm");
        }
        return car;
    }

    static MountState state(TestCar car) {
        return requireNonNull(car.facts().analysis().mount());
    }

    private static TestCar spot(TestCar car, String path, int corner, int half) {
        return car.with(path + ".across", (corner == 1 || corner == 2 ? half : -half) + " mm")
                .with(path + ".up", (corner < 2 ? -half : half) + " mm");
    }

    private static TestCar place(TestCar car, String path, int forward, int up) {
        return car.with(path + ".forward", forward + " mm")
                .with(path + ".left", "0 mm")
                .with(path + ".up", up + " mm");
    }
}
