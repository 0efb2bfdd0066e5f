package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.brake.DrumResult;
import org.brakewright.analysis.brake.ShoeResult;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** How far a tenth more or less lining friction moves the force of a drum; silent without geometry and past self-lock. */
public final class DrumSensitivity implements Rule {
    private static final double MOST_CHANGE = 0.20;

    @Override
    public String key() {
        return "drum_sensitivity";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        List<Finding> findings = new ArrayList<>();
        for (DrumResult drum : facts.analysis().drums()) {
            ShoeResult shoes = drum.geometry();
            if (shoes != null && shoes.largestChange() < Double.POSITIVE_INFINITY) {
                findings.add(judge(drum, shoes));
            }
        }
        return List.copyOf(findings);
    }

    private Finding judge(DrumResult drum, ShoeResult shoes) {
        double change = shoes.largestChange();
        String path = DrumSelfLock.path(drum);
        return Judged.as(change > MOST_CHANGE ? State.CAUTION : State.FINE, this)
                .about(DrumSelfLock.subject(drum))
                .found(Figure.ratio(change))
                .against(Figure.ratio(MOST_CHANGE), "twice what a disc brake moves", Tag.ESTIMATE)
                .with("factor", Figure.ratio(drum.brakeFactor()))
                .with("friction", Figure.ratio(shoes.liningFriction()))
                .inputs(path + ".lining_friction", path + ".shoe_geometry")
                .finding();
    }
}
