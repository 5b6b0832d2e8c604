package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.DocumentFormat;
import org.amberyard.report.document.Paper;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The replacement schedule and the list of routes, which are hung up and handed out by themselves. */
class ListPapersTest {
    private static PaperInput in;

    @BeforeAll
    static void evaluate() {
        ExamplePapers example = new ExamplePapers();
        in = example.in(example.study(), PaperChoices.STANDARD);
    }

    @Test
    void eachTableHasAPageInLandscapeOnLetterAndTabloid() throws Exception {
        for (Document of : List.of(SchedulePaper.of(in), RouteListPaper.of(in))) {
            for (Paper paper : List.of(Paper.LETTER, Paper.TABLOID)) {
                try (PDDocument pdf = Loader.loadPDF(DocumentFormat.PDF.write(of.on(paper)))) {
                    assertEquals(2, pdf.getNumberOfPages(), of.name() + ", " + paper.label());
                    assertTrue(pdf.getPage(0).getMediaBox().getWidth() > pdf.getPage(0).getMediaBox().getHeight(), of.name());
                }
            }
        }
    }

    @Test
    void theScheduleSaysWhoComesWhenAndHowManyAreElectric() {
        DataTable schedule = SchedulePaper.of(in).tables().get(0);
        assertEquals(in.study().buses().size() + 2, schedule.rows().size());
        assertEquals(2 + in.study().years(), schedule.columns().size());
        List<Object> first = schedule.rows().get(0).cells();
        assertEquals(List.of("B01", "R01", "F1", "+E1", "E1"), first.subList(0, 5));
        assertTrue(schedule.notes().toString().contains("E1 Electric C 150") && schedule.notes().toString().contains("F1 Diesel C 2005-2009"),
                schedule.notes().toString());
        List<Object> come = schedule.rows().get(in.study().buses().size()).cells();
        assertEquals(List.of("Buses that come", "", "0", "4", "4"), come.subList(0, 5));
        List<Object> electric = schedule.rows().get(in.study().buses().size() + 1).cells();
        assertEquals(List.of("Electric buses", "", "0", "4", "7"), electric.subList(0, 5));
        long packs = schedule.rows().stream().flatMap(r -> r.cells().stream()).filter(c -> c.toString().endsWith(" p")).count();
        assertEquals(2, packs, "packs replaced");
    }

    @Test
    void everyPurchaseIsToldWithWhatBecomesOfTheOldBus() {
        DataTable purchases = SchedulePaper.of(in).tables().get(1);
        assertEquals(23, purchases.rows().size());
        assertEquals("scrapped", purchases.rows().get(0).cells().get(ExamplePapers.column(purchases, "Old bus")));
    }

    @Test
    void dispatchSeesEveryRouteAndEveryOptionWithItsReason() {
        DataTable routes = RouteListPaper.of(in).tables().get(0);
        assertEquals(in.study().duty().routes().size(), routes.rows().size());
        DataTable options = RouteListPaper.of(in).tables().get(1);
        int why = ExamplePapers.column(options, "Why");
        assertTrue(options.rows().stream().allMatch(r -> r.cells().get(why).toString().matches("(holds|fails) at .*")), options.toString());
        assertTrue(options.rows().stream().anyMatch(r -> r.cells().get(0).equals("R13") && options.printed(r, ExamplePapers.column(options,
                "Days, aged pack")).equals("176")));
    }
}
