package org.brakewright.buildfile;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.brakewright.model.Build;
import org.brakewright.model.Problem;

/** Reads build files. Whatever the text, the answer is a build or all that is wrong with the file, never an exception. */
public final class BuildFile {
    /** Most bytes of a build file. */
    public static final int LARGEST_BYTES = 1 << 20;

    private static final String FORMAT = "format";
    private static final String KNOWN_FORMAT = "1";
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private BuildFile() {}

    /** Reads a file as its bytes, and the files it names; refuses text that is not UTF-8. */
    public static ReadOutcome readUtf8(byte[] bytes, Beside beside) {
        if (bytes.length > LARGEST_BYTES) {
            return tooLarge();
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return read(text, beside);
        } catch (CharacterCodingException e) {
            return whole("the file is not UTF-8 text", "a text file saved as UTF-8");
        }
    }

    /** Reads the text of a build file that names no other file. */
    public static ReadOutcome read(String text) {
        return read(text, Beside.NOTHING);
    }

    /** Reads the text of a build file, and the files it names. */
    public static ReadOutcome read(String text, Beside beside) {
        if (text.length() > LARGEST_BYTES || text.getBytes(StandardCharsets.UTF_8).length > LARGEST_BYTES) {
            return tooLarge();
        }
        Tree tree = TreeReader.read(withoutMark(text));
        Node root = tree.root();
        if (root == null || (root instanceof Node.Text nothing && nothing.absent())) {
            return tree.faults().isEmpty()
                    ? whole("the file is empty", "a build that begins with format: 1")
                    : new ReadOutcome.Unusable(tree.faults());
        }
        return bind(root, tree.faults(), beside);
    }

    /** A text without the mark that some editors put before its first letter. */
    static String withoutMark(String text) {
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    private static ReadOutcome bind(Node root, List<LocatedProblem> refused, Beside beside) {
        Faults faults = new Faults();
        faults.addAll(refused);
        if (otherFormat(root, faults)) {
            return new ReadOutcome.Unusable(faults.sorted());
        }
        Places places = Places.of(root);
        if (new Binder(faults, places).section(Build.class, root, "") instanceof Build written) {
            Build build = new SpeedLogs(beside, places, faults).fill(written);
            if (faults.none()) {
                return new ReadOutcome.Usable(build, places);
            }
        }
        return new ReadOutcome.Unusable(faults.sorted());
    }

    /** Whether the file says that it is of another format, of which nothing else can be judged. */
    private static boolean otherFormat(Node root, Faults faults) {
        if (!(root instanceof Node.Section section)) {
            return false;
        }
        for (Node.Entry entry : section.entries()) {
            if (entry.key().value().equals(FORMAT)
                    && entry.value() instanceof Node.Text text
                    && !text.absent()
                    && !text.value().strip().equals(KNOWN_FORMAT)) {
                String shown = Faults.shown(text.value());
                String message = "format " + shown + " is not known; this version knows format 1 only";
                faults.add(text.span(), new Problem(FORMAT, shown, message, "format: 1"));
                return true;
            }
        }
        return false;
    }

    private static ReadOutcome tooLarge() {
        return whole("the file is larger than " + (LARGEST_BYTES >> 20) + " MiB", "a smaller file");
    }

    private static ReadOutcome whole(String message, String allowed) {
        return new ReadOutcome.Unusable(List.of(new LocatedProblem(1, 1, new Problem("", "", message, allowed))));
    }
}
