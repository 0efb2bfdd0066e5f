package org.brakewright.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The worked example of a page in {@code docs/laws}, so that page and test cannot part. */
public final class WorkedExample {
    private static final Path PAGES = Path.of("..", "..", "docs", "laws");

    /** Rows of three cells: what, number, unit. */
    private static final Pattern ROW = Pattern.compile("(?m)^\\| ([^|]+?) \\| (-?[0-9.]+) \\| ([^|]+?) \\|$");

    private static final Map<String, Double> FACTORS = Map.ofEntries(
            Map.entry("-", 1.0),
            Map.entry("m", 1.0),
            Map.entry("mm", 1e-3),
            Map.entry("mm2", 1e-6),
            Map.entry("m/s", 1.0),
            Map.entry("m/s2", 1.0),
            Map.entry("s", 1.0),
            Map.entry("kg", 1.0),
            Map.entry("kg/m3", 1.0),
            Map.entry("m2", 1.0),
            Map.entry("N", 1.0),
            Map.entry("N m", 1.0),
            Map.entry("N/mm", 1e3),
            Map.entry("1/N", 1.0),
            Map.entry("mm/N", 1e-3),
            Map.entry("kJ", 1e3),
            Map.entry("kW", 1e3),
            Map.entry("cm2", 1e-4),
            Map.entry("cm3", 1e-6),
            Map.entry("mm3", 1e-9),
            Map.entry("mm4", 1e-12),
            Map.entry("kN", 1e3),
            Map.entry("cm3/m", 1e-6),
            Map.entry("GPa", 1e9),
            Map.entry("kPa", 1e3),
            Map.entry("MPa", 1e6),
            Map.entry("rad", 1.0),
            Map.entry("deg", Math.PI / 180),
            Map.entry("g", 1.0),
            Map.entry("K", 1.0),
            Map.entry("W", 1.0),
            Map.entry("W/K", 1.0),
            Map.entry("J/K", 1.0),
            Map.entry("W/(m2 K)", 1.0),
            Map.entry("W/(m K)", 1.0),
            Map.entry("J/(kg K)", 1.0),
            Map.entry("kJ/kg", 1e3),
            Map.entry("J/(m2 K s^0.5)", 1.0),
            Map.entry("mm2/s", 1e-6),
            Map.entry("uPa s", 1e-6),
            Map.entry("MW/m2", 1e6),
            Map.entry("W/m2", 1.0),
            Map.entry("rad/s", 1.0),
            Map.entry("K/s", 1.0),
            Map.entry("%", 0.01),
            Map.entry("km/h", 1 / 3.6));

    private final Map<String, Quantity> rows;

    private WorkedExample(Map<String, Quantity> rows) {
        this.rows = rows;
    }

    private record Quantity(BigDecimal printed, double factor) {
        double si() {
            return printed.doubleValue() * factor;
        }

        double halfLastDigit() {
            return 0.5 * Math.pow(10, -printed.scale()) * factor;
        }
    }

    public static WorkedExample of(String page) {
        Map<String, Quantity> rows = new LinkedHashMap<>();
        Matcher row = ROW.matcher(text(page));
        while (row.find()) {
            double factor = FACTORS.getOrDefault(row.group(3), Double.NaN);
            assertThat(factor).as("unit %s", row.group(3)).isFinite();
            rows.put(row.group(1), new Quantity(new BigDecimal(row.group(2)), factor));
        }
        return new WorkedExample(rows);
    }

    /** A number of the page in SI. */
    public double si(String name) {
        return row(name).si();
    }

    /** Holds a result in SI against the page's number: equal to the last digit printed. */
    public void holds(String name, double result) {
        Quantity row = row(name);
        assertThat(result).as(name).isCloseTo(row.si(), within(row.halfLastDigit() * (1 + 1e-9)));
    }

    private Quantity row(String name) {
        assertThat(rows).containsKey(name);
        return rows.get(name);
    }

    private static String text(String page) {
        try {
            return Files.readString(PAGES.resolve(page + ".md"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
