package org.brakewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the page for builders against the reader, row by row. */
class QuantitiesPageTest {
    private static final Path PAGE =
            Path.of(System.getProperty("basedir", "."), "..", "..", "docs", "fileformat", "quantities.md");

    private static List<List<String>> table(String heading) throws IOException {
        String section =
                Files.readString(PAGE).split("\n## " + heading + "\n", 2)[1].split("\n## ", 2)[0];
        return section.lines()
                .filter(line -> line.startsWith("| "))
                .skip(1)
                .map(QuantitiesPageTest::cells)
                .toList();
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.substring(1, line.lastIndexOf('|')).split("\\|", -1))
                .map(String::strip)
                .toList();
    }

    private static String plain(String code) {
        return code.replace("`", "");
    }

    private static String field(Dimension dimension) {
        return dimension.words().replaceFirst("^an? ", "");
    }

    private static Dimension dimension(String field) {
        return Arrays.stream(Dimension.values())
                .filter(dimension -> field(dimension).equals(field))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no field is called " + field));
    }

    static Stream<List<String>> accepted() throws IOException {
        return table("Read as").stream();
    }

    static Stream<List<String>> refused() throws IOException {
        return table("Refused").stream();
    }

    private static Quantity read(String code, String field) {
        return switch (QuantityReader.read(plain(code), dimension(field))) {
            case Reading.Read read -> read.quantity();
            case Reading.Refused refused -> throw new AssertionError(refused.reason());
        };
    }

    /** The page prints at least four digits, hence the 2 in 10 000. */
    @ParameterizedTest
    @MethodSource
    void accepted(List<String> row) {
        Quantity typed = read(row.get(0), row.get(1));
        Quantity meant = read(row.get(2), row.get(1));
        assertThat(typed.si()).isCloseTo(meant.si(), within(Math.abs(meant.si()) * 2e-4));
        assertThat(typed.tolerance()).isCloseTo(meant.tolerance(), within(meant.tolerance() * 2e-4));
    }

    @ParameterizedTest
    @MethodSource
    void refused(List<String> row) {
        Reading reading = QuantityReader.read(plain(row.get(0)), dimension(row.get(1)));
        assertThat(reading).isInstanceOfSatisfying(Reading.Refused.class, refused -> {
            assertThat(refused.reason()).isEqualTo(row.get(2));
            assertThat(String.join(", ", refused.offers())).isEqualTo(plain(row.get(3)));
            assertThat(refused.offers()).allSatisfy(offer -> read(offer, row.get(1)));
        });
    }

    @ParameterizedTest
    @EnumSource
    void listsEveryUnitAndSpelling(Dimension dimension) throws IOException {
        String units = Unit.of(dimension).stream()
                .map(unit -> unit.names().stream().map(name -> "`" + name + "`").collect(Collectors.joining(" = ")))
                .collect(Collectors.joining(", "));
        assertThat(table("Units")).contains(List.of(field(dimension), units));
    }

    @Test
    void hasRowsToCheck() throws IOException {
        // the page's own count when written: 37 read, 30 refused; it may grow, it must not be lost
        assertThat(accepted()).hasSizeGreaterThanOrEqualTo(37);
        assertThat(refused()).hasSizeGreaterThanOrEqualTo(30);
    }
}
