package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.vehicles.VehicleType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The example's first electric buses are in service on 2027-01-01 and take nine months to be delivered. */
class QuoteFindingsTest {
    private static final StudyEvaluator EVALUATOR = new StudyEvaluator();

    private Study study;
    private VehicleType type;

    @BeforeEach
    void load() throws Exception {
        study = ExampleStudy.load();
        study.getSettings().setHorizonYears(4);
        type = study.getVehicleTypes().stream().filter(t -> t.getName().equals("Electric C 150")).findFirst().orElseThrow();
    }

    private List<Finding> quotedOn(String date) {
        SourceNotes.find(type, "purchasePrice").orElseThrow().setDate(date);
        return new QuoteFindings(study, EVALUATOR.evaluate(StudyCompiler.compile(study)), 1).list();
    }

    @Test
    void anOrderBeforeItsQuoteIsNamedOnceForItsType() {
        List<Finding> findings = quotedOn("2026-05-15");
        assertEquals(1, findings.size(), findings.toString());
        assertSame(type, findings.get(0).element());
        assertEquals("Plan “Electric in stages”: B01-2 must be ordered by 2026-04-01, before the price of its type “Electric C 150” was quoted on "
                + "2026-05-15. Name the quote that the order rests on, or move the purchase.", findings.get(0).message());
    }

    @Test
    void anOrderOnTheDayOfItsQuoteIsInTimeAndSoIsOneOfAQuoteWithoutDay() {
        assertEquals(List.of(), quotedOn("2026-04-01"));
        assertEquals(List.of(), quotedOn("spring 2026"));
        assertEquals(List.of(), quotedOn(null));
    }
}
