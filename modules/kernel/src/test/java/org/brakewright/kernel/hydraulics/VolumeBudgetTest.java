package org.brakewright.kernel.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.brakewright.kernel.Printed.assertPrinted;

import org.junit.jupiter.api.Test;

/**
 * Fluid displacement of one circuit at 7 MPa, put together from the laws. Row B14 of the check values: method of
 * R. Limpert, ch. 5, and F. Puhn, Brake Handbook (from memory), our numbers, recomputed.
 */
class VolumeBudgetTest {
    private static final double PRESSURE = 7e6;
    private static final double PISTON = Bore.area(0.0381);

    private static double clearance() {
        return 8 * PISTON * 0.10e-3;
    }

    private static double caliperSpread() {
        return 4 * PISTON * 0.04e-9 * PRESSURE;
    }

    private static double pads() {
        return 8 * PISTON * 0.006e-9 * PRESSURE;
    }

    private static double hoses() {
        return HoseExpansion.proportional(1e6, 0.314e-6).volume(2 * 0.35, PRESSURE);
    }

    private static double tube() {
        return new Tube(4.75e-3, 0.71e-3).swell(3, PRESSURE, 205e9, 0.29);
    }

    private static double liquid() {
        return Liquid.compression(45e-6, PRESSURE, 1.7e9);
    }

    private static double air() {
        return EntrainedAir.takenUp(0.05e-6, PRESSURE, EntrainedAir.ISOTHERMAL);
    }

    private static double total() {
        return clearance() + caliperSpread() + pads() + hoses() + tube() + liquid() + air();
    }

    @Test
    void eachCause() {
        assertPrinted(clearance() * 1e6, "0.912073");
        assertPrinted(caliperSpread() * 1e6, "1.2769");
        assertPrinted(pads() * 1e6, "0.383071");
        assertPrinted(hoses() * 1e6, "1.5386");
        assertPrinted(tube() * 1e6, "0.00561281");
        assertPrinted(liquid() * 1e6, "0.185294");
        // the row rounds the atmosphere to 0.1013 MPa, which is worth 4e-6 of the air
        assertThat(air() * 1e6).isCloseTo(0.0492868, withinPercentage(5e-4));
    }

    @Test
    void strokeAndPedal() {
        assertPrinted(total() * 1e6, "4.35084");
        double stroke = new MasterStroke(Bore.area(0.01905), 0.001, 0.036).stroke(total());
        assertPrinted(stroke * 1e3, "16.2649");
        assertPrinted(stroke * 5.0 * 1e3, "81.3244");
    }
}
