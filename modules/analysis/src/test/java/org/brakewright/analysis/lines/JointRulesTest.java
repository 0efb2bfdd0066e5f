package org.brakewright.analysis.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.brakewright.model.lines.Form;
import org.brakewright.model.lines.LineEnd;
import org.brakewright.model.lines.NutThread;
import org.brakewright.model.lines.Seat;
import org.brakewright.model.lines.TubeMaterial;
import org.brakewright.model.resolved.ResolvedLines.Spot;
import org.brakewright.model.resolved.ResolvedLines.Tube;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pairs that must never be screwed together, and those that may. Sources stand in {@link JointRules}. */
class JointRulesTest {
    private static final NutThread INCH = NutThread.UNF_3_8_24;

    /** Seats as SAE J512, SAE J514, ISO 4038 and ISO 13486 pair them; each form on every seat it does not fit is refused. */
    @ParameterizedTest
    @CsvSource({
        "DOUBLE_45, INVERTED_45, ''",
        "DOUBLE_45, MALE_45, ''",
        "SINGLE_37, CONE_37, ''",
        "CONVEX, CONVEX, ''",
        "ISO_DOUBLE, ISO_DOUBLE, ''",
        "BANJO, BANJO_FACE, ''",
        "FEMALE, BRACKET, ''",
        "SINGLE_37, INVERTED_45, CONE_ANGLE",
        "DOUBLE_45, CONE_37, CONE_ANGLE",
        "CONVEX, INVERTED_45, CONVEX_SEAT",
        "DOUBLE_45, CONVEX, CONVEX_SEAT",
        "ISO_DOUBLE, INVERTED_45, ISO_AND_SAE",
        "DOUBLE_45, ISO_DOUBLE, ISO_AND_SAE",
        "BANJO, CONE_37, BANJO",
        "DOUBLE_45, BRACKET, SOCKET",
        "COMPRESSION, FERRULE, COMPRESSION",
        "SINGLE_45, INVERTED_45, SINGLE_45"
    })
    void formOnSeat(Form form, Seat seat, String misfit) {
        List<String> found = names(tube(4.7625e-3, 0.71e-3), new LineEnd("port", form, INCH, seat, INCH));
        assertThat(found).isEqualTo(misfit.isEmpty() ? List.of() : List.of(misfit));
    }

    /** 24 turns an inch are 1.058 mm, not 1 mm: 3/8-24 starts in M10x1 and strips; 7/16-24 and -20 likewise. */
    @ParameterizedTest
    @CsvSource({
        "UNF_3_8_24, M10X1, THREAD_NEAR",
        "UNF_7_16_24, UNF_7_16_20, THREAD_NEAR",
        "UNF_3_8_24, UNF_5_8_18, THREAD",
        "M10X1, M12X1, THREAD"
    })
    void nutInPort(NutThread nut, NutThread port, Misfit misfit) {
        LineEnd end = new LineEnd("port", Form.DOUBLE_45, nut, Seat.INVERTED_45, port);
        assertThat(JointRules.ofEnd(end)).containsExactly(misfit);
    }

    /** A nut for 1/4 in (6.35 mm) on 6 mm tube; an oversize nut for 3/16 in tube is a part that is sold. */
    @Test
    void nutOnTube() {
        NutThread quarter = NutThread.UNF_7_16_24;
        LineEnd end = new LineEnd("port", Form.DOUBLE_45, quarter, Seat.INVERTED_45, quarter);
        assertThat(names(tube(6e-3, 0.71e-3), end)).containsExactly("NUT_BORE");
        assertThat(names(tube(6.35e-3, 0.71e-3), end)).isEmpty();
        assertThat(names(tube(4.7625e-3, 0.71e-3), end)).isEmpty();
    }

    /** SAE J533: 0.028 in (0.71 mm) is the thickest wall of 3/16 in tube that is double-flared; 0.035 in is outside. */
    @Test
    void wallForADoubleFlare() {
        LineEnd end = new LineEnd("port", Form.DOUBLE_45, INCH, Seat.INVERTED_45, INCH);
        assertThat(names(tube(4.7625e-3, 0.028 * 25.4e-3), end)).isEmpty();
        assertThat(names(tube(4.7625e-3, 0.035 * 25.4e-3), end)).containsExactly("WALL");
    }

    private static List<String> names(Tube tube, LineEnd end) {
        return JointRules.ofTube(tube, end).stream().map(Enum::name).toList();
    }

    private static Tube tube(double outside, double wall) {
        LineEnd end = new LineEnd("port", Form.DOUBLE_45, INCH, Seat.INVERTED_45, INCH);
        return new Tube(
                "it",
                TubeMaterial.STEEL,
                outside,
                wall,
                end,
                end,
                List.of(new Spot(0, 0, 0), new Spot(1, 0, 0)),
                List.of(),
                List.of(),
                false,
                1);
    }
}
