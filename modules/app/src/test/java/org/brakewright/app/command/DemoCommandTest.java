package org.brakewright.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.brakewright.app.Cars;
import org.brakewright.app.workspace.Loading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class DemoCommandTest {
    static final List<String> CARS = Cars.ALL;

    /** The copy is the example itself, with whatever files it names. */
    @ParameterizedTest
    @FieldSource("CARS")
    void everyDemoCarOpensFromItsCopy(String car) throws IOException {
        Path copy = Objects.requireNonNull(DemoCommand.copy(car));
        assertThat(copy).hasContent(Cars.text(car));
        assertThat(Loading.file(copy)).isInstanceOf(Loading.Loaded.class);
    }

    @Test
    void anotherCarIsNone() throws IOException {
        assertThat(DemoCommand.copy("tractor")).isNull();
    }
}
