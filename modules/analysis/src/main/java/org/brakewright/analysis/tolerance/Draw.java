package org.brakewright.analysis.tolerance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.BooleanSupplier;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.kernel.statistics.Distribution;
import org.brakewright.kernel.statistics.EvenPoints;
import org.brakewright.model.Build;

/**
 * Draws cars and computes each. Every car is a function of its number alone and is put at its own place, so the threads
 * cannot change the answer.
 */
final class Draw {
    private static final int CARS_A_TASK = 64;

    private final Build build;
    private final List<Input> inputs;
    private final List<Distribution> distributions;
    private final double[][] probabilities;
    private final AtomicReferenceArray<Sample> samples;

    Draw(Build build, List<Input> inputs, Plan plan) {
        this.build = build.brakesOnly();
        this.inputs = inputs;
        this.distributions = inputs.stream().map(Input::distribution).toList();
        this.probabilities =
                inputs.isEmpty() ? new double[0][] : EvenPoints.of(plan.samples(), inputs.size(), plan.seed());
        this.samples = new AtomicReferenceArray<>(plan.samples());
    }

    /** Computes all cars; false when it was cancelled before. */
    boolean all(int threads, BooleanSupplier cancelled) {
        try (ExecutorService workers = Executors.newFixedThreadPool(threads)) {
            List<CompletableFuture<Boolean>> tasks = new ArrayList<>();
            for (int from = 0; from < samples.length(); from += CARS_A_TASK) {
                int first = from;
                tasks.add(CompletableFuture.supplyAsync(() -> range(first, cancelled), workers));
            }
            return tasks.stream().map(CompletableFuture::join).reduce(true, Boolean::logicalAnd);
        }
    }

    private boolean range(int from, BooleanSupplier cancelled) {
        if (cancelled.getAsBoolean()) {
            return false;
        }
        for (int number = from; number < Math.min(from + CARS_A_TASK, samples.length()); number++) {
            car(number);
        }
        return true;
    }

    private void car(int number) {
        Map<String, Double> values = HashMap.newHashMap(inputs.size());
        for (int i = 0; i < inputs.size(); i++) {
            values.put(inputs.get(i).path(), distributions.get(i).quantile(probabilities[i][number]));
        }
        if (Resolve.resolve(build, values) instanceof Resolution.Resolved resolved) {
            samples.set(number, Sample.of(resolved.build(), RearFirstOdds.GRIPS));
        }
    }

    /** The cars whose values do not contradict each other, with the numbers that they were drawn by. */
    Drawn drawn() {
        List<Sample> usable = new ArrayList<>();
        int[] numbers = new int[samples.length()];
        for (int number = 0; number < samples.length(); number++) {
            Sample sample = samples.get(number);
            if (sample != null) {
                numbers[usable.size()] = number;
                usable.add(sample);
            }
        }
        return new Drawn(inputs, probabilities, usable, numbers);
    }
}
