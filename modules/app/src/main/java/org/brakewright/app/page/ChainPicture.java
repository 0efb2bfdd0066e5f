package org.brakewright.app.page;

import java.util.LinkedHashMap;
import java.util.Map;
import org.brakewright.findings.Assessment;
import org.brakewright.model.pedal.Pedal;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBrake;
import org.jspecify.annotations.Nullable;

/** How the picture of the chain is laid out for a car. */
final class ChainPicture {
    private ChainPicture() {}

    static PageView.Chain of(Assessment assessment) {
        ResolvedApply apply = assessment.resolved().apply();
        return new PageView.Chain(
                apply instanceof ResolvedApply.Twin ? "twin_masters" : "tandem_master",
                apply instanceof ResolvedApply.Tandem tandem && tandem.booster().isPresent(),
                apply.valve().isPresent(),
                kind(assessment.resolved().front()),
                kind(assessment.resolved().rear()),
                apply instanceof ResolvedApply.Twin twin
                        ? twin.bar().offset() / (twin.bar().clevisSpacing() / 2)
                        : null,
                inputs(assessment));
    }

    private static String kind(ResolvedBrake brake) {
        return switch (brake) {
            case ResolvedBrake.Disc disc -> "disc";
            case ResolvedBrake.Drum drum -> "drum";
        };
    }

    private static Map<String, @Nullable String> inputs(Assessment assessment) {
        boolean twin = assessment.resolved().apply() instanceof ResolvedApply.Twin;
        Map<String, @Nullable String> inputs = new LinkedHashMap<>();
        inputs.put("foot", "intent.most_effort");
        inputs.put("pedal", pedalInput(assessment.build().pedal()));
        inputs.put("bar", twin ? "apply.balance_bar.offset" : null);
        inputs.put("booster", twin ? null : "apply.booster.ratio");
        inputs.put("front_master", twin ? "apply.front_master.bore" : "apply.bore");
        inputs.put("rear_master", twin ? "apply.rear_master.bore" : "apply.bore");
        inputs.put("valve", "apply.proportioning_valve.knee");
        inputs.put("front_line", "lines.front.hose_length");
        inputs.put("rear_line", "lines.rear.hose_length");
        inputs.put("front_brake", brakeInput("front", assessment.resolved().front()));
        inputs.put("rear_brake", brakeInput("rear", assessment.resolved().rear()));
        inputs.put("front_tyre", "car.front_tyre_radius");
        inputs.put("rear_tyre", "car.rear_tyre_radius");
        return inputs;
    }

    private static String pedalInput(Pedal pedal) {
        if (pedal.mechanism() != null) {
            return "pedal.mechanism.pin_up";
        }
        return pedal.linkage() == null ? "pedal.ratio" : "pedal.linkage.pad_arm";
    }

    private static String brakeInput(String end, ResolvedBrake brake) {
        return switch (brake) {
            case ResolvedBrake.Disc disc -> end + ".pistons[0]";
            case ResolvedBrake.Drum drum -> end + ".wheel_cylinder";
        };
    }
}
