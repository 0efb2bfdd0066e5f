package org.brakewright.findings.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.mount.MountState.BoltState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.mount.BoltClass;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.Bolts;
import org.brakewright.model.resolved.ResolvedMount.Bracket;
import org.brakewright.model.resolved.ResolvedMount.Loads;

/** Whether the bolts of the mount hold, are of a grade that inspectors accept, and have thread enough. */
public final class MountBolts implements Rule {
    private static final Set<BoltClass> SOFT =
            Set.of(BoltClass.CLASS_4_6, BoltClass.CLASS_5_8, BoltClass.SAE_2, BoltClass.STAINLESS_70);

    private static final String EMERGENCY = "2,000 N of competition rules, 2,250 N of pedal-box checks, or your own";
    private static final String NO_SET = "the force asked for without lasting set; pedal-box checks use 1,250 N";
    private static final String GRADE = "an Australian inspection: ISO 8.8 or SAE grade 5";

    @Override
    public String key() {
        return "mount_bolts";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        MountState mount = facts.analysis().mount();
        if (mount == null || mount.bolts().isEmpty()) {
            return List.of();
        }
        ResolvedMount told = facts.build().mount().orElseThrow();
        return told.structure().brackets().stream()
                .filter(bracket -> bracket.bolts().isPresent())
                .map(bracket -> judged(bracket, mount.bolts(), told.loads()))
                .toList();
    }

    private Finding judged(Bracket bracket, List<BoltState> all, Loads loads) {
        List<BoltState> bolts = all.stream()
                .filter(bolt -> bolt.name().startsWith(bracket.name() + ", bolt "))
                .toList();
        BoltState weakest = least(bolts, Comparator.comparingDouble(BoltState::provedToN));
        BoltState sheet = least(bolts, Comparator.comparingDouble(BoltState::bearsToN));
        BoltState slips = least(bolts, Comparator.comparingDouble(BoltState::slipsAtN));
        Bolts kind = bracket.bolts().orElseThrow();
        if (weakest.provedToN() < loads.strength()) {
            return force(State.STOP, "", weakest, weakest.provedToN(), loads.strength());
        }
        if (sheet.bearsToN() < loads.strength()) {
            return force(State.STOP, "sheet", sheet, sheet.bearsToN(), loads.strength());
        }
        if (SOFT.contains(kind.grade())) {
            return about(State.CAUTION, "grade", weakest)
                    .against(Figure.force(loads.strength()), GRADE, Tag.VERIFIED)
                    .found(Figure.force(weakest.provedToN()))
                    .finding();
        }
        if (weakest.engagementM() < weakest.neededM()) {
            return about(State.CAUTION, "thread", weakest)
                    .found(Figure.length(weakest.engagementM()))
                    .against(Figure.length(weakest.neededM()), "ASME B1.1, shear areas of threads", Tag.FROM_MEMORY)
                    .finding();
        }
        if (slips.slipsAtN() < loads.stiffness()) {
            return force(State.CAUTION, "slips", slips, slips.slipsAtN(), loads.stiffness());
        }
        State known = weakest.prying() == null ? State.CANNOT_TELL : State.FINE;
        return force(known, "", weakest, weakest.provedToN(), loads.strength());
    }

    private Finding force(State state, String variant, BoltState bolt, double found, double asked) {
        return about(state, variant, bolt)
                .found(Figure.force(found))
                .against(Figure.force(asked), variant.equals("slips") ? NO_SET : EMERGENCY, Tag.SECONDARY)
                .finding();
    }

    private Judged about(State state, String variant, BoltState bolt) {
        String bolts = bolt.path().substring(0, bolt.path().lastIndexOf('.'));
        return Judged.as(state, this)
                .saying(variant)
                .about(bolt.name())
                .with("tension", Figure.force(bolt.tensionN()))
                .with("shear", Figure.force(bolt.shearN()))
                .inputs(bolts + ".grade", bolts + ".diameter", bolts + ".torque");
    }

    private static BoltState least(List<BoltState> bolts, Comparator<BoltState> by) {
        return bolts.stream().min(by).orElseThrow();
    }
}
