package org.brakewright.analysis.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakewright.analysis.resolve.Assumption;
import org.brakewright.model.Build;
import org.brakewright.model.Field;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.model.Given;
import org.brakewright.model.Givens;
import org.brakewright.model.Origin;

/**
 * What is uncertain about a car: every value with a ±, and everything in the ledger. Aims are wishes and checks are
 * readings of another day; neither makes the car another one, and the clutch moves none of the measures. A range never
 * leaves what the build file allows.
 */
public final class Inputs {
    private static final Pattern LOAD_CASE = Pattern.compile("car\\.load_cases\\[(\\d+)].*");
    private static final Pattern ITEM = Pattern.compile(".*\\[(\\d+)]");

    private Inputs() {}

    /** The uncertain inputs, those with a ± first. */
    public static List<Input> of(Build build, List<Assumption> ledger) {
        List<Input> inputs = new ArrayList<>();
        givens(build)
                .filter(given -> given.quantity().tolerance() > 0)
                .forEach(given -> inputs.add(even(build, given)));
        Set<String> taken = inputs.stream().map(Input::path).collect(Collectors.toSet());
        ledger.stream()
                .filter(assumption -> ofTheCar(assumption.path()) && !taken.contains(assumption.path()))
                .filter(assumption -> assumption.low() < assumption.high())
                .forEach(assumption -> inputs.add(peaked(build, assumption)));
        return List.copyOf(inputs);
    }

    /** Titles of values that the builder calls assumed without a range that anyone could draw from. */
    static List<String> heldStill(Build build, List<Input> inputs) {
        Set<String> varied = inputs.stream().map(Input::path).collect(Collectors.toSet());
        return givens(build)
                .filter(given -> given.origin() == Origin.ASSUMED && !varied.contains(given.path()))
                .map(given -> title(build, given.path()))
                .toList();
    }

    /** The field's name, with the load case or the number in its list. */
    private static String title(Build build, String path) {
        String title = FieldCatalogue.at(path).title();
        Matcher loadCase = LOAD_CASE.matcher(path);
        if (loadCase.matches()) {
            int number = Integer.parseInt(loadCase.group(1));
            return title + " (" + build.car().loadCases().get(number).name() + ")";
        }
        Matcher item = ITEM.matcher(path);
        return item.matches() ? title + " " + (Integer.parseInt(item.group(1)) + 1) : title;
    }

    private static Stream<Given> givens(Build build) {
        return Givens.of(build).stream().filter(given -> ofTheCar(given.path()));
    }

    /** Aims and checks make no other car, and no run follows the heat. */
    private static boolean ofTheCar(String path) {
        return Stream.of(
                        "intent.",
                        "checks.",
                        "clutch.",
                        "heat.",
                        "stops.",
                        "pedal.pushrod.",
                        "shop.",
                        "mount.",
                        "plumbing.")
                .noneMatch(path::startsWith);
    }

    private static Input even(Build build, Given given) {
        Field field = FieldCatalogue.at(given.path());
        return new Input(
                given.path(),
                title(build, given.path()),
                field.dimension(),
                given.si(),
                Math.max(given.quantity().low(), field.least()),
                Math.min(given.quantity().high(), field.most()),
                Input.Belief.EVEN);
    }

    private static Input peaked(Build build, Assumption assumption) {
        return new Input(
                assumption.path(),
                title(build, assumption.path()),
                assumption.dimension(),
                assumption.value(),
                assumption.low(),
                assumption.high(),
                Input.Belief.PEAKED);
    }
}
