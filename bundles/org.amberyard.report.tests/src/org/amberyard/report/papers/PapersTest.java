package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.ServiceUpgrade;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.WorkOrder;
import org.amberyard.model.study.Study;
import org.amberyard.core.plan.BudgetYear;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.DocumentFormat;
import org.amberyard.report.document.Paper;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PapersTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static final int MEMO_PAGES = 2;
    /** Half a unit for each of a year's purchases and parts, of which there are at most 19. */
    private static final double MOST_ROUNDING = 0.5 * 19;
    private static PaperInput in;

    @TempDir
    Path folder;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
    }

    @Test
    void theMemoHasTwoPagesOnEachPaperAndItsBudgetIsThatOfTheResults() throws Exception {
        Document memo = BoardMemo.of(in);
        for (Paper paper : List.of(Paper.LETTER, Paper.A4)) {
            try (PDDocument pdf = Loader.loadPDF(DocumentFormat.PDF.write(memo.on(paper)))) {
                assertEquals(MEMO_PAGES, pdf.getNumberOfPages(), paper.label());
            }
        }
        DataTable budget = memo.tables().get(1);
        int appropriated = budget.columns().stream().map(DataTable.Column::label).toList().indexOf("To appropriate");
        for (int year = 0; year < in.study().years(); year++) {
            BudgetYear of = in.plan().finance().budget().get(year);
            assertEquals(of.appropriation(), ((BigDecimal) budget.rows().get(year).cells().get(appropriated)).doubleValue(),
                    MOST_ROUNDING);
        }
        assertEquals("1,264,622", memo.tables().get(0).printed(memo.tables().get(0).rows().get(1), 2));
    }

    private static DataTable table(Document of, String name) {
        return of.tables().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow(() -> new AssertionError(name));
    }

    private static String value(DataTable table, String item) {
        return table.rows().stream().filter(r -> r.cells().get(0).toString().startsWith(item)).map(r -> table.printed(r, 1)).findFirst()
                .orElseThrow(() -> new AssertionError(item));
    }

    @Test
    void theLetterHasWhatAUtilityAsksFor() {
        Document letter = UtilityLetter.of(in);
        DataTable items = table(letter, "Load letter");
        assertEquals("Ostrick Vale Regional School District", value(items, "Customer"));
        assertEquals("Maren Oldcastle, Director of Transportation", value(items, "Contact"));
        assertEquals("KE-4471-0093", value(items, "Account number"));
        assertEquals("MD-20817", value(items, "Meter number"));
        assertEquals("2026-01-15", value(items, "Date of the existing peak"));
        assertEquals("2027-01-01", value(items, "Requested in-service date"));
        assertEquals("160.0", value(items, "Set-point of load management"));
        List<ResultLine> found = ResultLine.of(in, "load_letter");
        for (String demand : List.of("Connected load of ports", "Highest coincident demand of charging without",
                "Highest coincident demand of charging as planned", "Service voltage", "Existing peak demand")) {
            assertEquals(found.stream().filter(l -> l.text("item").startsWith(demand)).findFirst().orElseThrow().text("value"),
                    value(items, demand));
        }
        assertEquals(in.study().years(), table(letter, "Load by year").rows().size());
    }

    /** The first ports and a larger service were bought in 2025 and stand in the base year, 2026. */
    @Test
    void theLetterDoesNotAskAgainForWhatStands() {
        Study study = EXAMPLE.study();
        study.getPlans().get(ExamplePapers.ELECTRIC).getPortPurchases().get(0).setYear(2025);
        orderLarger(study, 0);
        PaperInput later = EXAMPLE.in(study, PaperChoices.STANDARD);
        List<String> items = ResultLine.of(later, "load_letter").stream().map(l -> l.text("item")).toList();
        assertFalse(items.contains("Requested in service, 2025") || items.contains("Larger service, 2025"), items.toString());
        assertTrue(items.contains("Requested in service, 2028"), items.toString());
        DataTable table = table(UtilityLetter.of(later), "Load letter");
        assertEquals("2028-01-01", value(table, "Requested in-service date"));
        assertEquals("900", value(table, "Transformer today"));
        assertEquals("1600", value(table, "Main breaker today"));
    }

    /** A service of 900 kVA and 1600 A, ordered in 2025, the year before the base year. */
    private static void orderLarger(Study study, int leadMonths) {
        ServiceUpgrade larger = DepotFactory.eINSTANCE.createServiceUpgrade();
        larger.setName("Larger service");
        larger.setTransformerKva(900);
        larger.setBreakerA(1600);
        larger.setLeadMonths(leadMonths);
        study.getDepot().getUpgrades().add(larger);
        WorkOrder order = PlansFactory.eINSTANCE.createWorkOrder();
        order.setYear(2025);
        order.setWork(larger);
        study.getPlans().get(ExamplePapers.ELECTRIC).getWorkOrders().add(order);
    }

    @Test
    void anUpgradeThatIsOrderedButNotYetInServiceIsInTheLetter() {
        Study study = EXAMPLE.study();
        orderLarger(study, 30);
        PaperInput later = EXAMPLE.in(study, PaperChoices.STANDARD);
        assertEquals("900 kVA, 1600 A", ResultLine.of(later, "load_letter").stream().filter(l -> l.text("item").equals("Larger service, 2028"))
                .map(l -> l.text("value")).findFirst().orElseThrow());
        Document letter = UtilityLetter.of(later);
        assertEquals("300", value(table(letter, "Load letter"), "Transformer today"));
        DataTable phases = table(letter, "Phases");
        DataTable.Row row = phases.rows().stream().filter(r -> phases.printed(r, 0).equals("2028-01-01")).findFirst().orElseThrow();
        assertTrue(phases.printed(row, 1).endsWith("service of 900 kVA and 1600 A, ordered in 2025"), phases.printed(row, 1));
    }

    /** A mark that stands in no cell of a table is not explained below it. */
    @Test
    void theMarkOfWhatIsToBeFilledInIsExplainedWhereItStands() {
        Document letter = UtilityLetter.of(in);
        assertFalse(table(letter, "Load letter").notes().contains(DataTable.TO_FILL));
        assertFalse(table(letter, "Equipment").notes().contains(DataTable.TO_FILL));
        Study study = EXAMPLE.study();
        study.getDepot().setMeterNumber("");
        study.getDepot().getPortTypes().forEach(p -> p.setSupplyPhases(0));
        Document gaps = UtilityLetter.of(EXAMPLE.in(study, PaperChoices.STANDARD));
        assertTrue(table(gaps, "Load letter").notes().contains(DataTable.TO_FILL));
        assertTrue(table(gaps, "Equipment").notes().contains(DataTable.TO_FILL));
    }

    @Test
    void theLetterSaysWhichMonthsStandForWinterAndSummer() {
        assertTrue(table(UtilityLetter.of(in), "Seasons").notes().stream().anyMatch(n -> n.startsWith("Winter and summer are the five coldest")));
    }

    @Test
    void yearsThatAreThoseOfTheBaseYearAreSaidSo() {
        String settings = RegisterPapers.sources(in).get(0).rows().stream().map(r -> r.cells().toString())
                .filter(r -> r.contains("Price year")).findFirst().orElseThrow();
        assertTrue(settings.contains("Price year the base year; Weekdays as in the base year;"), settings);
    }

    /** The building's peak is stated as 86.7 kW, of its load through the days the highest is a little less. */
    @Test
    void bothMeasuresOfTheLoadAgreeWithoutPorts() {
        DataTable years = table(UtilityLetter.of(in), "Load by year");
        assertEquals(List.of("0", "91.3", "91.3"), IntStream.of(1, 4, 5).mapToObj(c -> years.printed(years.rows().get(0), c)).toList());
    }

    @Test
    void theLetterHasEquipmentPhasesAndBothSeasons() {
        Document letter = UtilityLetter.of(in);
        DataTable equipment = table(letter, "Equipment");
        assertEquals(List.of("AC 19.2 kW", "alternating", "14", "19.2", "1", "240", "1.00", "80.0", "268.8", "268.8"),
                IntStream.range(0, 10).mapToObj(c -> equipment.printed(equipment.rows().get(0), c)).toList());
        DataTable phases = table(letter, "Phases");
        assertEquals("2027-01-01", phases.printed(phases.rows().get(0), 0));
        assertEquals("5 × AC 19.2 kW", phases.printed(phases.rows().get(0), 1));
        DataTable seasons = table(letter, "Seasons");
        assertEquals(24, seasons.rows().size());
        assertEquals(7, seasons.columns().size());
        assertTrue(seasons.notes().get(0).startsWith("Winter, coldest day of "), seasons.notes().toString());
        assertTrue(seasons.notes().get(1).startsWith("Summer, hottest day"), seasons.notes().toString());
        double most = in.plan().service().get(in.study().years() - 1).demandKw();
        assertTrue(seasons.rows().stream().allMatch(r -> ((BigDecimal) r.cells().get(2)).doubleValue() <= most + 0.05));
    }

    @Test
    void theLetterSaysWhichPowerFactorIsUsedWhereAndThatVoltagesDiffer() {
        String notes = table(UtilityLetter.of(in), "Equipment").notes().toString();
        assertTrue(notes.contains("are at the power factor of the equipment; kVA of the load with the building, in tables 1 and 4, are at "
                + "the power factor of 0.95"), notes);
        assertTrue(notes.contains("AC 19.2 kW: the equipment is for one phase, 240 V, the service is of 480 V, three phases. A transformer, "
                + "or a panel of 208 or 240 V"), notes);
        Study study = EXAMPLE.study();
        study.getDepot().getPortTypes().forEach(p -> {
            p.setSupplyVoltageV(277);
            p.setSupplyPowerFactor(0.96);
        });
        DataTable equipment = table(UtilityLetter.of(EXAMPLE.in(study, PaperChoices.STANDARD)), "Equipment");
        assertFalse(equipment.notes().toString().contains("A transformer"), "277 V are the 480 V to neutral");
        assertEquals("280.0", equipment.printed(equipment.rows().get(0), 9), "268.8 kW at 0.96");
    }

    @Test
    void theFullBuildOutHasWholePorts() {
        DataTable items = table(UtilityLetter.of(in), "Load letter");
        String what = items.rows().stream().map(r -> r.cells().get(0).toString()).filter(w -> w.startsWith("Full build-out")).findFirst()
                .orElseThrow();
        assertTrue(what.endsWith("rounded up to 26 ports"), "14 ports for 13 buses make 25.8 for 24: " + what);
        assertEquals("499.2", value(items, "Full build-out"), "26 of 19.2 kW");
    }

    @Test
    void figuresAndTablesOfTheLetterAreNumberedWithoutAGap() {
        PaperInput engines = new PaperInput(in.result(), in.study().baseline(), in.facts(), in.choices());
        for (Document letter : List.of(UtilityLetter.of(in), UtilityLetter.of(engines))) {
            List<Block.Figure> figures = figures(letter);
            for (int i = 0; i < figures.size(); i++) {
                assertTrue(figures.get(i).caption().startsWith("Figure " + (i + 1) + ". "), figures.get(i).caption());
            }
            List<DataTable> tables = letter.tables();
            for (int i = 0; i < tables.size(); i++) {
                assertTrue(tables.get(i).title().startsWith("Table " + (i + 1) + ". "), tables.get(i).title());
            }
        }
        assertEquals(4, figures(UtilityLetter.of(in)).size());
    }

    private static List<Block.Figure> figures(Document of) {
        return of.sections().stream().flatMap(s -> s.blocks().stream()).filter(Block.Figure.class::isInstance).map(Block.Figure.class::cast)
                .toList();
    }

    @Test
    void whatTheStudyDoesNotHoldIsABlankWithAMark() {
        Study study = EXAMPLE.study();
        study.setApplicant(null);
        study.getDepot().setMeterNumber(" ");
        study.getDepot().setLoadManagementKw(0);
        study.getDepot().getPortTypes().forEach(p -> p.setSupplyVoltageV(0));
        PaperInput bare = EXAMPLE.in(study, PaperChoices.STANDARD);
        Document letter = UtilityLetter.of(bare);
        DataTable items = table(letter, "Load letter");
        assertEquals(ApplicantFacts.BLANK, value(items, "Customer"));
        assertEquals(ApplicantFacts.BLANK, value(items, "Meter number"));
        assertEquals(ApplicantFacts.BLANK, value(items, "Set-point of load management"));
        DataTable equipment = table(letter, "Equipment");
        assertEquals("†", equipment.printed(equipment.rows().get(0), 5));
        assertEquals("†", equipment.printed(equipment.rows().get(0), 7));
        assertTrue(bare.documentFacts().contains(new Document.Fact("Applicant", ApplicantFacts.BLANK)));
        assertTrue(in.running("Memo").contains("Ostrick Vale Regional School District"));
    }

    @Test
    void theCalendarHasEveryTaskThatFallsDueInTheFirstYear() {
        Document calendar = ShopPaper.of(in);
        long due = in.plan().upkeep().stream().filter(u -> u.record().year() == 0).mapToLong(u -> u.calendar().due().size()).sum();
        long printed = calendar.tables().stream().skip(2).flatMap(t -> t.rows().stream()).filter(r -> r.kind() == DataTable.Kind.LINE).count();
        assertEquals(due, printed);
        assertTrue(due > 100);
    }

    @Test
    void theAppendixHoldsEveryInputAndEveryTableOfThePlan() {
        Document appendix = Appendix.of(in, Progress.NONE);
        DataTable inputs = appendix.tables().get(appendix.tables().size() - 1);
        assertEquals(in.facts().inputs().rows().size(), inputs.rows().size());
        DataTable years = appendix.tables().stream().filter(t -> t.name().equals("vehicle_years")).findFirst().orElseThrow();
        assertEquals(in.plan().fleet().years().size(), years.rows().size());
    }

    @Test
    void documentsAreWrittenTwiceTheSameAllOrNone() throws Exception {
        DocumentFolder.Wanted wanted = new DocumentFolder.Wanted(Set.of(DocumentKind.UTILITY, DocumentKind.CASH_FLOW),
                Set.of(DocumentFormat.values()));
        List<Path> first = DocumentFolder.write(in, wanted, folder.resolve("first"), Progress.NONE);
        List<Path> second = DocumentFolder.write(in, wanted, folder.resolve("second"), Progress.NONE);
        assertEquals(DocumentFormat.values().length + 1, first.size(), "the letter in every format, and the workbook");
        for (int i = 0; i < first.size(); i++) {
            assertArrayEquals(Files.readAllBytes(first.get(i)), Files.readAllBytes(second.get(i)), first.get(i).toString());
        }
        Path third = folder.resolve("third");
        assertThrows(CancellationException.class, () -> DocumentFolder.write(in, wanted, third, share -> {
            if (share > 0.3) {
                throw new CancellationException();
            }
        }));
        try (Stream<Path> left = Files.list(third)) {
            assertEquals(0, left.count());
        }
    }

    @Test
    void aDateIsPrintedOnlyWhereItIsAsked() {
        assertFalse(in.documentFacts().stream().anyMatch(f -> f.label().equals("Evaluated")));
        assertTrue(in.documentFacts().contains(new Document.Fact("Date", ApplicantFacts.BLANK)));
        PaperChoices dated = new PaperChoices(List.of(), Optional.empty(), false, Optional.of("2026-08-31"));
        PaperInput of = new PaperInput(in.result(), in.planIndex(), in.facts(), dated);
        assertTrue(of.documentFacts().contains(new Document.Fact("Evaluated", "2026-08-31")));
        assertTrue(of.running("Memo").endsWith("2026-08-31"));
    }
}
