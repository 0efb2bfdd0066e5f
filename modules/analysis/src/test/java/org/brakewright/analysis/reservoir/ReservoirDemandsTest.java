package org.brakewright.analysis.reservoir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.reservoir.ReservoirDemand.Circuit;
import org.junit.jupiter.api.Test;

/** By hand on the plain cars: four pistons of 50 mm a pair of wheels, one on each side of each disc, masters of 20 mm. */
class ReservoirDemandsTest {
    private static final double PISTON = Math.PI / 4 * 0.05 * 0.05;
    private static final double MASTER = Math.PI / 4 * 0.02 * 0.02;
    private static final String WEAR = """
            front.pad_wear: 8 mm
            front.running_clearance: 0.5 mm
            rear.pad_wear: 6 mm
            lines.front.reservoir_volume: 120 cc
            lines.rear.reservoir_volume: 90 cc
            """;

    private static ReservoirDemand first(WrittenCar car) {
        return car.analysis().reservoirs().getFirst();
    }

    private static ReservoirDemand last(WrittenCar car) {
        return car.analysis().reservoirs().getLast();
    }

    /** 4 x A x (8 + 0.5) mm is 66.8 cc. */
    @Test
    void pistonsMoveByWearAndClearance() {
        ReservoirDemand front = first(Cars.TWIN.with(WEAR));
        assertThat(front.circuit()).isEqualTo(Circuit.FRONT_CIRCUIT);
        assertThat(front.wornM3()).isCloseTo(4 * PISTON * 8.5e-3, withinPercentage(1e-9));
        assertThat(front.usableM3()).isCloseTo(120e-6, withinPercentage(1e-9));
        assertThat(last(Cars.TWIN.with(WEAR)).wornM3()).isCloseTo(4 * PISTON * 6e-3, withinPercentage(1e-9));
    }

    @Test
    void mastersDisplaceAreaTimesStroke() {
        assertThat(first(Cars.TWIN).strokeM3()).isCloseTo(MASTER * 28e-3, withinPercentage(1e-9));
        assertThat(first(Cars.TANDEM).strokeM3()).isCloseTo(MASTER * 18e-3, withinPercentage(1e-9));
        assertThat(last(Cars.TANDEM).strokeM3()).isCloseTo(MASTER * 14e-3, withinPercentage(1e-9));
    }

    /** One wheel of each axle: half of both, and each circuit its own fluid. */
    @Test
    void aDiagonalHoldsHalfOfEachAxle() {
        WrittenCar car = Cars.TANDEM.with("apply.split: diagonal").with(WEAR);
        assertThat(first(car).circuit()).isEqualTo(Circuit.FIRST_DIAGONAL);
        assertThat(first(car).wornM3()).isCloseTo(2 * PISTON * 14.5e-3, withinPercentage(1e-9));
        assertThat(last(car).wornM3()).isEqualTo(first(car).wornM3());
        assertThat(last(car).usableM3()).isCloseTo(90e-6, withinPercentage(1e-9));
    }

    @Test
    void aDiagonalNeedsTheWearOfBothAxles() {
        WrittenCar car = Cars.TANDEM.with("apply.split: diagonal").with("front.pad_wear: 8 mm");
        assertThat(first(car).wornM3()).isNull();
    }

    /** Two pistons of 20 mm a wheel cylinder: 4 x A x (4 + 0.8) mm. */
    @Test
    void drumsHaveTwoPistonsAWheel() {
        WrittenCar car = Cars.TWIN.without("rear").with("""
                rear.kind: drum
                rear.shoes: leading_trailing
                rear.brake_factor: 2.3
                rear.drum_radius: 115 mm
                rear.wheel_cylinder: 20 mm
                rear.threshold_pressure: 0 bar
                rear.shoe_movement: 0.8 mm
                rear.shoe_wear: 4 mm
                """);
        assertThat(last(car).wornM3()).isCloseTo(4 * MASTER * 4.8e-3, withinPercentage(1e-9));
    }

    @Test
    void whatNobodyMeasuredIsNotKnown() {
        assertThat(first(Cars.TWIN).wornM3()).isNull();
        assertThat(first(Cars.TWIN).usableM3()).isNull();
    }
}
