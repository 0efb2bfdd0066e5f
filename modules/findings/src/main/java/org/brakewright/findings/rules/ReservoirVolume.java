package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.reservoir.ReservoirDemand;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.intent.RuleSet;
import org.brakewright.quantity.Dimension;

/** Fluid that worn linings take from the reservoir, against what it holds. */
public final class ReservoirVolume implements Rule {
    private static final String WORN = "49 CFR 571.105 S5.4.2, new linings fully back to worn linings fully applied";
    private static final String WORN_135 = "FMVSS 135 S5.4.2, worded as in 571.105";
    private static final String STROKE = "FMVSS 135 S5.4.2, one full stroke where compartments share fluid";

    @Override
    public String key() {
        return "reservoir_volume";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        List<ReservoirDemand> circuits = facts.analysis().reservoirs();
        if (circuits.stream().allMatch(each -> each.usableM3() == null && each.wornM3() == null)) {
            return List.of(inputs(Judged.as(State.CANNOT_TELL, this)));
        }
        List<Finding> findings = new ArrayList<>();
        for (ReservoirDemand circuit : circuits) {
            findings.add(judge(facts, circuit));
        }
        return List.copyOf(findings);
    }

    private Finding judge(Facts facts, ReservoirDemand circuit) {
        Double usable = circuit.usableM3();
        Double worn = circuit.wornM3();
        if (usable == null || worn == null) {
            return unknown(circuit);
        }
        boolean fmvss = facts.answersTo(RuleSet.FMVSS_135);
        Tag tag = fmvss ? Tag.FROM_MEMORY : Tag.VERIFIED;
        if (usable < worn) {
            State state = fmvss ? State.STOP : State.CAUTION;
            return inputs(as(state, circuit).found(volume(usable)).against(volume(worn), fmvss ? WORN_135 : WORN, tag));
        }
        if (usable < circuit.strokeM3()) {
            return inputs(as(State.CAUTION, circuit)
                    .saying("stroke")
                    .found(volume(usable))
                    .against(volume(circuit.strokeM3()), STROKE, Tag.FROM_MEMORY));
        }
        return inputs(as(Standing.whenMet(tag), circuit)
                .saying(fmvss ? "remembered" : "")
                .found(volume(usable))
                .against(volume(worn), fmvss ? WORN_135 : WORN, tag));
    }

    private Finding unknown(ReservoirDemand circuit) {
        Double worn = circuit.wornM3();
        Judged judged = as(State.CANNOT_TELL, circuit);
        return inputs(
                worn == null ? judged.saying("wear") : judged.saying("volume").with("worn", volume(worn)));
    }

    private Judged as(State state, ReservoirDemand circuit) {
        return Judged.as(state, this).about(circuit.circuit().name().toLowerCase(Locale.ROOT));
    }

    private static Finding inputs(Judged judged) {
        return judged.inputs(
                        "lines.front.reservoir_volume",
                        "lines.rear.reservoir_volume",
                        "front.pad_wear",
                        "rear.pad_wear",
                        "rear.shoe_wear")
                .finding();
    }

    private static Figure volume(double cubicMetre) {
        return new Figure(cubicMetre, Dimension.VOLUME);
    }
}
