package org.amberyard.report.document;

/** How wide words are in the letters of documents, about: widths of Liberation Sans, by kinds of signs. */
final class TextWidth {
    private static final double DIGIT = 0.556;
    private static final double NARROW = 0.278;
    private static final double LOWER = 0.54;
    private static final double UPPER = 0.69;
    private static final double WIDE = 0.85;
    private static final String NARROW_SIGNS = " .,:;!|'/\\ijltfI[]()\u00a0";
    private static final String WIDE_SIGNS = "mwMW%—@";

    private TextWidth() {
    }

    /** Width in the size of the letters. */
    static double em(String text) {
        return text.codePoints().mapToDouble(TextWidth::em).sum();
    }

    private static double em(int sign) {
        if (NARROW_SIGNS.indexOf(sign) >= 0) {
            return NARROW;
        }
        if (WIDE_SIGNS.indexOf(sign) >= 0) {
            return WIDE;
        }
        return Character.isUpperCase(sign) ? UPPER : Character.isDigit(sign) ? DIGIT : LOWER;
    }
}
