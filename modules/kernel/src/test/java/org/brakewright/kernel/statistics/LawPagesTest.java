package org.brakewright.kernel.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.brakewright.kernel.WorkedExample;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/laws, invented numbers; results printed there were worked out by hand from the closed forms. */
class LawPagesTest {
    @Test
    void evenPoints() {
        WorkedExample page = WorkedExample.of("even-points");
        int squares = (int) page.si("squares along an axis");
        double[][] points = EvenPoints.of((int) page.si("points"), 2, 1);
        int[] held = new int[squares * squares];
        for (int i = 0; i < points[0].length; i++) {
            double row = Math.floor(points[0][i] * squares);
            double column = Math.floor(points[1][i] * squares);
            held[(int) (row * squares + column)]++;
        }
        for (int each : held) {
            page.holds("points in each square", each);
        }
    }

    @Test
    void inputDistributions() {
        WorkedExample page = WorkedExample.of("input-distributions");
        Rectangular rectangle = new Rectangular(page.si("low"), page.si("high"));
        Triangular triangle = new Triangular(page.si("low"), page.si("peak"), page.si("high"));
        page.holds("standard uncertainty of the rectangle", rectangle.standardUncertainty());
        page.holds("5 % quantile of the rectangle", rectangle.quantile(0.05));
        page.holds("mean of the triangle", triangle.mean());
        page.holds("standard uncertainty of the triangle", triangle.standardUncertainty());
        page.holds("5 % quantile of the triangle", triangle.quantile(0.05));
        page.holds("95 % quantile of the triangle", triangle.quantile(0.95));
    }

    @Test
    void band() {
        WorkedExample page = WorkedExample.of("band");
        double[] efforts = IntStream.of(10, 3, 0, 7, 1, 9, 4, 2, 8, 6, 5)
                .mapToDouble(step -> page.si("least effort") + step * page.si("step"))
                .toArray();
        Band band = Band.of(efforts);
        page.holds("5 % quantile", band.p05());
        page.holds("25 % quantile", band.p25());
        page.holds("median", band.p50());
        page.holds("75 % quantile", band.p75());
        page.holds("95 % quantile", band.p95());
        Odds odds = new Odds((int) page.si("happened"), (int) page.si("trials"));
        page.holds("frequency", odds.probability());
        page.holds("standard error", odds.standardError());
        assertThat(efforts).startsWith(page.si("least effort") + 10 * page.si("step"));
    }

    @Test
    void varianceShare() {
        WorkedExample page = WorkedExample.of("variance-share");
        double[][] points = EvenPoints.of(4096, 2, 1);
        double[] results = IntStream.range(0, 4096)
                .mapToDouble(i -> page.si("factor of a") * points[0][i] + page.si("factor of b") * points[1][i])
                .toArray();
        page.holds("share of a", VarianceShare.of(points[0], results));
        page.holds("share of b", VarianceShare.of(points[1], results));
    }

    @Test
    void bends() {
        WorkedExample page = WorkedExample.of("bends");
        String[] points = {"first", "second", "third", "fourth", "fifth"};
        double[] times = Arrays.stream(points)
                .mapToDouble(point -> page.si(point + " time"))
                .toArray();
        double[] speeds = Arrays.stream(points)
                .mapToDouble(point -> page.si(point + " speed"))
                .toArray();
        page.holds("points kept", Bends.of(times, speeds, page.si("noise")).length);
        page.holds("points kept without noise", Bends.of(times, speeds, 0).length);
    }
}
