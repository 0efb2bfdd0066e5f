package org.brakewright.kernel.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Row A2, FROM MEMORY, answers recomputed: T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 3, example problem 2.
 *
 * <p>Inches, pounds and psi throughout; the laws do not mind as long as units match.
 */
class ProportioningTableTest {
    /** 1e-6 relative: agreement wanted with an independent computation. */
    private static final double RECOMPUTED = 1e-4;

    private static final AxleLoads TRUCK = new AxleLoads(2210, 1864, 108.5, 20.25);
    private static final RollingWheel WHEEL = new RollingWheel(12.11);
    private static final double FRONT_GAIN = 20;
    private static final double REAR_GAIN = 14;
    private static final double KNEE = 290;
    private static final double SLOPE = 0.3;

    /** Applied pressure; rear pressure, front and rear force, deceleration, front and rear grip used, efficiency. */
    static double[][] table() {
        return new double[][] {
            {
                100,
                100,
                330.30553261767136,
                231.21387283236996,
                0.13782999642858157,
                0.14269292152857588,
                0.13143123807482154,
                0.965920348060009
            },
            {
                200,
                200,
                660.6110652353427,
                462.4277456647399,
                0.27565999285716314,
                0.2730249737484758,
                0.2795137696965892,
                0.9862125689063215
            },
            {
                300,
                293,
                990.9165978530141,
                677.456647398844,
                0.40951724232986203,
                0.39300590156315984,
                0.4363308192435708,
                0.9385475979895411
            },
            {
                400,
                323,
                1321.2221304706854,
                746.820809248555,
                0.5076197691996172,
                0.5089510072649092,
                0.5052816175438014,
                0.9973843492864941
            },
            {
                500,
                353,
                1651.5276630883568,
                816.1849710982659,
                0.6057222960693723,
                0.6184190822925856,
                0.5815618956423037,
                0.9794689611191426
            },
            {
                600,
                383,
                1981.8331957060282,
                885.5491329479769,
                0.7038248229391274,
                0.7219381177323875,
                0.6664059432656043,
                0.9749101836454431
            },
            {
                700,
                413,
                2312.1387283236995,
                954.9132947976879,
                0.8019273498088825,
                0.819980235453357,
                0.7613416726019279,
                0.9779837551395452
            }
        };
    }

    @ParameterizedTest
    @MethodSource("table")
    void reproducesTheWholeTable(double[] row) {
        double applied = row[0];
        double rearPressure = Math.min(applied, KNEE) + SLOPE * Math.max(0, applied - KNEE);
        double front = WHEEL.force(2 * FRONT_GAIN * applied);
        double rear = WHEEL.force(2 * REAR_GAIN * rearPressure);
        double decelerationG = (front + rear) / TRUCK.weight();
        double[] found = {
            applied,
            rearPressure,
            front,
            rear,
            decelerationG,
            Adhesion.front(front, TRUCK, decelerationG),
            Adhesion.rear(rear, TRUCK, decelerationG),
            Adhesion.efficiency(front, rear, TRUCK)
        };
        assertThat(found).hasSameSizeAs(row);
        for (int i = 0; i < row.length; i++) {
            assertThat(found[i]).as("column %d", i).isCloseTo(row[i], withinPercentage(RECOMPUTED));
        }
    }
}
