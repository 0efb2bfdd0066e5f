package org.brakewright.kernel.structure;

import java.util.stream.Stream;
import org.brakewright.kernel.structure.shell.SheetStress;

/** Stresses of a shell triangle at its center and its corners. */
public record ShellResult(SheetStress center, SheetStress atA, SheetStress atB, SheetStress atC) {
    /** The greatest von Mises stress of both faces at the four points, Pa. */
    public double greatestVonMises() {
        return Stream.of(center, atA, atB, atC)
                .mapToDouble(SheetStress::vonMises)
                .max()
                .orElseThrow();
    }
}
