package org.amberyard.model.meta;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhraseTest {

    @ParameterizedTest
    @CsvSource({"Top speed, top speed", "VIN, VIN", "AC acceptance, AC acceptance", "Diesel CO2, diesel CO2", "'', ''"})
    void labelsFitIntoSentences(String label, String inside) {
        assertEquals(inside, Phrase.inside(label));
    }

    @Test
    void sentencesBeginLarge() {
        assertEquals("Bus B01", Phrase.start("bus B01"));
        assertEquals("", Phrase.start(""));
    }

    @ParameterizedTest
    @CsvSource({"0.65, 0.65", "8200, 8200", "1e-4, 0.0001", "-0.0, 0", "1e7, 10000000", "NaN, NaN"})
    void numbersArePlain(double number, String text) {
        assertEquals(text, PlainNumber.text(number));
    }
}
