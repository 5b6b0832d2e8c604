package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.model.funding.AwardStatus;
import org.amberyard.model.funding.MatchBase;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.study.Study;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.DocumentFormat;
import org.amberyard.study.FigureName;
import org.amberyard.study.NarrativeText;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Narratives say what the tables print. */
class NarrativePapersTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static PaperInput in;
    private static NarrativeFigures figures;
    private static List<DataTable> tables;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
        figures = new NarrativeFigures(in);
        tables = GrantSet.of(in).tables();
    }

    private static String filled(String text) {
        return new NarrativeFilling(NarrativeText.of(text), figures).printed();
    }

    @Test
    void everyFigureIsFoundAndStandsInTheTableThatItNames() {
        for (FigureName name : FigureName.values()) {
            PrintedFigure figure = figures.of(name).orElseThrow(() -> new AssertionError(name));
            DataTable table = tables.stream().filter(t -> t.name().equals(figure.table())).findFirst().orElseThrow();
            boolean counted = List.of(FigureName.BUSES_REPLACED, FigureName.ELECTRIC_BUSES, FigureName.ROUTES, FigureName.ELECTRIC_ROUTES)
                    .contains(name);
            boolean printed = table.rows().stream().anyMatch(r -> IntStream.range(0, table.columns().size())
                    .anyMatch(c -> table.printed(r, c).replace(" %", "").equals(figure.number())));
            assertTrue(printed || counted, name + ": " + figure);
        }
    }

    @Test
    void figuresAreThoseOfTheirCells() {
        DataTable budget = table("T4a");
        DataTable.Row total = budget.rows().stream().filter(r -> r.kind() == DataTable.Kind.TOTAL).findFirst().orElseThrow();
        assertEquals("USD\u00a0" + budget.printed(total, ExamplePapers.column(budget, "Total")), filled("{total project cost}"));
        DataTable air = table("T6b");
        DataTable.Row nox = air.rows().get(0);
        assertEquals(air.printed(nox, 3) + "\u00a0short tons", filled("{NOx reduced a year}"));
        assertEquals(air.printed(nox, 3), filled("{NOx reduced a year, number only}"));
        DataTable match = table("T5c");
        assertEquals(match.printed(match.rows().get(0), ExamplePapers.column(match, "Match provided, share")), filled("{match provided, share}")
                .replace('\u00a0', ' '));
        assertEquals("25.0 %", filled("{match required, share}").replace('\u00a0', ' '));
        assertEquals(String.valueOf(table("T1a").rows().size()), filled("{buses replaced}"));
        assertTrue(filled("{mean age of the fleet}").endsWith("\u00a0years"), filled("{mean age of the fleet}"));
    }

    /** A table that repeats figures of emissions says of them what their own table says. */
    @Test
    void figuresThatAreNotForSubmissionAreMarkedWhereTheyAreListed() {
        assertTrue(figures.of(FigureName.NOX_YEAR).orElseThrow().mark().startsWith("Not for submission"));
        assertEquals("", figures.of(FigureName.PROJECT_COST).orElseThrow().mark());
        assertEquals(table("T6b").mark(), table("N1").mark());
        assertFalse(table("N1").mark().isEmpty());
    }

    /** Where a figure stands: the line that a column of words tells, the column by its whole heading. */
    private static String cell(String table, String words, String line, String heading) {
        DataTable of = table(table);
        int told = ExamplePapers.column(of, words);
        DataTable.Row row = of.rows().stream().filter(r -> of.printed(r, told).equals(line)).findFirst().orElseThrow(() -> new AssertionError(
                table + " has no line " + line));
        int column = IntStream.range(0, of.columns().size()).filter(c -> of.columns().get(c).heading().replace('\u00a0', ' ').equals(heading))
                .findFirst().orElseThrow(() -> new AssertionError(table + " has no column " + heading));
        return of.printed(row, column);
    }

    private static String number(FigureName name) {
        return figures.of(name).orElseThrow().number();
    }

    @Test
    void sharesAndMatchAreThoseOfTheProgrammeAndOfOwnMoney() {
        String fund = "Clean Fleet Fund";
        assertEquals(cell("T5a", "Source", fund, "Share of the cost"), number(FigureName.REQUESTED_SHARE) + " %");
        assertEquals(cell("T5a", "Source", "Own money, cash", "Share of the cost"), number(FigureName.OWN_SHARE) + " %");
        assertEquals(cell("T5c", "Programme", fund, "Comes to (USD)"), number(FigureName.MATCH_BASE));
        assertEquals(cell("T5c", "Programme", fund, "Match asked for (USD)"), number(FigureName.MATCH_REQUIRED));
        assertEquals(cell("T5c", "Programme", fund, "Match asked for, share"), number(FigureName.MATCH_REQUIRED_SHARE) + " %");
        assertEquals(cell("T5c", "Programme", fund, "Match provided (USD)"), number(FigureName.MATCH));
        assertEquals(cell("T5c", "Programme", fund, "Match provided, share"), number(FigureName.MATCH_SHARE) + " %");
    }

    @Test
    void tonsAndWhatTheyCostAreThoseOfTheirPollutant() {
        Map<String, FigureName> year = Map.of("NOx", FigureName.NOX_YEAR, "PM2.5", FigureName.PM25_YEAR, "HC", FigureName.HC_YEAR, "CO",
                FigureName.CO_YEAR, "CO2", FigureName.CO2_YEAR, "CO2e", FigureName.CO2E_YEAR);
        year.forEach((pollutant, name) -> assertEquals(cell("T6b", "Pollutant", pollutant, "Reduced (short tons)"), number(name), pollutant));
        assertEquals(cell("T8a", "NOx, remaining life", "capital"), number(FigureName.NOX_TON));
        assertEquals(cell("T8a", "NOx, remaining life", "grant only"), number(FigureName.NOX_GRANT_TON));
        assertEquals(cell("T8a", "PM2.5, remaining life", "capital"), number(FigureName.PM25_TON));
        assertEquals(cell("T8a", "CO2, remaining life", "capital"), number(FigureName.CO2_TON));
        assertEquals(cell("T8a", "CO2, remaining life", "grant only"), number(FigureName.CO2_GRANT_TON));
    }

    /** The cost of a ton by a measure and whose money it is. */
    private static String cell(String table, String measure, String money) {
        DataTable of = table(table);
        int told = ExamplePapers.column(of, "Money");
        return of.rows().stream().filter(r -> of.printed(r, 0).equals(measure) && of.printed(r, told).equals(money)).findFirst().map(r -> of
                .printed(r, ExamplePapers.column(of, "Cost of a short ton (USD)"))).orElseThrow();
    }

    @Test
    void datesAndTheYardAreThoseOfTheirLines() {
        assertEquals(cell("T9", "Milestone", "Award: “Clean Fleet Fund”", "Date in the study"), number(FigureName.AWARD_DATE));
        assertEquals(cell("T9", "Milestone", "Close-out of the whole plan, not before", "Date in the study"), number(FigureName.COMPLETION));
        assertEquals(cell("T17a", "Year", "2040", "Ports"), number(FigureName.PORTS));
        assertEquals(cell("T17a", "Year", "2040", "Connected power (kW)"), number(FigureName.CONNECTED));
        assertEquals(cell("T17a", "Year", "2040", "Demand of charging as planned (kW)"), number(FigureName.MANAGED_DEMAND));
        assertEquals(cell("T17a", "Year", "2040", "Transformer (kVA)"), number(FigureName.TRANSFORMER));
        assertEquals(cell("T17b", "Used by the study", "yes", "Bill (USD)"), number(FigureName.ELECTRIC_BILL));
    }

    @Test
    void programmesWhoseNamesBeginAlikeAreNotMixedUp() {
        Study study = EXAMPLE.study();
        Programme fund = study.getProgrammes().get(0);
        Programme other = study.getProgrammes().stream().filter(p -> p.getName().equals("Make-ready")).findFirst().orElseThrow();
        other.setName(fund.getName() + " of the utility");
        other.setAwardDate("2026-05-04");
        study.getProgrammes().move(0, other);
        PaperInput alike = EXAMPLE.in(study, new PaperChoices(PaperChoices.STANDARD.tables(), Optional.of("Clean Fleet Fund"), false, Optional
                .empty()));
        NarrativeFigures read = new NarrativeFigures(alike);
        List.of(FigureName.REQUESTED, FigureName.REQUESTED_SHARE, FigureName.MATCH_BASE, FigureName.MATCH_REQUIRED, FigureName.MATCH,
                FigureName.MATCH_SHARE, FigureName.AWARD_DATE).forEach(
                        name -> assertEquals(number(name), read.of(name).orElseThrow()
                                .number(), name.words()));
        DataTable sources = GrantTable.T5.of(alike).get(0);
        assertEquals(List.of("Clean Fleet Fund of the utility", "Clean Fleet Fund", "Own money, cash"), sources.rows().stream().filter(r -> r
                .kind() == DataTable.Kind.LINE).map(r -> sources.printed(r, 0)).toList(), "the longer name stands first");
    }

    private static DataTable table(String name) {
        return tables.stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void unknownNamesStayAndAreToldInADocument() {
        Study study = EXAMPLE.study();
        study.getNarratives().get(0).setText("{buses replacd}");
        Document document = GrantSet.of(EXAMPLE.in(study, ExamplePapers.tables(GrantTable.T4)));
        List<Block> need = document.sections().stream().filter(s -> s.heading().equals("Narrative: Need")).findFirst().orElseThrow().blocks();
        assertEquals(List.of(new Block.Paragraph("{buses replacd}"), new Block.Caution("Not for submission: “{buses replacd}” names no figure. "
                + "Did you mean “buses replaced”?")), need);
        assertFalse(GrantSet.of(in).sections().stream().flatMap(s -> s.blocks().stream()).anyMatch(Block.Caution.class::isInstance));
    }

    @Test
    void aPlanWithoutAFigureSaysSo() {
        NarrativeFilling like = new NarrativeFilling(NarrativeText.of("{grant share of the cost} of {fuel of the fleet a year}"), new NarrativeFigures(
                new PaperInput(in.result(), in.study().baseline(), in.facts(), PaperChoices.STANDARD)));
        assertTrue(like.printed().startsWith("[no figure for grant share of the cost] of "), like.printed());
        assertEquals(List.of("There is no figure for grant share of the cost in this plan."), like.faults());
    }

    @Test
    void whatHasChangedSinceATextWasGivenOutIsTold() {
        NarrativeText text = NarrativeText.of("{buses replaced} for {total project cost}");
        Map<String, String> givenOut = new NarrativeFilling(text, figures).givenOut();
        assertEquals(List.of("buses replaced", "total project cost"), List.copyOf(givenOut.keySet()));
        assertEquals(List.of(), new NarrativeFilling(text, figures).changes(givenOut));
        Study study = EXAMPLE.study();
        study.getPlans().get(ExamplePapers.ELECTRIC).getReplacements().removeIf(r -> r.getBus().getName().equals("B18"));
        NarrativeFilling later = new NarrativeFilling(text, new NarrativeFigures(EXAMPLE.in(study, PaperChoices.STANDARD)));
        List<String> changes = later.changes(givenOut).stream().map(NarrativeFilling.Change::words).toList();
        assertEquals(1, changes.size(), "the bus is replaced all the same, by the rule of its type");
        assertTrue(changes.get(0).startsWith("total project cost: USD\u00a05,133,021 → USD\u00a04,"), changes.toString());
    }

    @Test
    void aDocxHasTheTextsWithTheFiguresOfItsTables() throws Exception {
        Document document = GrantSet.of(new PaperInput(in.result(), in.planIndex(), in.facts(), ExamplePapers.tables(GrantTable.T4)));
        try (XWPFDocument read = new XWPFDocument(new ByteArrayInputStream(DocumentFormat.DOCX.write(document)))) {
            String paragraphs = read.getParagraphs().stream().map(XWPFParagraph::getText).collect(Collectors.joining("\n"));
            DataTable budget = document.tables().stream().filter(t -> t.name().equals("T4a")).findFirst().orElseThrow();
            DataTable.Row total = budget.rows().stream().filter(r -> r.kind() == DataTable.Kind.TOTAL).findFirst().orElseThrow();
            assertTrue(paragraphs.contains("Narrative: Cost and match"), paragraphs);
            assertTrue(paragraphs.replace('\u00a0', ' ').contains("The project costs USD " + budget.printed(total, ExamplePapers.column(budget, "Total"))
                    + ". The district asks for USD " + budget.printed(total, 1)), paragraphs);
        }
    }

    @Test
    void aMatchIsTheShareOfWhatTheNoticeTakesItOf() {
        ProgrammeMatch covered = ProgrammeMatch.all(in, ProjectMoney.of(in)).get(0);
        BigDecimal award = ProjectMoney.of(in).paidBy("Clean Fleet Fund");
        assertEquals(covered.base().subtract(award), covered.provided(), "nothing federal is on these lines");
        Study study = EXAMPLE.study();
        study.getProgrammes().get(0).setMatchBase(MatchBase.AWARD);
        PaperInput other = EXAMPLE.in(study, PaperChoices.STANDARD);
        ProgrammeMatch ofAward = ProgrammeMatch.all(other, ProjectMoney.of(other)).get(0);
        assertEquals(award, ofAward.base());
        assertEquals(0.25 * award.doubleValue(), ofAward.asked().orElseThrow(), 1e-6);
    }

    @Test
    void theBoardAcceptsWhatIsCommittedAndAppliesForTheRest() {
        assertTrue(BoardDecision.of(in).blocks().toString().contains("; accepts “Clean Fleet Fund” for USD 651,401 and “Make-ready”"));
        Study study = EXAMPLE.study();
        study.getProgrammes().get(0).setStatus(AwardStatus.APPLIED);
        String decision = BoardDecision.of(EXAMPLE.in(study, PaperChoices.STANDARD)).blocks().toString();
        assertTrue(decision.contains("; authorizes an application to “Clean Fleet Fund” for USD 651,401; accepts “Make-ready”"), decision);
    }

    @Test
    void aMatchThatNobodyHasCommittedIsARisk() {
        assertTrue(RiskPapers.all(in).stream().noneMatch(r -> r.what().startsWith("The match")));
        Study study = EXAMPLE.study();
        study.getPlans().get(ExamplePapers.ELECTRIC).setOwnStatus(AwardStatus.PLANNED);
        List<String> risks = RiskPapers.all(EXAMPLE.in(study, PaperChoices.STANDARD)).stream().map(RiskPapers.Risk::sentence).toList();
        assertTrue(risks.stream().anyMatch(r -> r.startsWith("The match of “Clean Fleet Fund” is not secured. It asks for USD ")
                && r.contains("own money (planned: Resolution 26-014")), risks.toString());
        assertTrue(List.of("committed", "Notice of award").stream().allMatch(w -> table("T5a").rows().toString().contains(w)));
    }
}
