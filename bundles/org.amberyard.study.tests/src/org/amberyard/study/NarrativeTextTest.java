package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.junit.jupiter.api.Test;

class NarrativeTextTest {

    private static String filled(String text) {
        return NarrativeText.of(text).filled(n -> "<" + n.name() + (n.numberOnly() ? "#" : "") + ">");
    }

    @Test
    void namesStandInBraces() {
        assertEquals("We replace <buses replaced> buses for <own money#>.", filled("We replace { buses replaced } buses for {own money, number only}."));
        assertEquals(List.of(FigureName.BUSES_REPLACED, FigureName.OWN_MONEY), NarrativeText.of("{Buses Replaced}, {own money}, {buses replaced}")
                .figures());
    }

    @Test
    void aBraceIsPrintedWhereItIsTypedTwice() {
        assertEquals("a {b} } <routes>", filled("a {{b} } {routes}"));
        assertEquals(List.of(), NarrativeText.of("a {{b} } {routes}").faults());
    }

    @Test
    void thePartsTogetherAreTheText() {
        for (String text : List.of("", "{", "}{", "{{", "{{{routes}", "a {b\nc} {routes}", "x {a {routes} y", "{routes}{routes}")) {
            assertEquals(text, NarrativeText.of(text).parts().stream().map(NarrativeText.Part::raw).collect(Collectors.joining()));
        }
    }

    @Test
    void unknownNamesAreToldWithTheNearestOnes() {
        assertEquals(List.of("“{buses replacd}” names no figure. Did you mean “buses replaced”?"),
                NarrativeText.of("{buses replacd} {buses replacd}").faults());
        String shared = NarrativeText.of("{cost of a ton CO2}").faults().get(0);
        assertTrue(shared.contains("“project cost of a ton of CO2”"), shared);
        assertEquals(List.of("“{xyz}” names no figure. The list of figures on the page Narrative has all names."), NarrativeText.of("{xyz}").faults());
    }

    @Test
    void aBraceThatNothingClosesIsToldAndHidesNothingBehindIt() {
        NarrativeText text = NarrativeText.of("pays {own money\nof {routes} routes");
        assertEquals(1, text.faults().size());
        assertTrue(text.faults().get(0).startsWith("“{own money” has a brace that is not closed"), text.faults().toString());
        assertEquals(List.of(FigureName.ROUTES), text.figures());
    }

    @Test
    void everyNameIsAnotherAndCanStandInBraces() {
        List<String> names = Arrays.stream(FigureName.values()).map(FigureName::words).toList();
        assertEquals(names.size(), new HashSet<>(names).size());
        names.forEach(n -> assertEquals(List.of(FigureName.of(n).orElseThrow()), NarrativeText.of("{" + n + "}").figures()));
    }

    @Test
    void aStudyWithUnknownNamesIsEvaluatedAndWarned() throws Exception {
        Study study = ExampleStudy.load();
        Narrative narrative = StudyFactory.eINSTANCE.createNarrative();
        narrative.setName("Air");
        narrative.setText("{NOx reduced yearly}");
        study.getNarratives().add(narrative);
        List<Finding> findings = StudyFindings.of(study).stream().filter(f -> f.element() == narrative).toList();
        assertEquals(1, findings.size(), findings.toString());
        assertEquals(Severity.WARNING, findings.get(0).severity());
        assertEquals(StudyPackage.Literals.NARRATIVE__TEXT, findings.get(0).feature());
        assertTrue(findings.get(0).message().startsWith("Narrative Air: “{NOx reduced yearly}” names no figure. Did you mean “NOx reduced"),
                findings.get(0).message());
    }
}
