package org.brakewright.app.page;

import java.util.List;
import java.util.stream.Collectors;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.working.Step;
import org.brakewright.analysis.working.Working;
import org.brakewright.analysis.working.Workings;
import org.brakewright.app.words.LawWords;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** Workings as the page shows them. */
final class WorkingViews {
    private final Show show;

    WorkingViews(Show show) {
        this.show = show;
    }

    List<PageView.Working> of(Assessment assessment) {
        return Workings.of(assessment.resolved(), assessment.analysis()).stream()
                .map(working -> view(working, assessment.analysis().hardStop()))
                .toList();
    }

    private PageView.Working view(Working working, @Nullable HardStop stop) {
        String title = switch (working.key()) {
            case "effort" -> "Pedal effort";
            case "travel" -> "Pedal travel";
            case "balance" -> "Front share";
            case "drum_factor" -> "Brake factor of the drums";
            case "parking_hold" -> "Grade held by the parking brake";
            case "rotor_temperature" -> "Hottest face of disc or drum";
            case "fluid_boiling" -> "Hottest fluid";
            case "cooling_time" -> "Time to cool";
            case "clutch_effort" -> "Clutch pedal effort";
            case "clutch_release" -> "Bearing travel on the fingers";
            case "clutch_slave_stroke" -> "Stroke that the slave has left";
            case "clutch_slip" -> "Torque that the clutch carries";
            default -> "Rear locks first";
        };
        return new PageView.Working(
                working.key(),
                title,
                result(working, stop),
                working.steps().stream().map(this::step).toList());
    }

    /** The number that the working opens, as its headline card shows it: not every working ends with it. */
    private String result(Working working, @Nullable HardStop stop) {
        if (stop != null && working.key().equals("effort")) {
            return show.value(stop.point().pedalForceN(), Dimension.FORCE);
        }
        if (stop != null && working.key().equals("balance")) {
            return show.percent(stop.frontShare());
        }
        Step last = working.steps().getLast();
        return show.value(last.result(), last.dimension());
    }

    private PageView.WorkingStep step(Step step) {
        String place = step.place().isEmpty() ? "" : ", " + step.place();
        return new PageView.WorkingStep(
                LawWords.name(step.law()) + place,
                LawWords.formula(step.law()),
                step.operands().stream()
                        .map(operand -> operand.symbol() + " = " + show.value(operand.value(), operand.dimension()))
                        .collect(Collectors.joining(", ")),
                show.value(step.result(), step.dimension()),
                LawWords.source(step.law()));
    }
}
