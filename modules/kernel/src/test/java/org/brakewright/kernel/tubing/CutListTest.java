package org.brakewright.kernel.tubing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Pieces out of stock. */
class CutListTest {
    /** By hand: 6, 5, 4, 3 and 2 out of 10: longest first fills 6 + 4 and 5 + 3 + 2, two bars without waste. */
    @Test
    void fillsBarsWhole() {
        CutPlan plan = new CutList(List.of(2.0, 3.0, 4.0, 5.0, 6.0), List.of(10.0), 0).plan();
        assertThat(plan.stock()).isEqualTo(20);
        assertThat(plan.bars()).allSatisfy(bar -> assertThat(bar.left()).isCloseTo(0, within(1e-9)));
    }

    /** By hand: 4 three times and 6 twice out of 12 fill two bars whole. */
    @Test
    void likeWithLike() {
        CutPlan plan = new CutList(List.of(4.0, 4.0, 4.0, 6.0, 6.0), List.of(12.0), 0).plan();
        assertThat(plan.stock()).isEqualTo(24);
    }

    /** By hand: 5 and 5 fit 10 without a cut's loss, not with one; then 5.5 is bought twice. */
    @Test
    void countsTheSaw() {
        assertThat(new CutList(List.of(5.0, 5.0), List.of(10.0, 5.5), 0).plan().stock())
                .isEqualTo(10);
        assertThat(new CutList(List.of(5.0, 5.0), List.of(10.0, 5.5), 0.001)
                        .plan()
                        .stock())
                .isEqualTo(11);
    }

    /** Second method: every order of six pieces filled bar by bar, best kept; 40 seeded lists. */
    @Test
    void noOrderOfCuttingIsBetter() {
        Random random = new Random(5);
        for (int run = 0; run < 40; run++) {
            List<Double> pieces = pieces(random, 6);
            CutPlan plan = new CutList(pieces, List.of(3.0), 0.002).plan();
            assertThat(plan.stock()).isCloseTo(bestOrder(pieces, new ArrayList<>(), 3, 0.002), within(1e-9));
            assertThat(plan.leastStock()).isCloseTo(plan.stock(), within(1e-9));
        }
    }

    /** Every piece is cut once, and fits; many pieces never buy less than they are long, nor twice that. */
    @Test
    void everyPieceOnce() {
        Random random = new Random(6);
        for (int count : new int[] {0, 1, 12, 13, 40}) {
            List<Double> pieces = pieces(random, count);
            CutPlan plan = new CutList(pieces, List.of(3.0, 7.5), 0.002).plan();
            assertThat(plan.bars().stream()
                            .flatMap(bar -> bar.pieces().stream())
                            .sorted())
                    .containsExactlyElementsOf(IntStream.range(0, count).boxed().toList());
            assertThat(plan.bars()).allSatisfy(bar -> {
                double cut = bar.pieces().stream().mapToDouble(pieces::get).sum()
                        + 0.002 * (bar.pieces().size() - 1);
                assertThat(cut).isLessThanOrEqualTo(bar.stock() + 1e-9);
            });
            assertThat(plan.leastStock()).isLessThanOrEqualTo(plan.stock() + 1e-9);
        }
    }

    @Test
    void refusesAPieceLongerThanTheStock() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CutList(List.of(4.0), List.of(3.0), 0))
                .withMessageContaining("piece");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CutList(List.of(), List.of(), 0))
                .withMessageContaining("stocks");
    }

    private static List<Double> pieces(Random random, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> 0.2 + 2.5 * random.nextDouble())
                .toList();
    }

    private static double bestOrder(List<Double> left, List<Double> order, double stock, double kerf) {
        if (left.isEmpty()) {
            return filled(order, stock, kerf);
        }
        double best = Double.POSITIVE_INFINITY;
        for (double piece : left) {
            List<Double> rest = new ArrayList<>(left);
            rest.remove(Double.valueOf(piece));
            List<Double> next = new ArrayList<>(order);
            next.add(piece);
            best = Math.min(best, bestOrder(rest, next, stock, kerf));
        }
        return best;
    }

    private static double filled(List<Double> order, double stock, double kerf) {
        double bought = 0;
        double room = -1;
        for (double piece : order) {
            if (room < piece) {
                bought += stock;
                room = stock;
            }
            room -= piece + kerf;
        }
        return bought;
    }
}
