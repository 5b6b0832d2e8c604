package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.study.GivenOutFigure;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.study.FigureName;
import org.junit.jupiter.api.Test;

/** A text that somebody has with other figures is found. */
class StaleNarrativeTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static final String COST = "USD\u00a05,133,021";

    /** The example, with a text given out for its electric plan. */
    private static Study givenOut(String... figures) {
        Study study = EXAMPLE.study();
        Narrative narrative = study.getNarratives().get(0);
        narrative.setText("{total project cost} for {buses replaced} buses");
        narrative.setGivenOutFor(study.getPlans().get(ExamplePapers.ELECTRIC));
        narrative.setGivenOutOn("2026-05-01");
        for (int i = 0; i < figures.length; i += 2) {
            GivenOutFigure figure = StudyFactory.eINSTANCE.createGivenOutFigure();
            figure.setFigure(figures[i]);
            figure.setPrinted(figures[i + 1]);
            narrative.getGivenOut().add(figure);
        }
        return study;
    }

    private static List<Finding> found(Study study) {
        return StaleNarrative.findings(study, EXAMPLE.evaluated(study));
    }

    @Test
    void aTextWithTheFiguresThatItHasNowIsNoFinding() {
        assertFalse(StaleNarrative.isPossible(EXAMPLE.study()));
        assertEquals(List.of(), found(EXAMPLE.study()));
        assertTrue(StaleNarrative.isPossible(givenOut("total project cost", COST)));
        assertEquals(List.of(), found(givenOut("total project cost", COST, "buses replaced", "13")));
    }

    @Test
    void eachFigureThatHasChangedIsToldWithWhatItWasAndIs() {
        Study study = givenOut("total project cost", COST, "buses replaced", "12");
        study.getPlans().get(ExamplePapers.ELECTRIC).getReplacements().removeIf(r -> r.getBus().getName().equals("B18"));
        Finding finding = found(study).get(0);
        assertEquals(Severity.WARNING, finding.severity());
        assertEquals(study.getNarratives().get(0), finding.element());
        assertEquals(StudyPackage.Literals.NARRATIVE__TEXT, finding.feature());
        assertTrue(finding.message().matches("Narrative Need: figures in it are others than when it was given out on 2026-05-01 for “Electric in "
                + "stages”\\. “total project cost” was USD\u00a05,133,021\\. It is USD\u00a04,\\d{3},\\d{3} now\\. “buses replaced” was 12\\. It is "
                + "13 now\\. Whoever has the old text needs the new one\\."), finding.message());
    }

    @Test
    void aTextWhoseDayIsNotKnownIsToldWithoutOne() {
        Study study = givenOut("buses replaced", "12");
        study.getNarratives().get(0).setGivenOutOn(null);
        assertTrue(found(study).get(0).message().contains("than when it was given out for “Electric in stages”. “buses"), found(study).toString());
    }

    /** What an application asks another programme for is no change of what it asks the one that pays most for. */
    @Test
    void aTextIsComparedWithTheProgrammeThatItWasGivenOutTo() {
        Study study = EXAMPLE.study();
        PaperInput in = EXAMPLE.in(study, PaperChoices.STANDARD.with(Optional.of("Make-ready")));
        String asked = new NarrativeFigures(in).of(FigureName.REQUESTED).orElseThrow().words();
        assertNotEquals(asked, new NarrativeFigures(EXAMPLE.in(study, PaperChoices.STANDARD)).of(FigureName.REQUESTED).orElseThrow().words());
        Study given = givenOut("grant requested", asked);
        given.getNarratives().get(0).setText("{grant requested}");
        assertEquals(1, found(given).size());
        given.getNarratives().get(0).setGivenOutTo(given.getProgrammes().stream().filter(p -> p.getName().equals("Make-ready")).findFirst()
                .orElseThrow());
        assertEquals(List.of(), found(given));
        assertEquals(StudyVersion.of(study), StudyVersion.of(withText(given, study.getNarratives().get(0).getText())));
    }

    private static Study withText(Study study, String text) {
        study.getNarratives().get(0).setText(text);
        return study;
    }

    @Test
    void aFigureThatThePlanHasNoMoreIsTold() {
        Study study = givenOut("grant share of the cost", "12.7 %");
        study.getNarratives().get(0).setText("{grant share of the cost}");
        study.getNarratives().get(0).setGivenOutFor(study.getPlans().get(0));
        assertTrue(found(study).get(0).message().contains("“grant share of the cost” was 12.7 %. It has no figure now."), found(study)
                .toString());
    }

    @Test
    void aTextWhosePlanOrFigureIsGoneIsNoFinding() {
        Study without = givenOut("total project cost", "USD 1");
        without.getNarratives().get(0).setGivenOutFor(null);
        assertEquals(List.of(), found(without));
        Study other = givenOut("total project cost", "USD 1");
        other.getNarratives().get(0).setText("Nothing named");
        assertEquals(List.of(), found(other));
    }

    @Test
    void itHoldsAsLongAsTheTextIsAsItWas() {
        Study study = givenOut("total project cost", "USD 1");
        StaleNarrative stale = StaleNarrative.all(new ReadFigures(EXAMPLE.evaluated(study), StudyFacts.of(study)), Progress.NONE).get(0);
        assertTrue(stale.isOf(study));
        study.getNarratives().get(0).setText("{total project cost}");
        assertFalse(stale.isOf(study));
        study.getNarratives().clear();
        assertFalse(stale.isOf(study));
    }

    /** The second figure is of another table, which need not be made any more. */
    @Test
    void lookingCanBeStoppedBetweenFigures() {
        Study study = givenOut("total project cost", COST, "buses replaced", "13");
        StudyFacts facts = StudyFacts.of(study);
        double half = 0.5 / facts.narratives().size();
        assertThrows(CancellationException.class, () -> StaleNarrative.all(new ReadFigures(EXAMPLE.evaluated(study), facts), share -> {
            if (share == half) {
                throw new CancellationException();
            }
        }));
    }
}
