package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.model.study.Study;
import org.amberyard.report.document.DataTable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class EligibilityPapersTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static DataTable table;
    private static PaperInput in;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
        table = EligibilityPapers.of(in).get(0);
    }

    private static String printed(DataTable of, String bus, String column) {
        int at = IntStream.range(0, of.columns().size()).filter(i -> of.columns().get(i).label().equals(column)).findFirst().orElseThrow();
        return of.rows().stream().filter(r -> r.cells().get(1).equals(bus)).map(r -> of.printed(r, at)).findFirst().orElseThrow();
    }

    @Test
    void aBusThatIsPaidForIsEligible() {
        assertEquals("T1c. Eligibility for “Clean Fleet Fund”, bus by bus", table.title());
        assertEquals("yes", printed(table, "B01", "Eligible"));
        assertEquals("", printed(table, "B01", "Rule that refuses it"));
        assertEquals("C", printed(table, "B01", "Body, old and new"));
        assertEquals("yes", printed(table, "B01", "One for one"));
        assertEquals(in.replaced().size(), table.rows().size());
    }

    @Test
    void aBusThatIsNotPaidForIsToldTheRule() {
        List<String> refused = table.rows().stream().filter(r -> r.cells().get(8).equals("NO")).map(r -> r.cells().get(9).toString())
                .toList();
        assertTrue(!refused.isEmpty() && refused.stream().noneMatch(String::isEmpty), refused.toString());
        assertEquals("Eligible: " + (table.rows().size() - refused.size()) + " of " + table.rows().size(),
                table.notes().get(0).substring(0, table.notes().get(0).indexOf(". Rules")));
    }

    @Test
    void anotherBodyIsNamedAsAMismatchAndAsARule() {
        Study study = EXAMPLE.study();
        study.getProgrammes().stream().filter(p -> p.getName().equals("Clean Fleet Fund")).forEach(p -> p.setSameBodyType(true));
        study.getPlans().get(ExamplePapers.ELECTRIC).getReplacements().stream().filter(r -> r.getBus().getName().equals("B01"))
                .forEach(r -> r.setNewType(study.getVehicleTypes().stream().filter(t -> t.getName().equals("Electric A 118")).findFirst()
                        .orElseThrow()));
        PaperChoices choices = new PaperChoices(List.of(GrantTable.T1), Optional.of("Clean Fleet Fund"), false, Optional.empty());
        DataTable other = EligibilityPapers.of(EXAMPLE.in(study, choices)).get(0);
        assertEquals("DIFFERS: C, A", printed(other, "B01", "Body, old and new"));
        assertEquals("NO", printed(other, "B01", "Eligible"));
        assertTrue(printed(other, "B01", "Rule that refuses it").contains("old bus B01 has body type C, not A"));
    }
}
