package org.brakewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever is typed is answered: with a quantity or with a reason, never with an exception. */
class GarbledTextTest {
    private static final String[] PIECES = {
        "1", "0", "7/8", "12", ".5", ",", ".", "..", "-", "+", "/", "±", "+/-", " ", " ", "to", "%", ":", "e", "E9",
        "in", "mm", "ft", "'", "\"", "psi", "bar", "lb", "kg", "°C", "F", "g", "½", "²", "−", "\u00a0", "(", ")", "\n",
        "\0", "\ud83d", "٣", "NaN", "\\", "$", "ga", "an", "ton", "1e400", "^"
    };

    @ParameterizedTest
    @EnumSource
    void isAnswered(Dimension expected) {
        Random random = new Random(7);
        for (int i = 0; i < 4000; i++) {
            String text = garble(random);
            switch (QuantityReader.read(text, expected)) {
                case Reading.Read read -> {
                    assertThat(read.quantity().written()).isEqualTo(text.strip());
                    assertThat(text).containsPattern("[0-9½]");
                }
                case Reading.Refused refused -> assertThat(refused.reason()).isNotBlank();
            }
        }
    }

    private static String garble(Random random) {
        StringBuilder text = new StringBuilder();
        for (int pieces = random.nextInt(12); pieces > 0; pieces--) {
            text.append(PIECES[random.nextInt(PIECES.length)]);
        }
        return text.toString();
    }
}
