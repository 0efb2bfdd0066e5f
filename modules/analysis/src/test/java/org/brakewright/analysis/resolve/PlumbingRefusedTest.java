package org.brakewright.analysis.resolve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakewright.analysis.resolve.Refused.assertOnly;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.model.Problem;
import org.junit.jupiter.api.Test;

/** Lines that nobody could follow are refused by name. Places are invented. */
class PlumbingRefusedTest {
    private static final WrittenCar LINES = Cars.TWIN
            .with(part(0, "front master", "master", 0) + "plumbing.parts[0].circuit: front\n")
            .with(part(1, "rear master", "master", 60) + "plumbing.parts[1].circuit: rear\n")
            .with(part(2, "front caliper", "caliper", 200) + part(3, "rear caliper", "caliper", 260))
            .with("plumbing.bender.radius: 15 mm\nplumbing.stock_lengths[0]: 7 m")
            .with(hose(0, "front master", "front caliper"))
            .with(hose(1, "rear master", "rear caliper"));

    @Test
    void linesThatLeadFromMastersToBrakesStand() {
        assertThat(LINES.problems()).isEmpty();
    }

    @Test
    void aMasterThatWorksNothing() {
        assertThat(LINES.without("plumbing.hoses[1]").problems())
                .extracting(Problem::message)
                .containsExactlyInAnyOrder(
                        "No line leads from rear master to a brake or a clutch: its circuit works nothing.",
                        "No line leads from a master to rear caliper.");
    }

    @Test
    void aMasterWhoseLineEndsAtABracket() {
        assertOnly(
                LINES.with("plumbing.parts[3].kind: hose_bracket").without("plumbing.parts[3].bleeder"),
                "plumbing.parts[1]",
                "rear master");
    }

    @Test
    void aPartThatNoLineReaches() {
        assertOnly(LINES.with(part(4, "third caliper", "caliper", 320)), "plumbing.parts[4]", "third caliper");
    }

    @Test
    void twoCircuitsThatMeet() {
        assertThat(LINES.with(hose(2, "front caliper", "rear caliper")).problems())
                .extracting(Problem::message)
                .isNotEmpty()
                .allMatch(message -> message.startsWith("Two circuits meet at "));
    }

    private static String part(int index, String name, String kind, int forward) {
        String path = "plumbing.parts[" + index + "].";
        String bleeder = kind.equals("caliper") ? path + "bleeder: yes\n" : "";
        return path + "name: " + name + "\n" + path + "kind: " + kind + "\n" + path + "at.forward: " + forward + " mm\n"
                + path + "at.left: 300 mm\n" + path + "at.up: 300 mm\n" + bleeder;
    }

    private static String hose(int i, String from, String to) {
        String path = "plumbing.hoses[" + i + "].";
        return path + "name: hose " + i + "\n" + path + "length: 300 mm\n" + path + "start.to: " + from + "\n" + path
                + "start.form: female\n" + path + "start.seat: bracket\n" + path + "end.to: " + to + "\n" + path
                + "end.form: banjo\n" + path + "end.seat: banjo_face\n";
    }
}
