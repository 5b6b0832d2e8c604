package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.amberyard.report.papers.FrozenFigures.Column;
import org.amberyard.report.papers.FrozenFigures.Row;
import org.amberyard.report.papers.FrozenFigures.Table;
import org.junit.jupiter.api.Test;

class TableChangesTest {
    private static final List<Column> COLUMNS = List.of(new Column("Year", "year"), new Column("Item", "text"), new Column("Category", "text"),
            new Column("Quantity", "number"), new Column("Total (USD)", "number"));

    private static Row row(String kind, String cells) {
        return new Row(kind, List.of(cells.split("\\|", -1)));
    }

    private static Table table(List<Column> columns, String... lines) {
        return new Table("T3. Ports", columns, Stream.concat(Arrays.stream(lines).map(l -> row("line", l)),
                Stream.of(row("total", "Total||||9"))).toList());
    }

    private static Table ports(String... lines) {
        return table(COLUMNS, lines);
    }

    private static List<String> changes(Table before, Table now) {
        return TableChanges.of(Map.of("T3", before), Map.of("T3", now));
    }

    private static final Table FROZEN = ports("2027|Ports|hardware|5|100", "2027|Trench|works|1|40", "2030|Ports|hardware|2|60",
            "2030|Trench|works|1|30");

    @Test
    void theSameTableDiffersInNothing() {
        assertEquals(List.of(), changes(FROZEN, FROZEN));
    }

    @Test
    void aCellIsToldOfItsOwnRowThoughTheFirstCellRepeats() {
        assertEquals(List.of("T3. Ports, 2027, Trench, Total (USD): 40 → 41", "T3. Ports, 2030, Ports, Category: hardware → cables"),
                changes(FROZEN, ports("2027|Ports|hardware|5|100", "2027|Trench|works|1|41", "2030|Ports|cables|2|60",
                        "2030|Trench|works|1|30")));
    }

    @Test
    void aRowThatCameOrWentLeavesTheOthersAlone() {
        assertEquals(List.of("T3. Ports, 2027, Ports: the row is gone; it had Category hardware; Quantity 5; Total (USD) 100",
                "T3. Ports, 2030, Meter: the row is new: Category metering; Quantity 1; Total (USD) 7"),
                changes(FROZEN, ports("2027|Trench|works|1|40", "2030|Ports|hardware|2|60", "2030|Meter|metering|1|7",
                        "2030|Trench|works|1|30")));
    }

    @Test
    void aRowThatMovedIsToldAsSuchAndOnlyThatOne() {
        assertEquals(List.of("T3. Ports, 2027, Ports: moved from row 1 to row 4"),
                changes(FROZEN, ports("2027|Trench|works|1|40", "2030|Ports|hardware|2|60", "2030|Trench|works|1|30",
                        "2027|Ports|hardware|5|100")));
        assertEquals(List.of("T3. Ports, 2030, Trench: moved from row 4 to row 1", "T3. Ports, 2030, Trench, Quantity: 1 → 3"),
                changes(FROZEN, ports("2030|Trench|works|3|30", "2027|Ports|hardware|5|100", "2027|Trench|works|1|40",
                        "2030|Ports|hardware|2|60")));
    }

    @Test
    void rowsOfTheSameWordsAreCounted() {
        Table twice = ports("2027|Ports|hardware|5|100", "2027|Ports|hardware|5|70", "2027|Ports|hardware|5|100");
        assertEquals(List.of("T3. Ports, 2027, Ports no. 2, Total (USD): 70 → 80"),
                changes(twice, ports("2027|Ports|hardware|5|100", "2027|Ports|hardware|5|80", "2027|Ports|hardware|5|100")));
        assertEquals(List.of("T3. Ports, 2027, Ports no. 2: the row is gone; it had Category hardware; Quantity 5; Total (USD) 70"),
                changes(twice, ports("2027|Ports|hardware|5|100", "2027|Ports|hardware|5|100")));
    }

    @Test
    void aTotalIsNoLineOfThatName() {
        List<Column> columns = List.of(new Column("Item", "text"), new Column("Total (USD)", "number"));
        Table before = new Table("T4", columns, List.of(row("line", "Total|3"), row("total", "Total|3")));
        Table now = new Table("T4", columns, List.of(row("line", "Total|3"), row("total", "Total|4")));
        assertEquals(List.of("T4, Total no. 2, Total (USD): 3 → 4"), TableChanges.of(Map.of("T4", before), Map.of("T4", now)));
    }

    @Test
    void theNumberOfALineIsNoNameAndNoFigure() {
        List<Column> columns = List.of(new Column("Line", "text"), new Column("Bus", "text"), new Column("Miles", "number"));
        assertEquals(List.of("T3. Ports, B01: the row is gone; it had Line 1; Miles 10", "T3. Ports, B03, Miles: 12 → 13"),
                changes(table(columns, "1|B01|10", "2|B02|11", "3|B03|12"), table(columns, "1|B02|11", "2|B03|13")));
    }

    @Test
    void columnsAndTablesThatCameOrWentAreToldOnce() {
        List<Column> other = List.of(new Column("Year", "year"), new Column("Item", "text"), new Column("Category", "text"),
                new Column("Total (USD)", "number"), new Column("Quote", "text"));
        assertEquals(List.of("T3. Ports: column “Quantity” is gone", "T3. Ports: column “Quote” is new",
                "T3. Ports, 2027, Ports, Total (USD): 100 → 101"),
                changes(ports("2027|Ports|hardware|5|100"), new Table("T3. Ports", other, List.of(row("line",
                        "2027|Ports|hardware|101|Q-1"), row("total", "Total|||9|")))));
        assertEquals(List.of("T3. Ports: the table is gone; it had 5 rows"), TableChanges.of(Map.of("T3", FROZEN), Map.of()));
        assertEquals(List.of("T3. Ports: the table is new, with 5 rows"), TableChanges.of(Map.of(), Map.of("T3", FROZEN)));
    }
}
