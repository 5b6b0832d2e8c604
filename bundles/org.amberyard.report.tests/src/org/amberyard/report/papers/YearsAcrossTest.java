package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;
import org.junit.jupiter.api.Test;

class YearsAcrossTest {
    /** A figure of a year. */
    private record Amount(int year, String of, double amount) {
    }

    private static List<List<Object>> cells(DataTable table) {
        return table.rows().stream().map(r -> IntStream.range(0, r.cells().size()).mapToObj(c -> (Object) table.printed(r, c)).toList()).toList();
    }

    /** Seven years in tables of five and two; energy has nothing in 2027, and what has nothing at all has no row. */
    @Test
    void yearsAreColumnsFiveToATableAndRowsAreInTheirOrder() {
        List<Amount> amounts = IntStream.rangeClosed(2026, 2032).boxed().flatMap(y -> List.of(new Amount(y, "Energy", y), new Amount(y, "Buses",
                10 * y)).stream()).filter(a -> a.year() != 2027 || a.of().equals("Buses")).toList();
        DataTable whole = new TableBuilder<Amount>("C", "Cost").year("Year", a -> OptionalInt.of(a.year())).text("Category", Amount::of)
                .number("Cost", "USD", CellFormat.decimals(0), Amount::amount).of(amounts);
        Block.Condensed across = (Block.Condensed) YearsAcross.of(whole, List.of(List.of("Buses"), List.of("Nothing"), List.of("Energy")));
        assertSame(whole, across.table());
        assertEquals(List.of("Cost: 2026 to 2030", "Cost: 2031 to 2032"), across.onPaper().stream().map(DataTable::title).toList());
        DataTable first = across.onPaper().get(0);
        assertEquals(List.of("Category", "2026", "2027", "2028", "2029", "2030"), first.columns().stream().map(DataTable.Column::label).toList());
        assertEquals(Arrays.asList("", "USD", "USD", "USD", "USD", "USD"), first.columns().stream().map(DataTable.Column::unit).toList());
        assertEquals(List.of(List.of("Buses", "20,260", "20,270", "20,280", "20,290", "20,300"), List.of("Energy", "2,026", "–", "2,028", "2,029",
                "2,030")), cells(first));
        assertEquals(List.of(List.of("Buses", "20,310", "20,320"), List.of("Energy", "2,031", "2,032")), cells(across.onPaper().get(1)));
    }
}
