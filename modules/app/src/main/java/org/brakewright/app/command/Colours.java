package org.brakewright.app.command;

import java.io.Console;
import java.util.function.BiFunction;
import org.brakewright.findings.State;

/** Colours the words of states when a person looks at a terminal; the word itself always stands. */
final class Colours {
    private Colours() {}

    /** Colours on a terminal, none when the output is piped or NO_COLOR is set. */
    @SuppressWarnings("SystemConsoleNull") // JDK 25 gives null again when the output is piped
    static BiFunction<State, String, String> forTerminal() {
        Console console = System.console();
        boolean terminal = console != null && console.isTerminal() && System.getenv("NO_COLOR") == null;
        return terminal ? Colours::coloured : (state, word) -> word;
    }

    private static String coloured(State state, String word) {
        String code = switch (state) {
            case STOP -> "1;31";
            case CAUTION -> "1;33";
            case CANNOT_TELL -> "1;36";
            case FINE -> "1;32";
        };
        return "\u001b[" + code + "m" + word + "\u001b[0m";
    }
}
