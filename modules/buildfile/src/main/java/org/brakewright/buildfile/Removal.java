package org.brakewright.buildfile;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Takes a key or an entry of a list out of a text, with its line or its comma and nothing else.
 *
 * @param page the text
 * @param parts the entries among which the one to go stands
 * @param flow whether they stand in brackets or braces
 */
record Removal(Page page, List<Part> parts, boolean flow) {

    /** From the first letter of an entry (its key, or its hyphen) to behind the last letter of its content. */
    record Part(int start, int end) {}

    static Removal from(Page page, Node.Section section) {
        List<Part> parts = section.entries().stream()
                .map(entry -> new Part(entry.key().span().start(), entry.value().contentEnd(page.text())))
                .toList();
        return new Removal(page, parts, section.flow());
    }

    static Removal from(Page page, Node.Items items) {
        List<Part> parts = new ArrayList<>();
        for (Node item : items.items()) {
            int start = item.span().start();
            parts.add(new Part(
                    items.flow() ? start : page.text().lastIndexOf('-', start - 1), item.contentEnd(page.text())));
        }
        return new Removal(page, parts, items.flow());
    }

    /** The place of a key among the entries of a section. */
    static int index(Node.Section section, String key) {
        return IntStream.range(0, section.entries().size())
                .filter(i -> section.entries().get(i).key().value().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("key must be there, was " + key));
    }

    Page.Change of(int index) {
        return flow ? inline(index) : lines(parts.get(index));
    }

    private Page.Change lines(Part part) {
        int end = page.lineEnd(part.end());
        if (!page.beginsLine(part.start())) {
            // the hyphen of the list stays and the other keys stay below it
            int start = part.start();
            while (page.text().charAt(start - 1) == ' ') {
                start--;
            }
            return new Page.Change(start, end, "");
        }
        int start = page.lineStart(part.start());
        boolean lastWithoutBreak = end == page.text().length() && start > 0;
        return lastWithoutBreak
                ? new Page.Change(page.lineEnd(page.lineStart(start - 1)), end, "")
                : new Page.Change(start, page.nextLine(end), "");
    }

    private Page.Change inline(int index) {
        Part part = parts.get(index);
        if (index + 1 < parts.size()) {
            int next = parts.get(index + 1).start();
            int comma = page.text().indexOf(',', part.end()) + 1;
            return new Page.Change(part.start(), page.remarkable(part.end(), next) ? comma : next, "");
        }
        int before = index == 0 ? part.start() : parts.get(index - 1).end();
        return new Page.Change(page.remarkable(before, part.start()) ? part.start() : before, part.end(), "");
    }
}
