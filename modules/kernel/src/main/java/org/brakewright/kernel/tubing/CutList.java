package org.brakewright.kernel.tubing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Pieces to be cut from lengths of stock with the least bought. Up to {@value #EXACT} pieces every way is weighed; beyond
 * that the longest pieces are placed first, and the plan says what no plan can beat.
 *
 * @param pieces m
 * @param stocks lengths sold, m, any number of each
 * @param kerf that each cut loses, m
 */
public record CutList(List<Double> pieces, List<Double> stocks, double kerf) {
    static final int EXACT = 12;

    /** Rounding that is not a lack of tube, m. */
    private static final double SLIP = 1e-9;

    public CutList {
        pieces = List.copyOf(pieces);
        stocks = stocks.stream().sorted().toList();
        Demand.holds(!stocks.isEmpty(), "stocks must name a length");
        Demand.notNegative("kerf", kerf);
        stocks.forEach(stock -> Demand.positive("stock", stock));
        double longest = stocks.getLast();
        pieces.forEach(piece -> Demand.holds(
                piece > 0 && piece <= longest + SLIP, "piece must be above 0, up to " + longest + ", is " + piece));
    }

    /** The plan. */
    public CutPlan plan() {
        return pieces.size() <= EXACT ? best() : longestFirst();
    }

    private CutPlan best() {
        int all = 1 << pieces.size();
        double[] single = IntStream.range(0, all)
                .mapToDouble(set -> stockFor(places(set)))
                .toArray();
        double[] least = new double[all];
        int[] bar = new int[all];
        for (int left = 1; left < all; left++) {
            weigh(left, single, least, bar);
        }
        List<CutPlan.Bar> bars = new ArrayList<>();
        for (int left = all - 1; left > 0; left ^= bar[left]) {
            bars.add(bar(places(bar[left])));
        }
        return new CutPlan(bars, least[all - 1]);
    }

    /** Least stock for a set of pieces: the bar of its first piece, every way, and the least for the rest. */
    private static void weigh(int left, double[] single, double[] least, int[] bar) {
        int first = Integer.lowestOneBit(left);
        int others = left ^ first;
        least[left] = Double.POSITIVE_INFINITY;
        for (int with = others; with >= 0; with = with == 0 ? -1 : (with - 1) & others) {
            double bought = single[with | first] + least[others ^ with];
            if (bought < least[left]) {
                least[left] = bought;
                bar[left] = with | first;
            }
        }
    }

    private CutPlan longestFirst() {
        List<List<Integer>> bars = new ArrayList<>();
        IntStream.range(0, pieces.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(pieces::get).reversed())
                .forEach(piece -> place(piece, bars));
        return new CutPlan(
                bars.stream()
                        .map(places -> bar(places.stream().sorted().toList()))
                        .toList(),
                fluid());
    }

    private void place(int piece, List<List<Integer>> bars) {
        for (List<Integer> bar : bars) {
            bar.add(piece);
            if (Double.isFinite(stockFor(bar))) {
                return;
            }
            bar.removeLast();
        }
        bars.add(new ArrayList<>(List.of(piece)));
    }

    /** Less cannot be bought than all pieces are long (m). */
    private double fluid() {
        return pieces.stream().mapToDouble(Double::doubleValue).sum();
    }

    private CutPlan.Bar bar(List<Integer> places) {
        double stock = stockFor(places);
        double cuts = kerf * places.size();
        return new CutPlan.Bar(stock, places, Math.max(0, stock - length(places) - cuts));
    }

    /** Shortest stock (m) that holds pieces with a cut between them; without end where none does. */
    private double stockFor(List<Integer> places) {
        double needed = length(places) + kerf * (places.size() - 1) - SLIP;
        return stocks.stream().filter(stock -> stock >= needed).findFirst().orElse(Double.POSITIVE_INFINITY);
    }

    private double length(List<Integer> places) {
        return places.stream().mapToDouble(pieces::get).sum();
    }

    private List<Integer> places(int set) {
        return IntStream.range(0, pieces.size())
                .filter(i -> (set >> i & 1) == 1)
                .boxed()
                .toList();
    }
}
