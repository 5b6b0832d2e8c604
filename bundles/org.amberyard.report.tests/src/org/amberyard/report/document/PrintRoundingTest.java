package org.amberyard.report.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class PrintRoundingTest {

    @Test
    void halfAUnitGoesUpOnBothSidesOfZero() {
        assertEquals(new BigDecimal("14863"), CellFormat.WHOLE.rounded(14_862.5));
        assertEquals(new BigDecimal("-14863"), CellFormat.WHOLE.rounded(-14_862.5));
        assertEquals(new BigDecimal("0.13"), CellFormat.CENTS.rounded(0.125));
        assertEquals(new BigDecimal("0.123"), CellFormat.PERCENT.rounded(0.1225));
    }

    @Test
    void noiseOfBinaryNumbersDoesNotCount() {
        assertEquals("2.6749999999999994", String.valueOf(2.6749999999999994));
        assertEquals(new BigDecimal("2.68"), CellFormat.CENTS.rounded(2.6749999999999994));
        assertEquals(new BigDecimal("1.01"), CellFormat.CENTS.rounded(100.49999999999999 / 100));
    }

    @Test
    void moneyIsRoundedToTheCentFirst() {
        assertEquals(new BigDecimal("390"), CellFormat.MONEY.rounded(389.4951));
        assertEquals(new BigDecimal("389"), CellFormat.MONEY.rounded(389.4949));
        assertEquals(new BigDecimal("389"), CellFormat.WHOLE.rounded(389.4951), "what is no money is rounded once");
    }

    @Test
    void sumsOfMoneyAreSumsOfCents() {
        assertEquals(List.of(new BigDecimal("1"), new BigDecimal("0")), CellFormat.MONEY.addingUp(List.of(0.2451, 0.2451)),
                "0.25 and 0.25 make 0.50");
        assertEquals(List.of(new BigDecimal("0"), new BigDecimal("0")), CellFormat.WHOLE.addingUp(List.of(0.2451, 0.2451)));
    }
}
