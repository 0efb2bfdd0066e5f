package org.brakewright.buildfile;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** One step of a key path, from a section to a key of it or from a list to an entry. */
sealed interface Step {
    Pattern NEXT = Pattern.compile("\\G(?:(?:^|(?<!^)\\.)([A-Za-z_][A-Za-z0-9_]*)|\\[(\\d{1,6})])");

    /** To a key. */
    record Key(String name) implements Step {}

    /** To an entry of a list, the first is 0. */
    record Index(int index) implements Step {}

    /** The steps of a path such as {@code car.load_cases[0].name}; none when the text is no path. */
    static List<Step> parse(String path) {
        List<Step> steps = new ArrayList<>();
        Matcher next = NEXT.matcher(path);
        int end = 0;
        while (next.find()) {
            String key = next.group(1);
            steps.add(key == null ? new Index(Integer.parseInt(next.group(2))) : new Key(key));
            end = next.end();
        }
        return end == path.length() && !steps.isEmpty() && steps.getFirst() instanceof Key
                ? List.copyOf(steps)
                : List.of();
    }

    /** What stands one step further in; null when nothing does. */
    default @Nullable Node from(Node node) {
        return switch (this) {
            case Key(String name) -> node instanceof Node.Section section ? section.find(name) : null;
            case Index(int index)
            when node instanceof Node.Items items ->
                index < items.items().size() ? items.items().get(index) : null;
            case Index(int index) ->
                // one quantity where a list is due is a list of one
                index == 0 && node instanceof Node.Text text && !text.absent() ? node : null;
        };
    }
}
