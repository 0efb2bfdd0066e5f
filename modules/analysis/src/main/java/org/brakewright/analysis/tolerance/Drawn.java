package org.brakewright.analysis.tolerance;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.brakewright.kernel.statistics.Band;
import org.brakewright.kernel.statistics.VarianceShare;

/** The usable cars of a run, ready to be asked. */
final class Drawn {
    private static final int LEAST_FOR_SHARES = 64;

    private final List<Input> inputs;
    private final double[][] probabilities;
    private final List<Sample> samples;
    private final int[] numbers;

    /**
     * Cars that were drawn.
     *
     * @param probabilities one array an input: where each car's value lies in its distribution
     * @param numbers number of each sample among all cars drawn
     */
    Drawn(List<Input> inputs, double[][] probabilities, List<Sample> samples, int[] numbers) {
        this.inputs = inputs;
        this.probabilities = probabilities;
        this.samples = samples;
        this.numbers = numbers;
    }

    List<Sample> samples() {
        return samples;
    }

    /** The spread of one measure, which is NaN for cars that do not have it. */
    Spread spread(Spread.Of of, ToDoubleFunction<Sample> measure) {
        double[] all = samples.stream().mapToDouble(measure).toArray();
        int[] having = IntStream.range(0, all.length)
                .filter(i -> !Double.isNaN(all[i]))
                .toArray();
        double[] values = Arrays.stream(having).mapToDouble(i -> all[i]).toArray();
        List<Owner> owners = values.length < LEAST_FOR_SHARES ? List.of() : owners(having, values);
        return new Spread(
                of.measure(),
                of.loadCase(),
                of.nominal(),
                values.length == 0 ? null : quantiles(Band.of(values)),
                all.length == 0 ? 0 : 1 - (double) values.length / all.length,
                of.limit(),
                of.limit() == null ? null : beyond(having, of.beyond()),
                owners,
                together(values, owners));
    }

    private List<Owner> owners(int[] having, double[] values) {
        double least = Math.max(Owner.LEAST, 3 * VarianceShare.noise(values.length));
        return IntStream.range(0, inputs.size())
                .mapToObj(i -> owner(inputs.get(i), probabilities[i], having, values))
                .filter(owner -> owner.share() >= least)
                .sorted((a, b) -> Double.compare(b.share(), a.share()))
                .limit(Owner.MOST)
                .toList();
    }

    private Owner owner(Input input, double[] probability, int[] having, double[] values) {
        double[] of =
                Arrays.stream(having).mapToDouble(i -> probability[numbers[i]]).toArray();
        return new Owner(input.path(), input.title(), VarianceShare.of(of, values));
    }

    private static double together(double[] values, List<Owner> owners) {
        boolean still = Arrays.stream(values).allMatch(value -> value == values[0]);
        double owned = owners.stream().mapToDouble(Owner::share).sum();
        return still || values.length < LEAST_FOR_SHARES ? 0 : Math.max(0, 1 - owned);
    }

    private double beyond(int[] having, Predicate<Sample> beyond) {
        long over = Arrays.stream(having).mapToObj(samples::get).filter(beyond).count();
        return having.length == 0 ? 0 : (double) over / having.length;
    }

    private static Spread.Quantiles quantiles(Band band) {
        return new Spread.Quantiles(band.p05(), band.p25(), band.p50(), band.p75(), band.p95());
    }
}
