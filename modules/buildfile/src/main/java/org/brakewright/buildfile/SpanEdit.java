package org.brakewright.buildfile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.brakewright.model.Problem;

/**
 * Changes one value in the text of a build file and leaves every other character as it is.
 *
 * <p>Each change is tried out: the new text is read again, and counts only when it says what the old one said with the
 * one value changed. That is also how the quotes are chosen.
 */
public final class SpanEdit {
    private final Page page;
    private final Node root;
    private final String path;
    private final String value;

    private SpanEdit(Page page, Node root, String path, String value) {
        this.page = page;
        this.root = root;
        this.path = path;
        this.value = value;
    }

    /**
     * Sets the value at a key path; an empty new text removes the key. A list of plain values is also replaced as a whole
     * by one in brackets. Missing keys, sections and the next entry of a
     * list are written where they belong.
     */
    public static EditOutcome apply(String text, String path, String newText) {
        String plain = BuildFile.withoutMark(text);
        String mark = text.substring(0, text.length() - plain.length());
        Tree tree = TreeReader.read(plain);
        if (!tree.faults().isEmpty()) {
            return new EditOutcome.Refused(tree.faults().getFirst());
        }
        List<Step> steps = Step.parse(path);
        if (steps.isEmpty()) {
            return refused(Span.TOP, path, newText, "`" + path + "` is not the path of a key");
        }
        Node root = Optional.ofNullable(tree.root()).orElse(new Node.Section(Span.TOP, false, List.of()));
        return switch (new SpanEdit(new Page(plain), root, path, newText).run(steps)) {
            case EditOutcome.Edited edited
            when tooLarge(mark + edited.text()) ->
                refused(Span.TOP, path, newText, "the file would be larger than 1 MiB");
            case EditOutcome.Edited edited -> new EditOutcome.Edited(mark + edited.text());
            case EditOutcome.Refused refused -> refused;
        };
    }

    private EditOutcome run(List<Step> steps) {
        List<Node> trail = new ArrayList<>(List.of(root));
        for (Step step : steps) {
            Node next = step.from(trail.getLast());
            if (next == null) {
                break;
            }
            trail.add(next);
        }
        List<Step> missing = steps.subList(trail.size() - 1, steps.size());
        if (value.isEmpty()) {
            return missing.isEmpty() ? remove(trail, steps) : new EditOutcome.Edited(page.text());
        }
        return missing.isEmpty() ? replace(trail) : add(trail, missing);
    }

    private EditOutcome replace(List<Node> trail) {
        return switch (trail.getLast()) {
            case Node.Text text -> {
                Span span = text.span();
                String gap = span.start() == span.end() ? " " : "";
                int end = text.contentEnd(page.text());
                yield firstThatHolds(
                        text.style(), indent(trail), form -> new Page.Change(span.start(), end, gap + form));
            }
            case Node.Items items -> replace(items, trail);
            case Node.Section _, Node.Unread _ -> noSingleValue(trail);
        };
    }

    /** A whole list of plain entries gives way to one in brackets. */
    private EditOutcome replace(Node.Items items, List<Node> trail) {
        Tree written = TreeReader.read(value);
        if (!(written.root() instanceof Node.Items wanted) || !wanted.flow() || !(plain(items) && plain(wanted))) {
            return noSingleValue(trail);
        }
        Map<String, String> expected = Leaves.without(Leaves.of(root), path);
        Leaves.of(wanted).forEach((entry, text) -> expected.put(path + entry, text));
        String list = value.substring(wanted.span().start(), wanted.span().end());
        int end = items.contentEnd(page.text());
        String text = page.replace(new Page.Change(items.span().start(), end, list));
        return says(text, expected) ? new EditOutcome.Edited(text) : refused(trail, "this list cannot be written here");
    }

    private static boolean plain(Node.Items items) {
        return items.items().stream().allMatch(Node.Text.class::isInstance);
    }

    private EditOutcome noSingleValue(List<Node> trail) {
        return refused(trail, "`" + path + "` is no single value; name a key in it");
    }

    private EditOutcome add(List<Node> trail, List<Step> missing) {
        Node at = trail.getLast();
        Optional<String> misfit = misfit(at, missing);
        if (misfit.isPresent()) {
            return refused(trail, misfit.get());
        }
        if (at instanceof Node.Text text && !text.absent()) {
            return widen(text);
        }
        boolean flow = trail.stream().anyMatch(SpanEdit::flow);
        int indent = indent(trail);
        boolean nothing = at instanceof Node.Section section
                && !section.flow()
                && section.entries().isEmpty();
        return firstThatHolds(Node.Style.PLAIN, indent + 2 * (missing.size() - 1), form -> {
            Addition addition = new Addition(page, missing, form);
            return nothing ? addition.atEnd() : addition.into(at, flow, indent);
        });
    }

    /** A single quantity becomes the first entry of a list before the second is added. */
    private EditOutcome widen(Node.Text text) {
        int end = text.contentEnd(page.text());
        String list = "[" + page.text().substring(text.span().start(), end) + "]";
        String widened = page.replace(new Page.Change(text.span().start(), end, list));
        Map<String, String> expected = new HashMap<>(Leaves.of(root));
        String first = Optional.ofNullable(expected.remove(Paths.parent(path))).orElse("");
        expected.put(Paths.item(Paths.parent(path), 0), first);
        return says(widened, expected)
                ? apply(widened, path, value)
                : refused(text.span(), path, value, "this value cannot become a list");
    }

    /** Why the missing steps cannot be taken from what is there. */
    private Optional<String> misfit(Node at, List<Step> missing) {
        boolean skips =
                missing.stream().skip(1).anyMatch(step -> step instanceof Step.Index index && index.index() > 0);
        if (skips) {
            return Optional.of("a new list begins with entry [0]");
        }
        return switch (missing.getFirst()) {
            case Step.Key _ ->
                at instanceof Node.Items || (at instanceof Node.Text text && !text.absent())
                        ? Optional.of("`" + path + "` leads into something that has no keys")
                        : Optional.empty();
            case Step.Index(int index) ->
                next(at) == index
                        ? Optional.empty()
                        : Optional.of("`" + path + "` does not name an entry of the list or the one behind its last");
        };
    }

    private int next(Node at) {
        return switch (at) {
            case Node.Items items -> items.items().size();
            case Node.Text text -> text.absent() ? 0 : path.endsWith("]") ? 1 : -1;
            case Node.Section _, Node.Unread _ -> -1;
        };
    }

    private EditOutcome remove(List<Node> trail, List<Step> steps) {
        int last = trail.size() - 1;
        Map<String, String> expected = Leaves.without(Leaves.of(root), path);
        Page.Change change = switch (steps.getLast()) {
            case Step.Key(String name) -> {
                Node.Section section = (Node.Section) trail.get(last - 1);
                yield Removal.from(page, section).of(Removal.index(section, name));
            }
            case Step.Index(int index)
            when trail.get(last - 1) instanceof Node.Items items ->
                Removal.from(page, items).of(index);
            // one quantity for a list of one: the key goes
            case Step.Index _ -> null;
        };
        if (change == null) {
            return apply(page.text(), Paths.parent(path), "");
        }
        String text = page.replace(change);
        return says(text, expected)
                ? new EditOutcome.Edited(text)
                : refused(trail, "this key cannot be taken out without changing others");
    }

    private EditOutcome firstThatHolds(Node.Style before, int indent, Function<String, Page.Change> change) {
        Map<String, String> expected = new HashMap<>(Leaves.of(root));
        boolean single = path.endsWith("[0]") && expected.containsKey(Paths.parent(path));
        expected.put(single ? Paths.parent(path) : path, value);
        for (String form : ScalarForms.of(value, before, indent, page.lineBreak())) {
            String text = page.replace(change.apply(form));
            if (says(text, expected)) {
                return new EditOutcome.Edited(text);
            }
        }
        return refused(Places.of(root).at(path), path, value, "this text cannot be written here");
    }

    private static boolean says(String text, Map<String, String> expected) {
        Tree tree = TreeReader.read(text);
        Node root = tree.root();
        return tree.faults().isEmpty() && (root == null ? Map.of() : Leaves.of(root)).equals(expected);
    }

    /** Blanks before the innermost key or hyphen of the trail. */
    private static int indent(List<Node> trail) {
        int indent = 0;
        for (int i = 0; i + 1 < trail.size(); i++) {
            Node inner = trail.get(i + 1);
            indent = switch (trail.get(i)) {
                case Node.Section section ->
                    section.entries().stream()
                            .filter(entry -> entry.value().equals(inner))
                            .findFirst()
                            .map(entry -> entry.key().span().column() - 1)
                            .orElse(indent);
                case Node.Items items -> items.span().column() - 1;
                case Node.Text _, Node.Unread _ -> indent;
            };
        }
        return indent;
    }

    private static boolean flow(Node node) {
        return switch (node) {
            case Node.Section section -> section.flow();
            case Node.Items items -> items.flow();
            case Node.Text _, Node.Unread _ -> false;
        };
    }

    private static boolean tooLarge(String text) {
        return text.getBytes(java.nio.charset.StandardCharsets.UTF_8).length > BuildFile.LARGEST_BYTES;
    }

    private EditOutcome refused(List<Node> trail, String message) {
        return refused(trail.getLast().span(), path, value, message);
    }

    private static EditOutcome refused(Span at, String path, String value, String message) {
        Problem problem = new Problem(path, Faults.shown(value), message, "the path of one value");
        return new EditOutcome.Refused(new LocatedProblem(at.line(), at.column(), problem));
    }
}
