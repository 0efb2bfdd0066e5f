package org.brakewright.analysis.working;

import java.util.List;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.WrittenCar;

/** The steps of a car's workings, by key, law and symbol. */
record OpenedCar(Analysis analysis, List<Working> workings) {

    static OpenedCar of(WrittenCar car) {
        Analysis analysis = car.analysis();
        return new OpenedCar(analysis, Workings.of(car.resolved(), analysis));
    }

    List<Step> steps(String key) {
        return workings.stream()
                .filter(working -> working.key().equals(key))
                .findFirst()
                .orElseThrow()
                .steps();
    }

    Step step(String key, String law) {
        return steps(key).stream()
                .filter(step -> step.law().equals(law))
                .findFirst()
                .orElseThrow();
    }

    static double operand(Step step, String symbol) {
        return step.operands().stream()
                .filter(each -> each.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .value();
    }
}
