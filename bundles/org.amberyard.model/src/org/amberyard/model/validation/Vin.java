package org.amberyard.model.validation;

import java.util.Locale;

/**
 * Vehicle identification number of 17 characters with the check digit of 49 CFR 565.15(c): letters stand for digits, each
 * place has a weight, and the sum modulo 11 is the ninth character, with X for 10. I, O and Q are never used.
 */
final class Vin {
    static final int LENGTH = 17;
    private static final int CHECK_PLACE = 8;
    private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";
    private static final String VALUES = "12345678123457923456789";
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};

    private final String text;

    /** @param text the number as typed; case does not matter */
    Vin(String text) {
        this.text = text.strip().toUpperCase(Locale.ROOT);
    }

    int length() {
        return text.length();
    }

    /** True when every character is a digit or a letter that these numbers use. */
    boolean hasOnlyValidCharacters() {
        return text.chars().allMatch(c -> value((char) c) >= 0);
    }

    /** The ninth character; the number must be of full length. */
    char checkDigit() {
        return text.charAt(CHECK_PLACE);
    }

    /** What the ninth character has to be; the number must be of full length with valid characters. */
    char expectedCheckDigit() {
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            sum += WEIGHTS[i] * value(text.charAt(i));
        }
        int rest = sum % 11;
        return rest == 10 ? 'X' : (char) ('0' + rest);
    }

    private static int value(char c) {
        if (c >= '0' && c <= '9') {
            return c - '0';
        }
        int letter = LETTERS.indexOf(c);
        return letter < 0 ? -1 : VALUES.charAt(letter) - '0';
    }
}
