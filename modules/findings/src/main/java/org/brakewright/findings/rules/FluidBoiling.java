package org.brakewright.findings.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.heat.AxleHeat;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.hydraulics.FluidGrade;
import org.brakewright.model.resolved.ResolvedHeat.Boiling;
import org.brakewright.quantity.Dimension;

/** The hottest fluid behind any piston, heat that soaks in afterwards included, against its boiling points wet and dry. */
public final class FluidBoiling implements Rule {
    /** Fluid that comes this near leaves nothing for a hotter day or an older bottle, K: an estimate. */
    private static final double NEAR = 20;

    private static final double ZERO = 273.15;

    @Override
    public String key() {
        return "fluid_boiling";
    }

    /** Boiling points and whose they are. */
    private record Points(double dry, double wet, String whose, Tag tag) {}

    @Override
    public List<Finding> judge(Facts facts) {
        return HotAxle.worst(facts, AxleHeat::fluidPeakK).stream()
                .max(Comparator.comparingDouble(axle -> axle.heat().fluidPeakK()))
                .map(axle -> judge(facts.build().heat().orElseThrow().fluid(), axle))
                .stream()
                .toList();
    }

    private Finding judge(Boiling fluid, HotAxle axle) {
        Optional<Points> known = points(fluid);
        double found = axle.heat().fluidPeakK();
        Points points = known.orElse(grade(FluidGrade.DOT_3));
        State state = known.map(each -> state(found, each)).orElse(State.CANNOT_TELL);
        boolean near = state == State.CAUTION && found < points.wet();
        boolean remembered = known.isPresent() && state == State.CANNOT_TELL;
        return Judged.as(state, this)
                .saying(near ? "near" : remembered ? "remembered" : "")
                .found(Figure.temperature(found))
                .against(
                        Figure.temperature(state == State.STOP ? points.dry() : points.wet()),
                        points.whose(),
                        points.tag())
                .with("dry", Figure.temperature(points.dry()))
                .with("wet", Figure.temperature(points.wet()))
                .with("time", new Figure(axle.heat().fluidPeakS(), Dimension.TIME))
                .inputs("fluid.grade", axle.path("piston_heat_transfer"), axle.path("rotor_mass"))
                .finding();
    }

    private static State state(double found, Points points) {
        if (found >= points.dry()) {
            return State.STOP;
        }
        return found >= points.wet() - NEAR ? State.CAUTION : Standing.whenMet(points.tag());
    }

    private static Optional<Points> points(Boiling fluid) {
        Optional<Points> grade = fluid.grade().map(FluidBoiling::grade);
        if (fluid.wet().isPresent() && (fluid.dry().isPresent() || grade.isPresent())) {
            double wet = fluid.wet().getAsDouble();
            double dry = Math.max(wet, fluid.dry().orElse(grade.map(Points::dry).orElse(wet)));
            return Optional.of(new Points(dry, wet, "boiling point of this fluid", Tag.PART_SHEET));
        }
        return grade;
    }

    private static Points grade(FluidGrade grade) {
        return switch (grade) {
            case DOT_3 -> points("DOT 3", 205, 140, Tag.SECONDARY);
            case DOT_4 -> points("DOT 4", 230, 155, Tag.SECONDARY);
            case DOT_5 -> points("DOT 5", 260, 180, Tag.FROM_MEMORY);
            case DOT_5_1 -> points("DOT 5.1", 260, 180, Tag.FROM_MEMORY);
        };
    }

    private static Points points(String name, double dry, double wet, Tag tag) {
        return new Points(dry + ZERO, wet + ZERO, "49 CFR 571.116 S5.1.1 and S5.1.2, " + name, tag);
    }
}
