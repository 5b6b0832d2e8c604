package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.DocumentFormat;
import org.amberyard.report.document.Paper;
import org.amberyard.report.document.Section;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class BoardMemoTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static final int CHEAPEST = 2;
    /** Width at which charts of documents are drawn. */
    private static final int WIDTH = 780;
    private static PaperInput in;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
    }

    private static String text(Document of) {
        return of.sections().stream().flatMap(s -> s.blocks().stream()).filter(b -> !(b instanceof Block.Figure)).map(Object::toString)
                .collect(Collectors.joining(" ")).replace('\u00a0', ' ');
    }

    private static String risks(PaperInput of) {
        return GrantTable.T13.of(of).get(0).rows().toString().replace('\u00a0', ' ');
    }

    @Test
    void theTitleOfTheFirstAxisIsNoLongerThanTheAxis() {
        Block.Figure figure = BoardMemo.of(in).sections().stream().flatMap(s -> s.blocks().stream()).filter(Block.Figure.class::isInstance)
                .map(Block.Figure.class::cast).findFirst().orElseThrow();
        ChartRenderingInfo drawn = new ChartRenderingInfo();
        JFreeChart chart = figure.chart().chart();
        chart.createBufferedImage(WIDTH, (int) (WIDTH * figure.height()), drawn);
        Font font = chart.getXYPlot().getRangeAxis().getLabelFont();
        double title = font.getStringBounds(chart.getXYPlot().getRangeAxis().getLabel(), new FontRenderContext(null, true, true)).getWidth();
        assertTrue(title <= drawn.getPlotInfo().getDataArea().getHeight(), title + " on " + drawn.getPlotInfo().getDataArea());
    }

    private static int pages(PaperInput of, Paper paper) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(DocumentFormat.PDF.write(BoardMemo.of(of).on(paper)))) {
            return pdf.getNumberOfPages();
        }
    }

    @Test
    void theMemoOfEveryPlanHasTwoPagesWithAwardsThatAreNotCertainToo() throws Exception {
        Study study = EXAMPLE.study();
        for (Programme programme : study.getProgrammes()) {
            programme.setProbability(0.6);
        }
        PaperInput unsure = EXAMPLE.in(study, PaperChoices.STANDARD);
        for (Paper paper : List.of(Paper.LETTER, Paper.A4)) {
            assertEquals(2, pages(unsure, paper), "not certain, " + paper.label());
            for (int plan = 0; plan < in.result().plans().size(); plan++) {
                assertEquals(2, pages(new PaperInput(in.result(), plan, in.facts(), in.choices()), paper), plan + ", " + paper.label());
            }
        }
    }

    @Test
    void theMemoHasWhatABoardDecidesOn() {
        Document memo = BoardMemo.of(in);
        assertEquals(List.of("The answer", "What to decide", "Money by year", "Risks"), memo.sections().stream().map(Section::heading)
                .filter(h -> !h.isEmpty()).toList());
        String text = text(memo);
        for (String said : List.of("All plans stand on the same assumptions: prices, tariff “KE-EVD”", "study version " + in.facts().version(),
                "Recommendation: to vote on “Electric in stages”", "RESOLVED, that the Board adopts", "the utility is asked for service before buses",
                "because it does neither", "2027: B01, B02, B03; 2028: B04, B05")) {
            assertTrue(text.contains(said), said + " in " + text);
        }
        assertEquals(List.of("Applicant", "Plan", "Version", "Date"), memo.facts().stream().map(Document.Fact::label).toList());
    }

    @Test
    void theCheapestPlanIsNamedWithWhatItSaves() {
        double more = in.plan().measures().presentCost() - in.result().plans().get(CHEAPEST).measures().presentCost();
        String memo = text(BoardMemo.of(in));
        assertTrue(memo.contains("“Rebate buses only” has the least present cost, USD " + CellFormat.MONEY.print(CellFormat.MONEY.rounded(more))
                + " less than “Electric in stages”, which takes 92,382 gal less fuel and causes 450 t less CO2e"), memo);
        String own = text(BoardMemo.of(new PaperInput(in.result(), CHEAPEST, in.facts(), in.choices())));
        assertTrue(own.contains("It has the least present cost of these."), own);
        double less = in.result().baseline().measures().presentCost() - in.result().plans().get(CHEAPEST).measures().presentCost();
        assertTrue(own.contains("The USD " + CellFormat.MONEY.print(CellFormat.MONEY.rounded(less)) + " below “Like for like” in table 1"), own);
    }

    @Test
    void theMemoSpeaksOfNoTableThatItLacks() {
        String memo = text(BoardMemo.of(in));
        assertFalse(memo.matches("(?s).*\\bT1[0-9]\\b.*"), memo);
        String risks = risks(in);
        assertTrue(risks.contains("See table T16.") && risks.contains("Table T18 says"), risks);
    }

    @Test
    void moneyOfTheProjectAndOfPacksIsLabelled() {
        String memo = text(BoardMemo.of(in));
        ProjectMoney money = ProjectMoney.of(in);
        assertTrue(memo.contains("commits USD " + CellFormat.MONEY.print(money.own()) + " of own money to the project of USD "
                + CellFormat.MONEY.print(money.total()) + " (money of the years of purchase)"), memo);
        assertTrue(memo.contains("2 packs are replaced for constant 2026 USD 49,656."), memo);
    }

    @Test
    void theWarrantyOfPacksIsThatOfTheTypes() {
        Study study = EXAMPLE.study();
        String held = risks(in);
        assertTrue(held.contains("By warranty the maker pays a part of packs of Electric A 118, Electric C 150, Electric C 226 that fall to "
                + "70 % of their capacity within 8 years and 100,000 mi."), held);
        study.getVehicleTypes().stream().filter(ElectricType.class::isInstance).map(ElectricType.class::cast)
                .forEach(t -> t.setWarrantyYears(0));
        String none = risks(EXAMPLE.in(study, PaperChoices.STANDARD));
        assertTrue(none.contains("Health is measured yearly. The study holds no warranty of packs."), none);
    }

    @Test
    void hoursOfFailuresAreToldApartInTheCalendarOfTheShop() {
        double failures = in.plan().shop(0).failureHours();
        assertTrue(failures > 1);
        String hours = CellFormat.decimals(1).print(CellFormat.decimals(1).rounded(failures));
        List<Block> blocks = ShopPaper.of(in).sections().stream().flatMap(s -> s.blocks().stream()).toList();
        assertEquals(2, blocks.stream().filter(b -> !(b instanceof Block.Figure) && b.toString().contains("in tables 1 and 2, " + hours
                + " h are allowed for failures")).count());
    }
}
