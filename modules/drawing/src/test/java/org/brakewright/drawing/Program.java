package org.brakewright.drawing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A program from outside that judges what we write; without it the test fails and says what to install. */
public final class Program {
    private Program() {}

    /** What it prints; AssertionError when it is missing or fails. */
    public static String run(String debianPackage, List<String> command) throws IOException, InterruptedException {
        String hint = " (Debian package " + debianPackage + ")";
        Process process;
        try {
            process = new ProcessBuilder(command).redirectErrorStream(true).start();
        } catch (IOException e) {
            throw new AssertionError("cannot run " + command.getFirst() + hint, e);
        }
        process.getOutputStream().close();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new AssertionError(command + " failed" + hint + ": " + printed);
        }
        return printed;
    }
}
