package org.brakewright.buildfile;

import java.util.HashMap;
import java.util.Map;
import org.brakewright.model.Problem;

/** Where each key of a build file stands. */
public final class Places {
    private final Map<String, Span> spans;

    private Places(Map<String, Span> spans) {
        this.spans = spans;
    }

    /** The places of everything in an outline: a value where it begins, a section or a list at its key. */
    static Places of(Node root) {
        Map<String, Span> spans = new HashMap<>();
        collect(root, "", root.span(), spans);
        spans.put("", Span.TOP);
        return new Places(spans);
    }

    /** The problem at its place; a key that is missing is placed at the nearest section that is there. */
    public LocatedProblem locate(Problem problem) {
        Span span = at(problem.path());
        return new LocatedProblem(span.line(), span.column(), problem);
    }

    /** The place of a key path, or of the nearest section around it. */
    Span at(String path) {
        String there = path;
        while (!spans.containsKey(there)) {
            there = Paths.parent(there);
        }
        return spans.getOrDefault(there, Span.TOP);
    }

    private static void collect(Node node, String path, Span header, Map<String, Span> spans) {
        spans.putIfAbsent(path, node instanceof Node.Text ? node.span() : header);
        switch (node) {
            case Node.Section section -> {
                for (Node.Entry entry : section.entries()) {
                    collect(
                            entry.value(),
                            Paths.child(path, entry.key().value()),
                            entry.key().span(),
                            spans);
                }
            }
            case Node.Items items -> {
                for (int i = 0; i < items.items().size(); i++) {
                    Node item = items.items().get(i);
                    collect(item, Paths.item(path, i), item.span(), spans);
                }
            }
            case Node.Text _, Node.Unread _ -> {}
        }
    }
}
