package org.brakewright.app;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One run of the command line.
 *
 * @param code exit code
 * @param out what it printed
 * @param err what it printed about faults
 */
public record Shell(int code, String out, String err) {

    /** Runs the command line. */
    public static Shell run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
        return new Shell(code, out.toString(), err.toString());
    }
}
