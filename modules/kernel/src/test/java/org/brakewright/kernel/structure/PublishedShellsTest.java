package org.brakewright.kernel.structure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Holds the tables of docs/laws/shell-convergence.md. References: R. MacNeal, R. Harder, Finite Elements in Analysis
 * and Design 1 (1985), from memory; plates: S. Timoshenko, S. Woinowsky-Krieger, Theory of Plates and Shells, from
 * memory.
 */
class PublishedShellsTest {
    private static final Path PAGE = Path.of("..", "..", "docs", "laws", "shell-convergence.md");

    /**
     * Every printed ratio is what the solver gives; the finest mesh lies within the stated share of the reference, which
     * comes from the source's own rounding and from what the source leaves out.
     */
    @ParameterizedTest
    @CsvSource({
        "straight cantilever load in its plane, 0.004",
        "straight cantilever load across, 0.006",
        "twisted beam load in its plane, 0.005",
        "twisted beam load across, 0.005",
        "thin twisted beam load in its plane, 0.005",
        "thin twisted beam load across, 0.005",
        "pinched cylinder with diaphragms, 0.003",
        "cylindrical roof, 0.007",
        "hemisphere with a hole, 0.012",
        "square plate hinged even load, 0.001",
        "square plate hinged middle load, 0.001",
        "square plate clamped even load, 0.005",
        "square plate clamped middle load, 0.005",
        "long plate hinged even load, 0.003",
        "long plate hinged middle load, 0.004",
        "long plate clamped even load, 0.005",
        "long plate clamped middle load, 0.005"
    })
    void tableIsTrue(String name, double finest) {
        double reference = reference(name);
        IntToDoubleFunction shell = problem(name);
        List<String[]> rows = rows(name);
        assertThat(rows).hasSizeGreaterThan(2);
        double ratio = Double.NaN;
        for (String[] row : rows) {
            ratio = shell.applyAsDouble(Integer.parseInt(row[2])) / reference;
            double printed = new BigDecimal(row[3]).doubleValue();
            assertThat(ratio).as("%s, %s cells", name, row[2]).isCloseTo(printed, Assertions.within(0.5e-3));
        }
        assertThat(ratio).isCloseTo(1, Assertions.within(finest));
    }

    private static double reference(String name) {
        return switch (name) {
            case "straight cantilever load in its plane" -> 0.1081;
            case "straight cantilever load across" -> 0.4321;
            case "twisted beam load in its plane" -> 0.005424;
            case "twisted beam load across" -> 0.001754;
            case "thin twisted beam load in its plane" -> 1.390;
            case "thin twisted beam load across" -> 0.3431;
            case "pinched cylinder with diaphragms" -> 1.8248e-5;
            case "cylindrical roof" -> 0.3024;
            case "hemisphere with a hole" -> 0.0940;
            default -> plateCoefficient(name);
        };
    }

    /** Plates of stiffness D, width 2 and load such that q a4/D = 1e3 and P a2/D = 1e3. */
    private static double plateCoefficient(String name) {
        return switch (name) {
            case "square plate hinged even load" -> 4.062;
            case "square plate hinged middle load" -> 11.60;
            case "square plate clamped even load" -> 1.265;
            case "square plate clamped middle load" -> 5.60;
            case "long plate hinged even load" -> 12.97;
            case "long plate hinged middle load" -> 16.96;
            case "long plate clamped even load" -> 2.604;
            case "long plate clamped middle load" -> 7.23;
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static IntToDoubleFunction problem(String name) {
        return switch (name) {
            case "straight cantilever load in its plane" -> cells -> PublishedShells.straight(cells, true);
            case "straight cantilever load across" -> cells -> PublishedShells.straight(cells, false);
            case "twisted beam load in its plane" -> cells -> PublishedShells.twisted(cells, 0.32, true);
            case "twisted beam load across" -> cells -> PublishedShells.twisted(cells, 0.32, false);
            case "thin twisted beam load in its plane" -> cells -> PublishedShells.twisted(cells, 0.05, true);
            case "thin twisted beam load across" -> cells -> PublishedShells.twisted(cells, 0.05, false);
            case "pinched cylinder with diaphragms" -> PublishedShells::pinchedCylinder;
            case "cylindrical roof" -> PublishedShells::roof;
            case "hemisphere with a hole" -> PublishedShells::hemisphere;
            default -> plate(name);
        };
    }

    private static IntToDoubleFunction plate(String name) {
        double length = name.startsWith("long") ? 5 : 1;
        boolean clamped = name.contains("clamped");
        boolean even = name.endsWith("even load");
        return cells -> PublishedShells.plate(cells, length, clamped, even);
    }

    private static List<String[]> rows(String name) {
        try {
            List<String[]> rows = new ArrayList<>();
            for (String line : Files.readString(PAGE).split("\n", -1)) {
                if (line.startsWith("| " + name + " | ")) {
                    rows.add(Arrays.stream(line.split("\\|", -1))
                            .map(String::strip)
                            .map(cell -> cell.toLowerCase(Locale.ROOT))
                            .toArray(String[]::new));
                }
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
