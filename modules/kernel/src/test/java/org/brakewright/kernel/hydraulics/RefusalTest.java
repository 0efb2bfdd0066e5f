package org.brakewright.kernel.hydraulics;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.brakewright.kernel.hydraulics.HoseExpansion.Point;
import org.brakewright.kernel.hydraulics.TandemMaster.Chamber;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** No record is born with what no part can have; the message names the component. */
class RefusalTest {
    static Stream<Arguments> refused() {
        return Stream.of(
                refuse("area", () -> new MasterCylinder(-1, 0, 1)),
                refuse("springForce", () -> new MasterCylinder(1, -1, 1)),
                refuse("efficiency", () -> new MasterCylinder(1, 0, 1.01)),
                refuse("efficiency", () -> new MasterCylinder(1, 0, Double.NaN)),
                refuse("area", () -> new MasterCylinder(Double.POSITIVE_INFINITY, 0, 1)),
                refuse("lostStroke", () -> new MasterStroke(1, 0.03, 0.03)),
                refuse("slope", () -> new ProportioningValve(1, 1.01)),
                refuse("slope", () -> new ProportioningValve(1, -0.01)),
                refuse("kneePressure", () -> new ProportioningValve(-1, 0.3)),
                refuse("blendPressure", () -> new MeteringValve(2, 2)),
                refuse("heldPressure", () -> new ResidualValve(-1)),
                refuse("ratio", () -> new VacuumBooster(0, 0.9, 1, 0, 1)),
                refuse("vacuum", () -> new VacuumBooster(0, 2, 1, 1.2e5, 1)),
                refuse("freeGasShare", () -> new EffectiveModulus(1, 1, 1, 1)),
                refuse("wall", () -> new Tube(0.004, 0.002)),
                refuse("wall", () -> new Tube(0.004, Double.NaN)),
                refuse("points", () -> new HoseExpansion(List.of())),
                refuse("pressure", () -> new HoseExpansion(List.of(new Point(2, 1), new Point(2, 1)))),
                refuse("volumePerLength", () -> new HoseExpansion(List.of(new Point(1, 2), new Point(2, 1)))),
                refuse("insideDiameter", () -> HoseExpansion.ceilingFor(0, true)),
                refuse("fullStroke", () -> new Chamber(0, 0, 0)));
    }

    private static Arguments refuse(String field, ThrowingCallable birth) {
        return Arguments.of(field, birth);
    }

    @ParameterizedTest
    @MethodSource("refused")
    void refuses(String field, ThrowingCallable birth) {
        assertThatIllegalArgumentException().isThrownBy(birth).withMessageStartingWith(field + " is ");
    }
}
