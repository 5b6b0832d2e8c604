package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1234567|USD 1.23 million", "12345678|USD 12.3 million",
        "1234567890|USD 1,230 million", "999600|USD 1.00 million", "45612|USD 45,600", "850.4|USD 850", "12.34|USD 12.3",
        "1.5|USD 1.50", "0|USD 0.00", "-45612|−USD 45,600"})
    void moneyIsRoundedToThreeDigits(double amount, String expected) {
        assertEquals(expected, Figures.money("USD", amount));
    }

    @Test
    void wholeNumbersHaveNoNegativeZero() {
        assertEquals("1,234", Figures.whole(1234.4));
        assertEquals("−9", Figures.whole(-8.6));
        assertEquals("0", Figures.whole(-0.3));
    }

    @Test
    void axesUseOneScaleAndATrueMinus() {
        assertEquals("1.5M", MoneyTickFormat.reaching(4e6).format(1_500_000));
        assertEquals("−500k", MoneyTickFormat.reaching(9e5).format(-500_000));
        assertEquals("0", MoneyTickFormat.reaching(9e5).format(0));
        assertEquals("800", MoneyTickFormat.reaching(900).format(800));
    }

    @Test
    void textThatLooksLikeAFormulaIsDisarmedAndNumbersAreNot() {
        assertEquals("'=SUM(A1),-5,'-5,\"a,b\",\"say \"\"hi\"\"\",,0.1\r\n",
                DelimitedText.CSV.line(Arrays.asList("=SUM(A1)", -5.0, "-5", "a,b", "say \"hi\"", null, 0.1)));
        assertEquals("a\tb,c\r\n", DelimitedText.TSV.line(List.of("a", "b,c")));
    }

    @Test
    void figuresAreWrittenInFullWithADot() {
        assertEquals("123456789.25,0.00001,0,\r\n",
                DelimitedText.CSV.line(List.of(123456789.25, 1e-5, -0.0, Double.NaN)));
    }
}
