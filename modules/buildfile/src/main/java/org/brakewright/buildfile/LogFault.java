package org.brakewright.buildfile;

import org.brakewright.model.Problem;

/**
 * One fault of a log file.
 *
 * @param line of the log file, the first is 1; 0 for the file as a whole
 * @param value as written there
 * @param message a clause
 * @param allowed what would be accepted
 */
record LogFault(long line, String value, String message, String allowed) {
    Problem at(String path, String file) {
        String where = line == 0 ? file : file + ", line " + line;
        return new Problem(path, value, where + ": " + message, allowed);
    }
}
