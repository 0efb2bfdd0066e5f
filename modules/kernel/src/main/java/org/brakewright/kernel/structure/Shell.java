package org.brakewright.kernel.structure;

import org.brakewright.kernel.structure.shell.Sheet;

/** A flat triangle of thin shell. Its normal, and top face, is on the side from which a, b, c turn left. */
public record Shell(String part, int a, int b, int c, Sheet sheet) implements Element {
    @Override
    public int[] nodes() {
        return new int[] {a, b, c};
    }
}
