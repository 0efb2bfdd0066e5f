package org.brakewright.app.words;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.findings.State;
import org.brakewright.findings.cure.Change;
import org.brakewright.findings.cure.Change.Kind;
import org.brakewright.findings.cure.Cure;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.QuantityWriter;
import org.brakewright.quantity.Unit;

/** Cures in words, and as text to write into the build file. */
public final class CureWords {
    private static final Catalogue WORDS = Catalogue.of("findings.properties");
    private static final String FROM_CURE = " (computed)";

    private final Show show;
    private final FindingWords findings;

    /** Cures in a system of units. */
    public CureWords(Show show) {
        this.show = show;
        this.findings = new FindingWords(show);
    }

    /** What to do, and what the car is like after it: effort, travel and balance in the same sentence. */
    public String sentence(Cure cure) {
        String after = cure.change().kind().ofClutch() ? "cure.clutch_after" : "cure.after";
        String sentence = what(cure.change()) + WORDS.fill(after, name -> after(cure.after(), name));
        List<String> remarks = new ArrayList<>(List.of(sentence));
        if (!cure.worse().isEmpty()) {
            remarks.add(WORDS.fill("cure.costs", name -> worse(cure)));
        }
        if (cure.becomes() == State.CAUTION) {
            remarks.add(WORDS.get("cure.partly"));
        }
        return String.join(" ", remarks);
    }

    private String worse(Cure cure) {
        return cure.worse().stream()
                .map(finding -> findings.title(finding) + " gets worse ("
                        + FindingWords.word(finding.state()).toLowerCase(Locale.ROOT) + ")")
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /** The change as texts of the build file, by key path. */
    public Map<String, String> edits(Change change) {
        Map<String, String> edits = new TreeMap<>();
        change.values().forEach((path, si) -> edits.put(path, written(path, si)));
        return edits;
    }

    private String what(Change change) {
        return WORDS.fill("cure." + key(change), name -> value(change, name));
    }

    private static String key(Change change) {
        String kind = change.kind().name().toLowerCase(Locale.ROOT);
        if (change.kind() == Kind.TURN_BAR) {
            return kind + (change.amount() > 0 ? ".plus" : ".minus");
        }
        return kind;
    }

    private String value(Change change, String name) {
        return switch (name) {
            case "amount" -> turns(Math.abs(change.amount()));
            case "bore" -> show.bore(change.values().values().iterator().next());
            case "ratio" -> show.number(change.values().values().iterator().next());
            case "stop" -> show.value(change.amount(), Dimension.LENGTH);
            case "knee" -> show.value(knee(change), Dimension.PRESSURE);
            default -> throw new IllegalArgumentException("a cure has no " + name);
        };
    }

    private static double knee(Change change) {
        return change.values().entrySet().stream()
                .filter(entry -> entry.getKey().endsWith(".knee"))
                .findFirst()
                .orElseThrow()
                .getValue();
    }

    private String turns(double turns) {
        return show.number(turns) + (turns == 1 ? " turn" : " turns");
    }

    private String after(Headline headline, String name) {
        return switch (name) {
            case "effort" ->
                headline.effortN() == null ? "beyond any push" : show.value(headline.effortN(), Dimension.FORCE);
            case "travel" -> headline.travelM() == null ? "unknown" : show.value(headline.travelM(), Dimension.LENGTH);
            case "critical" ->
                headline.criticalDecelerationG() == null
                        ? "never"
                        : headline.criticalDecelerationG() <= 0
                                ? "always"
                                : "above "
                                        + show.value(
                                                headline.criticalDecelerationG() * Gravity.STANDARD,
                                                Dimension.ACCELERATION);
            case "clutch_effort" -> show.value(requireNonNull(headline.clutch()).effortN(), Dimension.FORCE);
            case "clutch_spare" -> show.value(requireNonNull(headline.clutch()).spareM(), Dimension.LENGTH);
            default -> throw new IllegalArgumentException("a headline has no " + name);
        };
    }

    private static String written(String path, double si) {
        Dimension dimension = FieldCatalogue.at(path).dimension();
        if (path.endsWith("bore") || path.endsWith("wheel_cylinder")) {
            return QuantityWriter.fraction(si).orElse(QuantityWriter.write(si, Unit.INCH));
        }
        if (dimension == Dimension.RATIO) {
            return QuantityWriter.write(si) + FROM_CURE;
        }
        return QuantityWriter.write(si, UnitSystem.METRIC.unit(dimension)) + FROM_CURE;
    }
}
