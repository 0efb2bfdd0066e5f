package org.brakewright.drawing.write;

import org.brakewright.drawing.Decimal;

/** Pairs of group code and value, one line each. */
final class DxfTags {
    /** A nanometer. */
    private static final int PLACES = 6;

    /** Slopes and bulges have no unit: digits for a nanometer on an arc a meter wide. */
    private static final int RATIO_PLACES = 12;

    private final StringBuilder text = new StringBuilder();

    DxfTags add(int code, String value) {
        text.append(code).append('\n').append(value).append('\n');
        return this;
    }

    DxfTags add(int code, int value) {
        return add(code, Integer.toString(value));
    }

    /** A length in mm or an angle in degrees. */
    DxfTags add(int code, double value) {
        return add(code, real(value, PLACES));
    }

    DxfTags ratio(int code, double value) {
        return add(code, real(value, RATIO_PLACES));
    }

    /** A place, in codes {@code code}, {@code code + 10}, {@code code + 20}. */
    DxfTags at(int code, double x, double y) {
        return add(code, x).add(code + 10, y).add(code + 20, 0.0);
    }

    String text() {
        return text.toString();
    }

    private static String real(double value, int places) {
        String digits = Decimal.text(value, places);
        return digits.indexOf('.') < 0 ? digits + ".0" : digits;
    }
}
