package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.HtmlTexts;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What stands for the same quantity is printed the same in every document. */
class SameFiguresTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static Document grant;
    private static Document memo;
    private static Document letter;
    private static Document appendix;

    @BeforeAll
    static void evaluate() {
        PaperInput in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
        grant = GrantSet.of(in);
        memo = BoardMemo.of(in);
        letter = UtilityLetter.of(in);
        appendix = Appendix.of(in, Progress.NONE);
    }

    private static DataTable table(Document of, String name) {
        return of.tables().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow(() -> new AssertionError(name));
    }

    private static String printed(Document of, String name, String row, String column) {
        DataTable table = table(of, name);
        int at = column(table, column);
        return table.printed(table.rows().stream().filter(r -> table.printed(r, 0).startsWith(row)).findFirst()
                .orElseThrow(() -> new AssertionError(name + " has no row " + row)), at);
    }

    private static int column(DataTable table, String begin) {
        return IntStream.range(0, table.columns().size()).filter(i -> table.columns().get(i).heading().startsWith(begin)).findFirst()
                .orElseThrow(() -> new AssertionError(table.title() + " has no column " + begin));
    }

    private static List<String> column(Document of, String name, String column) {
        DataTable table = table(of, name);
        int at = column(table, column);
        return table.rows().stream().map(r -> table.printed(r, at)).toList();
    }

    /** The figure in a sentence of a document: what the group of the pattern matches, everywhere the same. */
    private static String said(Document of, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(HtmlTexts.words(of));
        assertTrue(matcher.find(), pattern + " in " + of.title());
        String figure = matcher.group(1);
        while (matcher.find()) {
            assertEquals(figure, matcher.group(1), pattern);
        }
        return figure;
    }

    private static void same(String... figures) {
        for (String figure : figures) {
            assertEquals(figures[0], figure);
        }
    }

    @Test
    void grants() {
        DataTable budget = table(grant, "T4a");
        DataTable.Row total = budget.rows().stream().filter(r -> r.kind() == DataTable.Kind.TOTAL).findFirst().orElseThrow();
        BigDecimal own = (BigDecimal) total.cells().get(column(budget, "Match, own cash"));
        BigDecimal all = (BigDecimal) total.cells().get(column(budget, "Total"));
        same(printed(memo, "Budget", "Total", "Grants").replace("−", ""), printed(grant, "T5b", "Total", "Programmes"),
                printed(grant, "T8b", "Budget", "Grants"), said(grant, "programmes pay ([0-9,]+[0-9])"),
                CellFormat.WHOLE.print(all.subtract(own)));
    }

    @Test
    void ownMoneyAndTheCostOfTheProject() {
        same(printed(grant, "T5a", "Own money", "Amount"), printed(grant, "T5b", "Total", "Own money"),
                printed(grant, "T4a", "Total", "Match, own cash"), said(grant, "own money ([0-9,]+[0-9])\\. Applied"),
                said(memo, "commits USD ([0-9,]+[0-9]) of own money"));
        same(printed(grant, "T4a", "Total", "Total"), printed(grant, "T4b", "Total", "Total"),
                printed(grant, "T5a", "Total", "Amount"), printed(grant, "T5b", "Total", "Cost"),
                printed(grant, "T8b", "Budget", "Capital"), said(grant, "The project costs USD ([0-9,]+[0-9])"),
                said(memo, "own money to the project of USD ([0-9,]+[0-9]) \\(money of the years of purchase\\)"),
                column(grant, "T15", "Spent by then").get(23));
    }

    @Test
    void theProgrammeAppliedTo() {
        same(printed(grant, "T5a", "Clean Fleet Fund", "Amount"), printed(grant, "T4a", "Total", "Requested"),
                said(grant, "Applied to: “Clean Fleet Fund” for USD ([0-9,]+[0-9])"),
                said(grant, "A programme pays less, later or nothing The plan counts on “Clean Fleet Fund” for USD ([0-9,]+[0-9]) "),
                said(memo, "The plan counts on “Clean Fleet Fund” for USD ([0-9,]+[0-9]) "),
                said(memo, "accepts “Clean Fleet Fund” for USD ([0-9,]+[0-9])"));
    }

    @Test
    void theBoardDecidesOnEveryPartOfTheMoney() {
        same(printed(grant, "T5a", "Make-ready", "Amount"), said(memo, "and on “Make-ready” for USD ([0-9,]+[0-9]) "),
                said(memo, "and “Make-ready” for USD ([0-9,]+[0-9]); commits"));
        same(printed(grant, "T5a", "Own money", "Amount"), said(memo, "commits USD ([0-9,]+[0-9]) of own money"));
        same(printed(grant, "T4a", "Total", "Total"), said(memo, "of own money to the project of USD ([0-9,]+[0-9])"));
        same("Electric in stages", said(memo, "RESOLVED, that the Board adopts “([^”]+)”"));
    }

    @Test
    void presentCostAboveTheBaseline() {
        String plan = table(memo, "Plans").printed(table(memo, "Plans").rows().get(1), 0);
        BigDecimal above = new BigDecimal(printed(memo, "Plans", plan, "Above").replace(",", ""));
        same(above.movePointLeft(6).setScale(2, RoundingMode.HALF_UP).toPlainString(),
                said(memo, "costs USD ([0-9.]+) million more"), said(grant, "costs USD ([0-9.]+) million more"));
    }

    @Test
    void fuelAndGas() {
        String plan = table(memo, "Plans").printed(table(memo, "Plans").rows().get(1), 0);
        same(printed(memo, "Plans", plan, "Fuel"), said(grant, "Fuel: ([0-9,]+[0-9]) gal"));
        BigDecimal kg = new BigDecimal(printed(grant, "T6c", "Total", "Together").replace(",", ""));
        assertEquals(printed(memo, "Plans", plan, "Greenhouse gas"), CellFormat.WHOLE.print(CellFormat.WHOLE.rounded(kg.doubleValue()
                / 1000)));
        same(printed(grant, "T6d", "Total", "reduced over"), printed(grant, "T7", "Total", "CO2e"));
        same(printed(grant, "T7", "Total", "NOx"), printed(grant, "T8a", "NOx", "Reduced"));
    }

    @Test
    void loadOnTheService() {
        for (String column : List.of("Ports", "Connected power", "Demand of charging", "All ports with", "As planned with")) {
            assertEquals(column(grant, "T17a", column), column(letter, "Load by year", column));
        }
        List<String> last = column(letter, "Load by year", "Demand of charging");
        same(last.get(last.size() - 1), said(letter, "Highest coincident demand of charging as planned, 2040 ([0-9.,]+) kW"));
        List<String> connected = column(letter, "Load by year", "Connected power");
        same(connected.get(connected.size() - 1), said(letter, "Connected load of ports, 2040 ([0-9.,]+) kW"));
    }

    @Test
    void routesOfTheGrantSetAreThoseOfTheAppendix() {
        DataTable routes = table(appendix, "route_outlook");
        int name = column(routes, "Route");
        assertEquals(column(grant, "T16", "Route"), routes.rows().stream().map(r -> routes.printed(r, name)).toList());
    }

    @Test
    void noTableHasTwoColumnsOfOneName() {
        for (Document document : List.of(grant, memo, letter, appendix)) {
            for (DataTable table : document.tables()) {
                List<String> labels = table.columns().stream().map(DataTable.Column::heading).toList();
                assertEquals(labels.stream().distinct().toList(), labels, table.title());
            }
        }
    }
}
