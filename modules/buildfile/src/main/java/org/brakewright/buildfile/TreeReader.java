package org.brakewright.buildfile;

import java.io.Serial;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.brakewright.model.Problem;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/**
 * Reads YAML into an outline with places, and constructs nothing.
 *
 * <p>It listens to the parser's events instead of composing nodes, because composing follows aliases and recurses as
 * deep as the file says. Here an alias is one fault, and reading ends where the file is too deep or too full.
 */
final class TreeReader {
    static final int DEEPEST = 20;

    /** Far more than a build can hold; the parser's time grows with the square of some hostile files. */
    static final int MOST_NODES = 20_000;

    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setLabel("build file")
            .setUseMarks(true)
            .setParseComments(false)
            .build();

    private final Offsets offsets;
    private final Faults faults = new Faults();
    private final Iterator<Event> events;
    private int nodes;

    private TreeReader(String text) {
        offsets = new Offsets(text);
        events = new Parse(SETTINGS).parseString(text).iterator();
    }

    /** The outline of the text, which has no byte order mark. */
    static Tree read(String text) {
        TreeReader reader = new TreeReader(text);
        try {
            Node root = reader.document();
            return new Tree(root, reader.faults.sorted());
        } catch (Stopped e) {
            return new Tree(null, reader.faults.sorted());
        } catch (RuntimeException e) {
            // the parser throws more than its own kind at hostile texts, such as \U with a number that is no letter
            return new Tree(null, SyntaxFault.of(e, text));
        }
    }

    private @Nullable Node document() {
        Node root = null;
        while (events.hasNext()) {
            Event event = events.next();
            if (root != null && event instanceof DocumentStartEvent) {
                // which of them is the build cannot be told, and the rest is not looked at
                refuse(event, "the file holds more than one document", "one build a file, without a second ---");
                return null;
            }
            if (event instanceof NodeEvent node) {
                root = node(node, 1);
            }
        }
        return root;
    }

    private Node node(NodeEvent event, int depth) {
        refuseExtras(event);
        nodes++;
        if (nodes > MOST_NODES) {
            throw stop(event, "the file holds too much", "at most " + MOST_NODES + " keys and values");
        }
        if (depth > DEEPEST) {
            throw stop(event, "the file is nested too deeply", "at most " + DEEPEST + " levels");
        }
        return switch (event) {
            case ScalarEvent scalar -> text(scalar);
            case MappingStartEvent start -> section(start, depth);
            case CollectionStartEvent start -> items(start, depth);
            default -> new Node.Unread(span(event));
        };
    }

    private Node text(ScalarEvent event) {
        return new Node.Text(span(event), event.getValue(), style(event.getScalarStyle()));
    }

    private static Node.Style style(ScalarStyle style) {
        return switch (style) {
            case PLAIN -> Node.Style.PLAIN;
            case SINGLE_QUOTED -> Node.Style.SINGLE_QUOTED;
            case DOUBLE_QUOTED, JSON_SCALAR_STYLE -> Node.Style.DOUBLE_QUOTED;
            case LITERAL, FOLDED -> Node.Style.BLOCK;
        };
    }

    private Node items(CollectionStartEvent start, int depth) {
        List<Node> items = new ArrayList<>();
        Event event = events.next();
        while (event instanceof NodeEvent item) {
            items.add(node(item, depth + 1));
            event = events.next();
        }
        return new Node.Items(span(start, event), start.isFlow(), List.copyOf(items));
    }

    private Node section(MappingStartEvent start, int depth) {
        List<Node.Entry> entries = new ArrayList<>();
        Event event = events.next();
        while (event instanceof NodeEvent keyEvent) {
            Node key = node(keyEvent, depth + 1);
            Node value = node((NodeEvent) events.next(), depth + 1);
            switch (key) {
                case Node.Text text -> entries.add(new Node.Entry(text, value));
                case Node.Items _, Node.Section _ -> refuse(keyEvent, "a key must be one word", "key: value");
                case Node.Unread _ -> {}
            }
            event = events.next();
        }
        return new Node.Section(span(start, event), start.isFlow(), List.copyOf(entries));
    }

    private void refuseExtras(NodeEvent event) {
        if (event instanceof AliasEvent alias) {
            refuse(event, "`*" + alias.getAlias() + "` repeats another place of the file", "write the value again");
            return;
        }
        event.getAnchor()
                .ifPresent(
                        anchor -> refuse(event, "`&" + anchor + "` marks a place for repeating", "write it without &"));
        tag(event);
    }

    private void tag(NodeEvent event) {
        var tag = switch (event) {
            case ScalarEvent scalar -> scalar.getTag();
            case CollectionStartEvent start -> start.getTag();
            default -> Optional.<String>empty();
        };
        tag.ifPresent(
                name -> refuse(event, "the tag `" + Faults.shown(name) + "` is not used here", "write it without !"));
    }

    private Stopped stop(Event at, String message, String allowed) {
        refuse(at, message, allowed);
        return new Stopped();
    }

    private void refuse(Event at, String message, String allowed) {
        faults.add(span(at), new Problem("", "", message, allowed));
    }

    private Span span(Event event) {
        return offsets.span(event.getStartMark(), event.getEndMark());
    }

    private Span span(Event first, Event last) {
        return offsets.span(first.getStartMark(), last.getEndMark());
    }

    /** Ends the reading of a file that goes beyond all measure; never leaves this class. */
    private static final class Stopped extends RuntimeException {
        @Serial
        private static final long serialVersionUID = 1;

        Stopped() {
            super("the reading was ended", null, false, false);
        }
    }
}
