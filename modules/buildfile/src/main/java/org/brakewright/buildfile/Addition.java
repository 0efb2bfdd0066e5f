package org.brakewright.buildfile;

import java.util.List;

/**
 * Writes keys that are not there yet.
 *
 * @param page the text
 * @param steps the missing steps, at least one
 * @param scalar the value in its YAML form
 */
record Addition(Page page, List<Step> steps, String scalar) {
    private static final int STEP = 2;

    /** As a new last entry of a section or of a list, or in the place of an empty value. */
    Page.Change into(Node node, boolean flow, int indent) {
        return switch (node) {
            case Node.Section section when section.flow() -> flowEntry(section, lastEnd(section));
            case Node.Section section -> blockEntry(section);
            case Node.Items items when items.flow() || flow -> flowEntry(items, lastEnd(items));
            case Node.Items items -> blockItem(items);
            case Node.Text _, Node.Unread _ -> inPlace(node, flow, indent);
        };
    }

    /** At the end of a text that holds no key at all. */
    Page.Change atEnd() {
        int end = page.text().length();
        boolean freshLine = end == 0 || page.text().endsWith("\n");
        return new Page.Change(end, end, (freshLine ? "" : page.lineBreak()) + keyed(steps, 0) + page.lineBreak());
    }

    private int lastEnd(Node.Section section) {
        return section.entries().isEmpty()
                ? -1
                : section.entries().getLast().value().contentEnd(page.text());
    }

    private int lastEnd(Node.Items items) {
        return items.items().isEmpty() ? -1 : items.items().getLast().contentEnd(page.text());
    }

    private Page.Change flowEntry(Node node, int lastEnd) {
        int at = lastEnd < 0 ? node.span().start() + 1 : lastEnd;
        String inner = node instanceof Node.Items
                ? inline(steps.subList(1, steps.size()))
                : ((Step.Key) steps.getFirst()).name() + ": " + inline(steps.subList(1, steps.size()));
        return new Page.Change(at, at, lastEnd < 0 ? inner : ", " + inner);
    }

    private Page.Change blockEntry(Node.Section section) {
        int indent = section.entries().getFirst().key().span().column() - 1;
        return below(section, " ".repeat(indent) + keyed(steps, indent));
    }

    private Page.Change blockItem(Node.Items items) {
        int indent = items.span().column() - 1;
        return below(items, " ".repeat(indent) + item(steps.subList(1, steps.size()), indent));
    }

    private Page.Change below(Node node, String line) {
        int at = page.lineEnd(node.contentEnd(page.text()));
        return new Page.Change(at, at, page.lineBreak() + line);
    }

    private Page.Change inPlace(Node node, boolean flow, int indent) {
        int at = node.span().start();
        int end = node.span().end();
        return new Page.Change(at, end, flow ? (at == end ? " " : "") + inline(steps) : behindColon(steps, indent));
    }

    /** {@code key: value} with what belongs below it. */
    private String keyed(List<Step> rest, int indent) {
        return ((Step.Key) rest.getFirst()).name() + ":" + behindColon(rest.subList(1, rest.size()), indent);
    }

    private String behindColon(List<Step> rest, int indent) {
        if (rest.isEmpty() || (rest.size() == 1 && rest.getFirst() instanceof Step.Index)) {
            return " " + inline(rest);
        }
        String line = page.lineBreak() + " ".repeat(indent + STEP);
        return switch (rest.getFirst()) {
            case Step.Key _ -> line + keyed(rest, indent + STEP);
            case Step.Index _ -> line + item(rest.subList(1, rest.size()), indent + STEP);
        };
    }

    private String item(List<Step> rest, int indent) {
        boolean section = !rest.isEmpty() && rest.getFirst() instanceof Step.Key;
        return "- " + (section ? keyed(rest, indent + STEP) : inline(rest));
    }

    private String inline(List<Step> rest) {
        if (rest.isEmpty()) {
            return scalar;
        }
        String inner = inline(rest.subList(1, rest.size()));
        return switch (rest.getFirst()) {
            case Step.Key(String name) -> "{" + name + ": " + inner + "}";
            case Step.Index _ -> "[" + inner + "]";
        };
    }
}
