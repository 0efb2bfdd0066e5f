package org.brakewright.analysis.resolve;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakewright.analysis.WrittenCar;

/** What a car that cannot be is told. */
final class Refused {
    private Refused() {}

    /** One value alone is refused, by its path and as written, with a sentence and with what is allowed. */
    static void assertOnly(WrittenCar car, String path, String value) {
        assertThat(car.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.path()).isEqualTo(path);
            assertThat(problem.value()).isEqualTo(value);
            assertThat(problem.message()).endsWith(".");
            assertThat(problem.allowed()).isNotBlank();
        });
    }
}
