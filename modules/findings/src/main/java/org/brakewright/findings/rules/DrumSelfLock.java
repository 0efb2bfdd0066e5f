package org.brakewright.findings.rules;

import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.brake.DrumResult;
import org.brakewright.analysis.brake.ShoeResult;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** How far the lining friction is from that at which a drum pulls itself in and locks without a push. */
public final class DrumSelfLock implements Rule {
    /** Self-lock friction over lining friction; 0.45 over 0.35, the top over the middle of common linings, is 1.29. */
    private static final double MARGIN = 1.3;

    @Override
    public String key() {
        return "drum_self_lock";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        return facts.analysis().drums().stream().map(this::drum).toList();
    }

    private Finding drum(DrumResult drum) {
        ShoeResult shoes = drum.geometry();
        String path = path(drum);
        if (shoes == null) {
            return Judged.as(State.CANNOT_TELL, this)
                    .about(subject(drum))
                    .with("factor", Figure.ratio(drum.brakeFactor()))
                    .inputs(path + ".shoe_geometry", path + ".lining_friction", path + ".brake_factor")
                    .finding();
        }
        State state = state(shoes);
        boolean beyond = state == State.STOP && shoes.liningFriction() < shoes.selfLockFriction();
        return Judged.as(state, this)
                .about(subject(drum))
                .saying(beyond ? "beyond" : "")
                .found(Figure.ratio(shoes.liningFriction()))
                .against(
                        Figure.ratio(shoes.selfLockFriction()),
                        "friction at which these shoes lock by themselves",
                        Tag.DERIVED)
                .with("factor", Figure.ratio(drum.brakeFactor()))
                .with("margin", Figure.ratio(shoes.selfLockFriction() / shoes.liningFriction() - 1))
                .with("margin_asked", Figure.ratio(MARGIN - 1))
                .inputs(path + ".lining_friction", path + ".shoe_geometry")
                .finding();
    }

    private static State state(ShoeResult shoes) {
        if (shoes.beyondReckoning() || shoes.liningFriction() >= shoes.selfLockFriction()) {
            return State.STOP;
        }
        return shoes.selfLockFriction() < MARGIN * shoes.liningFriction() ? State.CAUTION : State.FINE;
    }

    static String subject(DrumResult drum) {
        return drum.where().name().toLowerCase(Locale.ROOT);
    }

    static String path(DrumResult drum) {
        return drum.where() == DrumResult.Where.PARKING ? "parking.acts_on" : subject(drum);
    }
}
